/** From a capacitance in units of eps0, complex with its dielectrics, to a line's shunt admittance. */
import { type Complex, complex } from "../numerics/complex";
import { vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";

/** S/m of C = eps0 `capacitance` at `omega`: j omega C. */
export const shuntOf = (capacitance: Complex, omega: number): Complex =>
  complex(-omega * vacuumPermittivity * capacitance.im, omega * vacuumPermittivity * capacitance.re);

/** Ohm/m of the field outside the metal: j omega mu0 over the capacitance in vacuum (in units of eps0). */
export const reactanceOf = (vacuumCapacitance: number, omega: number): Complex =>
  complex(0, (omega * vacuumPermeability) / vacuumCapacitance);
