/** The line to buy: the least one of those that come near to the best, and the cheap line of another impedance. */
import { compared, type Matters, type Ranked } from "./ranking";

/** dB that a change has to bring to be told as worth it, and dB to the best within which a line is enough: our rules. */
const worthChanging = 1;
const enough = 1;
/** Share of a published voltage up to which a line is proposed. */
const mostVoltage = 1;

export interface Limits {
  readonly matters: Matters;
  /** The set or a tuner in front of the line takes what it shows. */
  readonly swrBelow: number;
  readonly behindTuner: boolean;
}

/** Would stand as it is, without anything at its ends, and neither flash over nor get too warm as far as is known. */
function suits({ candidate, rows, run }: Ranked, { swrBelow, behindTuner }: Limits): boolean {
  if (candidate.present || candidate.standing === "converted") return false;
  if (run.voltageShare !== null && run.voltageShare > mostVoltage) return false;
  if (run.powerMargin !== null && run.powerMargin < 1) return false;
  return behindTuner || candidate.standing !== "other" || rows.every((row) => row.swrSeen <= swrBelow);
}

const last = Number.POSITIVE_INFINITY;

export interface Choice {
  /** The line that brings most of those that would stand there; null where none would. */
  readonly best: Ranked | null;
  /** The least line that is worth the change for its watts, or because the present one bears too little; null where none is. */
  readonly worth: Ranked | null;
  /** What is proposed: that line, or the first by what else matters where it comes before the present one. */
  readonly proposal: Ranked | null;
}

/** `ranked` in the order of what matters. What is known of a line goes before what is not. */
export function chosenLines(ranked: readonly Ranked[], limits: Limits): Choice {
  const suitable = ranked.filter((one) => suits(one, limits));
  const best = suitable.reduce<Ranked | null>((a, b) => (a && a.run.gained >= b.run.gained ? a : b), null);
  const worth = best && worthIt(suitable, best, presentOf(ranked).run);
  if (limits.matters === "watts") return { best, worth, proposal: worth };
  const first = ranked.find((one) => one.candidate.present || suitable.includes(one)) ?? null;
  return { best, worth, proposal: first?.candidate.present ? null : first };
}

function worthIt(suitable: readonly Ranked[], best: Ranked, own: Ranked["run"]): Ranked | null {
  const overloaded = (own.voltageShare ?? 0) > mostVoltage || (own.powerMargin ?? 1) < 1;
  if (best.run.gained <= worthChanging && !overloaded) return null;
  const near = suitable.filter(
    ({ run }) =>
      best.run.gained - run.gained <= enough &&
      (overloaded ? run.voltageShare !== null && run.powerMargin !== null : run.gained > worthChanging),
  );
  const keys = ({ run }: Ranked): readonly number[] =>
    [run.price, run.weight, run.jacket].map((value) => value ?? last);
  return [...near].sort((a, b) => compared(keys(a), keys(b)))[0] ?? null;
}

export const presentOf = (ranked: readonly Ranked[]): Ranked => ranked.find((one) => one.candidate.present)!;

/** Impedances (ohm) that are sold as 75. */
const about75 = { from: 70, to: 80 };

/** What is sold everywhere for television: common practice, no source. */
const usual = /series-6 /;

/** The cheapest 75-ohm coaxial line by the asker's prices; without prices the usual one, else the first. */
export function cheapLine(ranked: readonly Ranked[]): Ranked | null {
  const lines = ranked.filter(
    ({ candidate: { standing, impedance } }) =>
      standing === "other" && impedance >= about75.from && impedance <= about75.to,
  );
  const priced = lines.filter((one) => one.run.price !== null).sort((a, b) => a.run.price! - b.run.price!);
  const drop = lines.find(({ candidate }) => usual.test(`${candidate.entry.designation} `));
  return priced[0] ?? drop ?? lines[0] ?? null;
}
