/** The line to buy: the least one of those that come near to the best, and the cheap line of another impedance. */
import { compared, type Matters, measured, type Ranked } from "./ranking";
import { worstRow } from "./study";

/** dB that a change has to bring to be told as worth it, and dB to the best within which a line is enough: our rules. */
export const worthChanging = 1;
const enough = 1;
/** Share of a published voltage up to which a line is proposed. */
const mostVoltage = 1;

export interface Limits {
  readonly matters: Matters;
  /** The set or a tuner in front of the line takes what it shows. */
  readonly swrBelow: number;
  readonly behindTuner: boolean;
}

/** Would stand as it is, without anything at its ends, and without a voltage over what is published of it. */
function suits({ candidate, rows, run }: Ranked, { swrBelow, behindTuner }: Limits): boolean {
  if (candidate.present || candidate.standing === "converted") return false;
  if (run.voltageShare !== null && run.voltageShare > mostVoltage) return false;
  return behindTuner || candidate.standing !== "other" || rows.every((row) => row.swrSeen <= swrBelow);
}

const last = Number.POSITIVE_INFINITY;
const decibelsUnder = (best: number, one: Ranked): number => 10 * Math.log10(best / worstRow(one).watts);

/** Null where no other line suits. What is known of a line goes before what is not. */
export function proposedLine(ranked: readonly Ranked[], limits: Limits): Ranked | null {
  const suitable = ranked.filter((one) => suits(one, limits));
  if (suitable.length === 0) return null;
  const best = Math.max(...suitable.map((one) => worstRow(one).watts));
  const near = suitable.filter((one) => decibelsUnder(best, one) <= enough);
  const { matters } = limits;
  const keys = ({ run }: Ranked): readonly number[] => [
    ...(matters === "watts" ? [] : [measured[matters](run) ?? last]),
    ...[run.price, run.weight, run.jacket].map((value) => value ?? last),
  ];
  return [...near].sort((a, b) => compared(keys(a), keys(b)))[0] ?? null;
}

/** Impedances (ohm) that are sold as 75. */
const about75 = { from: 70, to: 80 };

/** The cheapest 75-ohm coaxial line by the asker's prices; without prices the one described as drop cable, else the first. */
export function cheapLine(ranked: readonly Ranked[]): Ranked | null {
  const lines = ranked.filter(
    ({ candidate: { standing, impedance } }) =>
      standing === "other" && impedance >= about75.from && impedance <= about75.to,
  );
  const priced = lines.filter((one) => one.run.price !== null).sort((a, b) => a.run.price! - b.run.price!);
  const drop = lines.find(({ candidate: { entry } }) => /drop/i.test(`${entry.designation} ${entry.about ?? ""}`));
  return priced[0] ?? drop ?? lines[0] ?? null;
}
