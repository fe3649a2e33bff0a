/** What stands at either end of the line: resistance, coil and capacitor, in series or side by side. */

/** Ohm, H, F. A missing coil or capacitor is null. Side by side, a resistance of Infinity is no resistor: alone, an open end. */
export interface Termination {
  readonly form: "in series" | "side by side";
  readonly resistance: number;
  readonly inductance: number | null;
  readonly capacitance: number | null;
}

export const resistor = (resistance: number): Termination => ({
  form: Number.isFinite(resistance) ? "in series" : "side by side",
  resistance,
  inductance: null,
  capacitance: null,
});
export const openEnd: Termination = resistor(Number.POSITIVE_INFINITY);
export const shortedEnd: Termination = resistor(0);

/** Impedance in ohm at `omega` (rad/s); null for an open end. */
export function impedanceOf(one: Termination, omega: number): { readonly re: number; readonly im: number } | null {
  const coil = one.inductance === null ? 0 : omega * one.inductance;
  const capacitor = one.capacitance === null ? 0 : omega * one.capacitance;
  if (one.form === "in series") {
    return { re: one.resistance, im: coil - (one.capacitance === null ? 0 : 1 / capacitor) };
  }
  const [g, b] = [1 / one.resistance, capacitor - (one.inductance === null ? 0 : 1 / coil)];
  const square = g * g + b * b;
  return square === 0 ? null : { re: g / square, im: -b / square };
}

/**
 * A termination as it is stepped. In series: v = slope i + held. Side by side: i = slope v + held. `drive` is the quantity
 * the two share (i, or v), `take` sets the registers for the next step. Energies in J.
 */
export interface SteppedTermination {
  readonly form: Termination["form"];
  readonly slope: number;
  readonly held: () => number;
  readonly take: (shared: number) => void;
  /** Joule turned to heat (or sent on) by the resistor since the start, and stored now. */
  readonly spent: () => number;
  readonly stored: () => number;
}

/**
 * Coil and capacitor by the bilinear rule, bent so that they are exact at `bend` = omega / tan(omega T/2) rad/s. Each keeps one
 * register, the wave it holds; power in the registers and in the resistor adds up to the port's own, to rounding.
 * Source: A. Fettweis, Wave digital filters: theory and practice, Proc. IEEE 74 (1986) 270.
 */
export function steppedTermination(one: Termination, bend: number, timeStep: number): SteppedTermination {
  const inSeries = one.form === "in series";
  // Between the two forms coil and capacitor change places, resistance and conductance too.
  const loss = inSeries ? one.resistance : 1 / one.resistance;
  const rising = inSeries ? one.inductance : one.capacitance;
  const falling = inSeries ? one.capacitance : one.inductance;
  const rise = rising === null ? 0 : bend * rising;
  const fall = falling === null ? 0 : 1 / (bend * falling);
  let [x, y, spent] = [0, 0, 0];
  return {
    form: one.form,
    slope: loss + rise + fall,
    held: () => y - x,
    take: (shared) => {
      x = 2 * rise * shared - x;
      y = y + 2 * fall * shared;
      spent += loss * shared * shared * timeStep;
    },
    spent: () => spent,
    stored: () => ((rise > 0 ? (x * x) / rise : 0) + (fall > 0 ? (y * y) / fall : 0)) * 0.25 * timeStep,
  };
}
