/** What else could be done than laying another line of the same kind. */
import type { LineEntry } from "../../lines/lineModel";
import { derivedLine } from "./derivedLines";
import type { Findings } from "./findings";
import { studyLengths } from "./lengths";
import { type MatchedEnds, studyEnds } from "./matchedEnds";
import { studyArrangements } from "./oneOrSeveral";
import { presentOf } from "./proposal";
import type { Ranked } from "./ranking";
import { studySpacings } from "./spacings";
import { worstOf } from "./study";
import { studyTwins } from "./twins";

type Alternatives = "lengths" | "ends" | "twins" | "spacings" | "arrangements";
type Chosen = Omit<Findings, Alternatives>;

export function alternativesOf(chosen: Chosen): Pick<Findings, Alternatives> {
  const { bench, study, worked, proposal, money, ranked } = chosen;
  const entry = entryOfLength(chosen);
  return {
    lengths: entry && studyLengths(bench, entry.line, worked.band, study.bands),
    ends: entry && bench.replaced.side === "coaxial" ? endsOf(chosen, entry) : [],
    twins: studyTwins(
      bench,
      ranked.map((one) => one.candidate),
      worked.band,
    ),
    spacings: studySpacings(bench, study.bands[worstOf(study.present)]!),
    arrangements: studyArrangements(bench, study, proposal?.candidate.entry ?? null, money),
  };
}

interface Other {
  readonly line: LineEntry;
  readonly impedance: number;
}

/** Ohm, where the list has no line of another impedance. */
const usualOther = 75;

/** The present line where its impedance is not the set's, else the cheap one or the first of another, else 75 ohm with the present loss. */
function entryOfLength({ ranked, cheap, worked, bench }: Chosen): Other | null {
  const { entry, standing, impedance } = presentOf(ranked).candidate;
  if (standing !== "rated") return { line: bench.replaced.part.line, impedance };
  const other = cheap ?? ranked.find((one) => one.candidate.standing === "other");
  if (other) return { line: other.candidate.entry, impedance: other.candidate.impedance };
  return {
    line: derivedLine(entry, {
      frequency: worked.frequency,
      impedance: usualOther,
      side: "coaxial",
      designation: `${usualOther} Ω with the loss of ${entry.designation}`,
    }),
    impedance: usualOther,
  };
}

/** Ratio of impedances up to which sections of line are a sensible way to join them. */
const mostRatio = 4;

function endsOf({ bench, study, worked, ranked, swrBelow }: Chosen, other: Other): readonly MatchedEnds[] {
  const rated = worked.point.ratedResistance;
  const own = ratedLine(ranked) ?? {
    line: derivedLine(other.line, {
      frequency: worked.frequency,
      impedance: rated,
      side: "coaxial",
      designation: `${rated} Ω line`,
    }),
    impedance: rated,
  };
  const ratio = other.impedance / own.impedance;
  if (ratio > mostRatio || ratio < 1 / mostRatio) return [];
  const input = {
    rated: own.line,
    ratedImpedance: own.impedance,
    other: other.line,
    otherImpedance: other.impedance,
    frequency: worked.frequency,
    swrBelow,
  };
  return studyEnds(bench, input, study.bands);
}

/** The present line where it has the set's impedance, else the first of the ranking that has. */
function ratedLine(ranked: readonly Ranked[]): Other | null {
  const own = [presentOf(ranked), ...ranked].find((one) => one.candidate.standing === "rated");
  return own ? { line: own.candidate.entry, impedance: own.candidate.impedance } : null;
}
