/** The impedances of an outer conductor as it is made: tube, corrugated tube, braid, foil, and foil below braid. */
import { add, type Complex, complex } from "../numerics/complex";
import { vacuumPermeability } from "../numerics/vacuum";
import { knownBraid } from "./braidGeometry";
import { braidDiffusion, braidInductances } from "./braidTransfer";
import type { OuterConductor } from "./conductor";
import { coveredWall } from "./outerConductor";
import type { Braid } from "./shield";
import { joinShields, type ShieldImpedances, tubeImpedances } from "./tubeImpedances";

/** Models of a braid's transfer inductance (braidTransfer.ts). */
export type BraidModel = "Vance 1975" | "Tyni 1976";
export const braidModels: readonly BraidModel[] = ["Vance 1975", "Tyni 1976"];

/**
 * Impedances inside, through and outside in ohm/m at `angularFrequency` (rad/s, 0: direct current), or null where what comes
 * through a braid cannot be told because its carriers, ends, wire or angle are not known. A braid is inside and outside a
 * tube times its resistance factor; coating and foil lie within; between foil and braid, and between two braids, their
 * currents leave the room of a wire or two (Vance). A foil counts as closed: what an open overlap lets
 * through besides is not known.
 */
export function shieldImpedances(
  outer: OuterConductor,
  angularFrequency: number,
  model: BraidModel = "Tyni 1976",
): ShieldImpedances | null {
  const { shield, innerRadius } = outer;
  if (shield === undefined || !("braid" in shield)) return coveredWall(outer, angularFrequency);
  const braided = braidImpedances(outer, shield.braid, angularFrequency, model);
  if (braided === null || shield.form === "braid") return braided;
  const { foil } = shield;
  const foiled = tubeImpedances(innerRadius, foil.thickness, foil.metal, angularFrequency);
  return joinShields(foiled, braided, angularFrequency, roomOutside(innerRadius, shield.braid.wire ?? 0));
}

function braidImpedances(
  outer: OuterConductor,
  braid: Braid,
  omega: number,
  model: BraidModel,
): ShieldImpedances | null {
  const known = knownBraid(outer.innerRadius, braid);
  if (known === null) return null;
  const inductances = braidInductances(known);
  const inductance = model === "Vance 1975" ? inductances.vance : inductances.tyni;
  const transfer = add(braidDiffusion(known, outer.metal, omega), complex(0, omega * inductance));
  const { inside, outside } = coveredWall({ ...outer, wall: wallOfOne(outer, braid.layers) }, omega);
  const one = { inside, transfer, outside };
  return braid.layers === 1 ? one : joinShields(one, one, omega, roomOutside(known.meanDiameter / 2, 2 * known.wire));
}

/** Inductance in H/m of the room between a shield at `radius` m and the middle of the next, `distance` m further out. */
const roomOutside = (radius: number, distance: number): number =>
  (vacuumPermeability / (2 * Math.PI)) * Math.log1p(distance / radius);

/** The wall stands for all layers together: that of one of them, by its cross-section. */
const wallOfOne = ({ innerRadius, wall }: OuterConductor, layers: number): number =>
  Math.sqrt(innerRadius ** 2 + ((innerRadius + wall) ** 2 - innerRadius ** 2) / layers) - innerRadius;

/**
 * Transfer impedance (ohm/m): voltage a metre along the outside for a current inside, as IEC 62153-4-3 measures it (number
 * from memory). Null where a braid is not known in detail. Models differ in what they leave out: ask with both.
 */
export const transferImpedance = (
  outer: OuterConductor,
  angularFrequency: number,
  model: BraidModel = "Tyni 1976",
): Complex | null => shieldImpedances(outer, angularFrequency, model)?.transfer ?? null;
