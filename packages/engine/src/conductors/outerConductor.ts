/** The outer conductor of a coaxial line as the wave inside sees it. */
import { add, type Complex, complex, scale } from "../numerics/complex";
import type { OuterConductor } from "./conductor";
import { joinShields, type ShieldImpedances, tubeImpedances } from "./tubeImpedances";

/**
 * Internal impedance per metre (ohm/m) of an outer conductor whose return flows inside it: a tube with a finite wall or an
 * endless one, its coating or foil within it; exact for smooth tubes. `angularFrequency` in rad/s, 0 gives the direct-current
 * resistance (0 for an endless wall). The resistance factor (braid) multiplies resistance and internal reactance of wall
 * and coating alike. Source: Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532.
 */
export function outerConductorImpedance(outer: OuterConductor, angularFrequency: number): Complex {
  const { innerRadius, wall, metal, shield } = outer;
  if (!(innerRadius > 0 && wall > 0 && metal.conductivity > 0 && metal.permeability > 0)) {
    throw new RangeError(
      `outer conductor: inner radius ${innerRadius} m, wall ${wall} m, ${metal.name}; expected positive values`,
    );
  }
  const covered = coveredWall(outer, angularFrequency);
  if (shield?.form !== "foil and braid") return add(covered.inside, complex(outer.addedResistance ?? 0));
  const { foil } = shield;
  return joinShields(tubeImpedances(innerRadius, foil.thickness, foil.metal, angularFrequency), covered).inside;
}

/** Wall and coating as tubes, ohm/m, times the resistance factor. */
export function coveredWall(outer: OuterConductor, angularFrequency: number): ShieldImpedances {
  const { innerRadius, wall, metal, coating, resistanceFactor } = outer;
  const bare = tubeImpedances(innerRadius, wall, metal, angularFrequency);
  const both =
    coating === undefined
      ? bare
      : joinShields(tubeImpedances(innerRadius, coating.thickness, coating.metal, angularFrequency), bare);
  return {
    inside: scale(both.inside, resistanceFactor),
    transfer: scale(both.transfer, resistanceFactor),
    outside: scale(both.outside, resistanceFactor),
  };
}
