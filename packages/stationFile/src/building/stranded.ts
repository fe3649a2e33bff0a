/** A stranded conductor, until more is known of it than its count. */
import type { Metal, RoundConductor } from "@feedpath/engine";

/** Effective over geometric radius: tables of cable handbooks, from memory; 1 for counts they do not have. */
const radiusRatios: Readonly<Record<number, number>> = { 7: 0.939, 19: 0.97, 37: 0.98 };

/** `count` strands of `diameter` m in rounds of 1, 6, 12, ...: (2 k + 1) diameters across with k rounds. */
export const stranded = (count: number, diameter: number, metal: Metal): RoundConductor => ({
  form: "stranded",
  layers: [{ metal, outerRadius: (diameter / 2) * Math.sqrt((4 * count - 1) / 3) }],
  holeRadius: 0,
  effectiveRadiusRatio: radiusRatios[count] ?? 1,
  resistanceFactor: 1.25,
  strands: { count, diameter },
});
