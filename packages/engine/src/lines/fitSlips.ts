/** Slips of units in data sheets: what a loss is multiplied by when it is read per a wrong length. */

export interface LengthSlip {
  /** Loss as written over the true loss. */
  readonly factor: number;
  /** What was meant, and what was read, for people. */
  readonly meant: string;
  readonly read: string;
}

const perHundredFeet = 100 / 30.48;

/** From the commonest slip to the rarest; with equal factors the first is told. */
const lengthSlips: readonly LengthSlip[] = [
  { factor: 100, meant: "per 100 m", read: "per metre" },
  { factor: 1 / 100, meant: "per metre", read: "per 100 m" },
  { factor: 1 / perHundredFeet, meant: "per 100 ft", read: "per 100 m" },
  { factor: perHundredFeet, meant: "per 100 m", read: "per 100 ft" },
  { factor: 30.48, meant: "per 100 ft", read: "per metre" },
  { factor: 1 / 30.48, meant: "per metre", read: "per 100 ft" },
  { factor: 100 * perHundredFeet, meant: "per 100 m", read: "per foot" },
  { factor: 0.01 / perHundredFeet, meant: "per foot", read: "per 100 m" },
  { factor: 10, meant: "per kilometre", read: "per 100 m" },
];

/** The slip that explains a loss `ratio` times what it should be, within the share `within` (0.25: a quarter either way); null: none. */
export function slipOf(ratio: number, within: number): LengthSlip | null {
  const off = (slip: LengthSlip): number => Math.abs(Math.log(ratio / slip.factor));
  const best = lengthSlips.reduce((a, b) => (off(b) < off(a) - 1e-9 ? b : a));
  return off(best) <= Math.log(1 + within) ? best : null;
}

/** "meant per 100 m and read per metre". */
export const slipSays = (slip: LengthSlip): string => `meant ${slip.meant} and read ${slip.read}`;
