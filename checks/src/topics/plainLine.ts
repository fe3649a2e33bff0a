/** Lines given by their constants alone, as one metre. */
import type { Complex, LineConstants } from "@feedpath/engine";

/** With given characteristic impedance and propagation constant. */
export const metre = (z0: Complex, gamma: Complex): LineConstants => ({
  frequency: 1,
  z0,
  gamma,
  resistance: 0,
  inductance: 0,
  conductance: 0,
  capacitance: 0,
  velocityFactor: 1,
  notes: [],
});

/** A lossless line of `turns` wavelengths. */
export const losslessLine = (z0: number, turns: number): LineConstants =>
  metre({ re: z0, im: 0 }, { re: 0, im: 2 * Math.PI * turns });
