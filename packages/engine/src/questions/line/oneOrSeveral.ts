/** One line to a switch at the antennas against a line for each antenna: watts in every band, metres, and price where it is known. */
import type { LineEntry } from "../../lines/lineModel";
import { exactly } from "../../quantity/quantity";
import type { Part, Path, PathEnd } from "../../station/path";
import type { Station } from "../../station/station";
import { type Bench, bandRow } from "./bandRow";
import { priceOf } from "./runFacts";
import type { Study } from "./study";
import { newLine } from "./swapped";

type Switch = Extract<PathEnd, { kind: "switch" }>;

export interface Arrangement {
  readonly says: string;
  /** m of line of all kinds. */
  readonly metres: number;
  /** Of all lines, the switch left out; null where the price of one is not known. */
  readonly price: number | null;
  /** W into the antenna, one for each band. */
  readonly watts: readonly (number | null)[];
}

interface Length {
  readonly entry: LineEntry;
  readonly metres: number;
}

const linesOf = (parts: readonly Part[]): Length[] =>
  parts.flatMap((p) => (p.kind === "line" ? [{ entry: p.line, metres: p.length.value }] : []));

/** Empty where the path does not end in a switch, or the line does not lie before it. */
export function studyArrangements(
  bench: Bench,
  study: Study,
  better: LineEntry | null,
  money: string | null,
): readonly Arrangement[] {
  const { station, replaced } = bench;
  const { end, parts } = station.path;
  if (end.kind !== "switch" || !parts.some((p) => p.name === replaced.part.name)) return [];
  const trunk = linesOf(parts);
  const branches = Object.values(end.positions).map((path) => linesOf(path.parts));
  const own = [replaced.part];
  const arranged = (says: string, at: Bench, now: readonly Part[], lengths: readonly Length[]): Arrangement => ({
    says,
    metres: lengths.reduce((sum, l) => sum + l.metres, 0),
    price: priceOfAll(lengths, money, study),
    watts: study.bands.map((band) => bandRow(at, band, now)?.watts ?? null),
  });
  const bought = (line: LineEntry): Length[] =>
    trunk.map((l, i) => (i === trunk.findIndex((t) => t.entry === replaced.part.line) ? { ...l, entry: line } : l));
  return [
    arranged(`one ${replaced.part.line.designation} to "${end.name}"`, bench, own, [...trunk, ...branches.flat()]),
    ...(better
      ? [
          arranged(
            `one ${better.designation} to "${end.name}"`,
            bench,
            [newLine(replaced.part, better)],
            [...bought(better), ...branches.flat()],
          ),
        ]
      : []),
    arranged(
      `${branches.length} lines of ${replaced.part.line.designation}`,
      { ...bench, station: withoutSwitchLoss(station, end) },
      own,
      branches.flatMap((branch) => [...trunk, ...branch]),
    ),
  ];
}

/** Prices stand at the entries of the study: those the file names among them. */
function priceOfAll(lengths: readonly Length[], money: string | null, { all }: Study): number | null {
  const prices = lengths.map(({ entry, metres }) => {
    const known = all.find((s) => s.candidate.entry.designation === entry.designation)?.candidate.entry ?? entry;
    return priceOf(known, money, metres);
  });
  return prices.some((p) => p === null) ? null : prices.reduce<number>((sum, p) => sum + p!, 0);
}

/** A line each: what is thrown is which plug goes into the set. */
function withoutSwitchLoss(station: Station, end: Switch): Station {
  const path: Path = { ...station.path, end: { ...end, loss: exactly(0, "assumed") } };
  return { ...station, path };
}
