/** What comes through a braid: by diffusion through its wires, through its holes, and by the weave. */
import { type Complex, complex, divide, exponential, multiply, scale, subtract } from "../numerics/complex";
import { ellipticIntegrals } from "../numerics/ellipticIntegrals";
import { vacuumPermeability } from "../numerics/vacuum";
import type { KnownBraid } from "./braidGeometry";
import { braidResistance } from "./braidSurface";
import type { Metal } from "./conductor";
import { skinDepth } from "./solidWire";

/** Transfer inductance of one layer of braid, H/m, by two published models that leave out different things. */
export interface BraidInductances {
  /** Holes alone, as ellipses in a thin sheet, by polarizability. */
  readonly vance: number;
  /** Holes between carriers, less what the turns of the crossing carriers couple; negative where the weave is more. */
  readonly tyni: number;
}

/**
 * Source: Vance, IEEE Trans. EMC-17 (1975) 71: M = (pi mu0/(6 C)) (1 - K)^(3/2) e^2/(E - (1 - e^2) K), e^2 = 1 - tan^2(a).
 * Tyni, Proc. 1st Symp. EMC, Montreux 1975/Wroclaw 1976: M = mu0 (2 C/(pi cos(a))) (b/(pi D))^2 exp(-pi d/b - 2) - mu0 (h/(4 pi D))
 * (1 - tan^2(a)), b = (2 pi D/C) cos(a) - N d between carriers, h = 2 d^2/(b + d) between their layers. Both from memory.
 */
export function braidInductances(braid: KnownBraid): BraidInductances {
  const { carriers, ends, wire, angle, meanDiameter } = braid;
  const holes =
    ((Math.PI * vacuumPermeability) / (6 * carriers)) * Math.max(0, 1 - braid.coverage) ** 1.5 * holeShape(angle);
  const gap = ((2 * Math.PI * meanDiameter) / carriers) * Math.cos(angle) - ends * wire;
  const apertures =
    gap <= 0
      ? 0
      : ((2 * carriers) / (Math.PI * Math.cos(angle))) *
        (gap / (Math.PI * meanDiameter)) ** 2 *
        Math.exp((-Math.PI * wire) / gap - 2);
  const between = (2 * wire ** 2) / (Math.max(gap, 0) + wire);
  const weave = (between / (4 * Math.PI * meanDiameter)) * (1 - Math.tan(angle) ** 2);
  return { vance: holes, tyni: vacuumPermeability * (apertures - weave) };
}

/** Shape of the diamond holes as ellipses, long along the axis below 45 degrees and round it above; 4/pi where they are round. */
function holeShape(angle: number): number {
  const flat = Math.min(Math.tan(angle), 1 / Math.tan(angle));
  const square = 1 - flat * flat;
  if (square < 1e-6) return 4 / Math.PI;
  // Straight carriers leave slots that let nothing of an axial current through: the shape tends to 1.
  if (flat < 1e-9) return 1;
  const { first, second } = ellipticIntegrals(Math.sqrt(square));
  return Math.tan(angle) <= 1 ? square / (second - (1 - square) * first) : square / (flat * (first - second));
}

/** Diffusion through the wires of one layer, ohm/m: R0 g d/sinh(g d), g = (1 + j)/delta. Source: Vance as above. */
export function braidDiffusion(braid: KnownBraid, metal: Metal, angularFrequency: number): Complex {
  if (metal.conductivity === Number.POSITIVE_INFINITY) return complex(0);
  const direct = braidResistance(braid, metal);
  if (angularFrequency === 0) return complex(direct);
  const x = scale(complex(1, 1), braid.wire / skinDepth(metal.conductivity, metal.permeability, angularFrequency));
  const decay = exponential(scale(x, -1));
  return scale(divide(multiply(x, decay), subtract(complex(1), multiply(decay, decay))), 2 * direct);
}
