/** What every kind of line is reduced to before the telegrapher's equations. Type only. */
import type { Complex } from "../numerics/complex";

/** Series impedance (ohm/m) and shunt admittance (S/m) of a line, and what a reader must know of them. */
export interface LineImmittance {
  readonly series: Complex;
  readonly shunt: Complex;
  /** Ohm/m of the resistance that lies in the outer conductor (shield, plane); the rest is the inner one's. 0 when left out. */
  readonly outerResistance?: number;
  readonly notes: readonly string[];
}
