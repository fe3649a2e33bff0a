/** Coaxial lines by their build for tests of the engine: copper and polyethylene. Tests only. */
import type { CoaxialLine } from "../lines/lineModel";

/** IEC 60028, annealed. */
export const copperMetal = { name: "copper", conductivity: 58e6, permeability: 1 } as const;

interface Sizes {
  /** m: radius of the inner conductor, inner radius of the outer one. */
  readonly inner: number;
  readonly outer: number;
  /** Where the inner conductor is stranded: its effective over its geometric radius. */
  readonly strands?: number;
  /** Surface resistance over that of smooth copper. */
  readonly innerFactor?: number;
  readonly outerFactor?: number;
  /** m; many skin depths when left out. */
  readonly wall?: number;
}

export const coaxialBuild = ({ inner, outer, strands, innerFactor, outerFactor, wall }: Sizes): CoaxialLine => ({
  kind: "coaxial",
  inner: {
    form: strands === undefined ? "solid" : "stranded",
    layers: [{ metal: copperMetal, outerRadius: inner }],
    holeRadius: 0,
    effectiveRadiusRatio: strands ?? 1,
    resistanceFactor: innerFactor ?? 1,
  },
  outer: {
    innerRadius: outer,
    wall: wall ?? Number.POSITIVE_INFINITY,
    metal: copperMetal,
    resistanceFactor: outerFactor ?? 1,
  },
  dielectric: { name: "polyethylene", permittivity: 2.26, lossTangent: 3e-4 },
});
