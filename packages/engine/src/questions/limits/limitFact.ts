/** One thing that may fail: what it bears, what it meets, and how much more power would bring it there. Types and small sums. */

export interface LimitFact {
  /** Name of the part of the path; "" for the antenna's own wires. */
  readonly part: string;
  readonly of: "voltage" | "glow" | "sparkover" | "temperature" | "heat";
  /** As it is, and the limit: V peak, °C, W or kV/cm. */
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  /** What happens there: "its insulation grows soft". */
  readonly happens: string;
  /** Times the power may be raised until it happens. */
  readonly times: number;
  readonly source: string;
  /** m from the part's end towards the transmitter, where it has a length. */
  readonly at: number | null;
}

/** dB of power left: negative beyond the limit. Capped, so that what never fails stays a number. */
export const marginOf = (times: number): number => Math.min(most, Math.max(-most, 10 * Math.log10(times)));
/** dB: a million times, beyond which nothing is told. */
const most = 60;

/** What fails first comes first. */
export const firstToFail = (facts: readonly LimitFact[]): LimitFact[] => [...facts].sort((a, b) => a.times - b.times);

/** Times the power from a voltage: power goes with its square. */
export const timesOfVoltage = (peak: number, limit: number): number =>
  peak > 0 ? (limit / peak) ** 2 : Number.POSITIVE_INFINITY;
