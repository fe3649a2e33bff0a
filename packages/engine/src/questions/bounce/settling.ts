/** When a carrier is settled at the load, read from the film. */
import { magnitude } from "../../numerics/complex";
import type { BounceStudy } from "./study";

/** Share of the final power at the load within which it stays. */
const within = 0.02;

/**
 * Seconds from which on the mean of the squared voltage over one period stays within 2 % of its value at the film's end (1 % of
 * voltage); null where the film ends first, or for a short or a step. Read at the load, or at the start where the load shows no voltage.
 */
export function settlingTime({ asked, film, stepped, frequency, end }: BounceStudy): number | null {
  if (asked.signal !== "carrier") return null;
  const record = magnitude(end.voltage) > 0 ? film.loadVoltage : film.inputVoltage;
  const period = 1 / frequency / stepped.timeStep;
  const sums = new Float64Array(record.length + 1);
  record.forEach((v, n) => {
    sums[n + 1] = sums[n]! + v * v;
  });
  const at = (n: number): number => {
    const whole = Math.floor(n);
    return sums[whole]! + (n - whole) * ((sums[whole + 1] ?? sums[whole]!) - sums[whole]!);
  };
  const mean = (n: number): number => at(n) - at(Math.max(0, n - period));
  const last = record.length;
  const final = mean(last);
  let settled = last;
  while (settled > 0 && Math.abs(mean(settled) - final) <= within * final) settled--;
  return settled > last - 2 * period ? null : settled * stepped.timeStep;
}
