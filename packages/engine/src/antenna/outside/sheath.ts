/** The outer surface of a coaxial line as a wire: its shield with its jacket. */
import type { LinePart } from "../../station/path";
import type { Point, Wire } from "../../wires/structure";
import { assume, type Growing } from "../growing";

/** Thickness of a braid over what it covers, m (common practice, no source). */
const braid = 0.4e-3;
/** Taken where neither shield nor jacket is known: a 10 mm line. The current hangs on the logarithm of it. */
const usualShield = 4e-3;
const usualJacket = 5.1e-3;
/** Soft PVC and polyethylene jackets lie between 2.3 and 4 at HF (from memory). */
const jacketPermittivity = 3;
const copper = 5.8e7;

export interface Sheath {
  readonly radius: number;
  readonly jacket: number;
}

export function sheathOf(name: string, line: LinePart["line"], growing: Growing): Sheath {
  const inside = line.build?.kind === "coaxial" ? line.build.outer.innerRadius : null;
  const jacket = line.jacketDiameter ? line.jacketDiameter / 2 : null;
  if (inside && jacket && jacket > inside + braid) return { radius: inside + braid, jacket };
  const radius = inside ? inside + braid : usualShield;
  const sheath = { radius, jacket: jacket && jacket > radius ? jacket : (radius * usualJacket) / usualShield };
  assume(
    growing,
    `outside of ${name}`,
    `a tube of ${Number((2000 * sheath.radius).toFixed(1))} mm in a jacket of ${Number((2000 * sheath.jacket).toFixed(1))} mm`,
    "its outer size is not known; the current hangs on its logarithm only",
  );
  return sheath;
}

export const sheathWire = (name: string, from: Point, to: Point, sheath: Sheath): Wire => ({
  name,
  from,
  to,
  radius: sheath.radius,
  conductivity: copper,
  permeability: 1,
  insulation: { outerRadius: sheath.jacket, permittivity: jacketPermittivity },
});
