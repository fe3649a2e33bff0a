/** What every kind of line is reduced to before the telegrapher's equations. Type only. */
import type { Complex } from "../numerics/complex";

/** Series impedance (ohm/m) and shunt admittance (S/m) of a line, and what a reader must know of them. */
export interface LineImmittance {
  readonly series: Complex;
  readonly shunt: Complex;
  readonly notes: readonly string[];
}
