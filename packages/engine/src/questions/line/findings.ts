/** Everything `line` finds for a station, and the facts its sentences are made of. */
import type { Verdict } from "../../answer/answer";
import type { ByLength, LineFacts, LineInPath } from "../../words/lineFacts";
import { troubleFrom, worthBuying } from "../../words/lineFacts";
import type { Worked } from "../common/worked";
import type { Bench } from "./bandRow";
import type { LengthStudy } from "./lengths";
import type { MatchedEnds } from "./matchedEnds";
import type { Arrangement } from "./oneOrSeveral";
import { presentOf } from "./proposal";
import type { Matters, Ranked } from "./ranking";
import type { Spacing } from "./spacings";
import type { Study } from "./study";
import { worstOf } from "./study";
import type { Twin } from "./twins";

export interface Findings {
  readonly worked: Worked;
  readonly bench: Bench;
  readonly study: Study;
  readonly ranked: readonly Ranked[];
  /** What the lines are ranked by, and what was asked for: watts where nothing is known by that. */
  readonly matters: Matters;
  readonly wanted: Matters;
  readonly swrBelow: number;
  readonly money: string | null;
  readonly best: Ranked | null;
  readonly worth: Ranked | null;
  readonly proposal: Ranked | null;
  readonly cheap: Ranked | null;
  readonly lengths: LengthStudy | null;
  readonly ends: readonly MatchedEnds[];
  readonly twins: readonly Twin[];
  readonly spacings: readonly Spacing[];
  readonly arrangements: readonly Arrangement[];
}

/** A candidate in the band where the present line brings least. */
export function inPath(study: Study, { candidate, rows, run }: Ranked): LineInPath {
  const row = rows[worstOf(study.present)]!;
  return {
    name: candidate.entry.designation,
    watts: row.watts,
    delivered: row.delivered,
    loss: row.loss,
    added: row.added,
    swrSeen: row.swrSeen,
    gained: run.gained,
    voltageShare: run.voltageShare,
    voltageSays: run.voltageSays,
    powerMargin: run.powerMargin,
    receive: run.receive,
    weight: run.weight,
    bendRadius: run.bendRadius,
    price: run.price,
    perDecibel: run.perDecibel,
  };
}

/** The usual choice for power at HF: common practice, no source. */
export const usualCoaxial = "RG-213/U";

export function lineFacts(found: Findings): LineFacts {
  const { study, ranked, bench } = found;
  const told = (one: Ranked | null | undefined): LineInPath | null => (one ? inPath(study, one) : null);
  const present = inPath(study, presentOf(ranked));
  const proposal = told(found.proposal);
  const worst = worstOf(study.present);
  const row = study.present.rows[worst]!;
  const converted = ranked.filter((one) => one.candidate.standing === "converted");
  const coaxial = converted.find((one) => one.candidate.entry.designation === usualCoaxial) ?? converted[0];
  return {
    verdict: verdictOf(found.worth?.run.gained ?? 0, present),
    matters: found.matters,
    notKnown: found.wanted === found.matters ? null : found.wanted,
    first: proposal ?? present,
    present,
    best: told(found.best),
    worth: told(found.worth),
    proposal,
    cheap: told(found.cheap),
    coaxial: bench.replaced.side === "balanced" ? told(coaxial) : null,
    worstBand: found.worked.station.bands.length > 1 ? study.bands[worst]!.name : null,
    heat: row.heat,
    quietest: quietestOf(study),
    delivered: row.delivered,
    swrOnLine: row.swrOnLine,
    behindTuner: bench.replaced.behindTuner,
    length: bench.replaced.part.length.value,
    money: found.money,
    others: ranked.length - 1,
    byLength: bench.replaced.side === "coaxial" ? byLength(found) : null,
  };
}

/** The band in which the present line takes least; null for a single band. */
function quietestOf({ bands, present }: Study): LineFacts["quietest"] {
  if (bands.length < 2) return null;
  const row = present.rows.reduce((a, b) => (b.heat < a.heat ? b : a));
  return { band: row.band.name, swrOnLine: row.swrOnLine, heat: row.heat };
}

function verdictOf(gained: number, { voltageShare, powerMargin }: LineInPath): Verdict {
  if (gained > troubleFrom || (voltageShare ?? 0) > 1 || (powerMargin ?? 1) < 1) return "trouble";
  return gained > worthBuying ? "workable" : "good";
}

function byLength({ lengths, worked, bench }: Findings): ByLength | null {
  if (!lengths) return null;
  return {
    name: lengths.entry.designation,
    low: lengths.range.low,
    high: lengths.range.high,
    onRatedLow: lengths.rangeOnRated.low,
    onRatedHigh: lengths.rangeOnRated.high,
    mostAdded: Math.max(...lengths.points.map((p) => p.added)),
    leastDelivered: Math.min(...lengths.points.map((p) => p.delivered)),
    ratedPower: worked.point.ratedPower,
    rated: worked.point.ratedResistance,
    halfWave: lengths.halfWave,
    present: lengths.entry === bench.replaced.part.line,
    behindTuner: bench.replaced.behindTuner,
  };
}
