/** When a carrier is settled at the load, read from the film. */
import { magnitude } from "../../numerics/complex";
import type { BounceStudy } from "./study";

/** Share of the final voltage within which it stays. */
const within = 0.02;

export interface Settling {
  /** Seconds from which on the rms voltage over one period stays within 2 % of the phasor answer; null where the film ends first. */
  readonly time: number | null;
  /** Of the film's last period from the phasor answer, relative. */
  readonly deviation: number;
}

/** Read at the load, or at the start where the load shows no voltage. Null for a step or a pulse. */
export function settlingOf({ asked, film, stepped, frequency, start, end }: BounceStudy): Settling | null {
  if (asked.signal !== "carrier") return null;
  const shorted = magnitude(end.voltage) < 1e-6 * magnitude(start.voltage);
  const record = shorted ? film.inputVoltage : film.loadVoltage;
  const final = magnitude(shorted ? start.voltage : end.voltage);
  const period = 1 / frequency / stepped.timeStep;
  const sums = new Float64Array(record.length + 1);
  record.forEach((v, n) => {
    sums[n + 1] = sums[n]! + v * v;
  });
  const at = (n: number): number => {
    const whole = Math.floor(n);
    return sums[whole]! + (n - whole) * ((sums[whole + 1] ?? sums[whole]!) - sums[whole]!);
  };
  const deviation = (n: number): number => Math.sqrt((at(n) - at(Math.max(0, n - period))) / period) / final - 1;
  const last = record.length;
  let settled = last;
  while (settled > 0 && Math.abs(deviation(settled)) <= within) settled--;
  return {
    time: settled > last - period ? null : settled * stepped.timeStep,
    deviation: deviation(last),
  };
}
