/** What the lines of the catalogue have in common: conductors, insulation, loss points. */
import {
  between,
  cableDielectric,
  cableMetals,
  type Dielectric,
  type OuterConductor,
  type Quantity,
  type RoundConductor,
  within,
} from "@feedpath/engine";

export const fromMemory = "published, quoted from memory";
export const practice = "common practice, no source";

export const perHundredFeet = 1 / (100 * 0.3048);
export const perHundredMetres = 1 / 100;
/** Ohm. */
export const vacuumImpedance = 4e-7 * Math.PI * 299_792_458;
const { copper, steel, aluminium } = cableMetals;

/** Strands and braid raise the resistance over smooth conductors: common practice, no source; checked against loss points. */
const strandFactor = 1.25;
const braidFactor = 2;

/** Effective over geometric diameter by the number of strands: cable handbooks (from memory). */
const effectiveRatios: Readonly<Record<number, number>> = { 7: 0.939, 19: 0.97 };

/** Copper of `share` of the radius over steel. */
const clad = (diameter: number, share: number): RoundConductor["layers"] => [
  { metal: steel, outerRadius: (1 - share) * (diameter / 2) },
  { metal: copper, outerRadius: diameter / 2 },
];

/** Strands of copper: diameter over all and of one strand, in m. */
export const strands = (diameter: number, count: 7 | 19, strand: number): RoundConductor => ({
  form: "stranded",
  layers: [{ metal: copper, outerRadius: diameter / 2 }],
  holeRadius: 0,
  effectiveRadiusRatio: effectiveRatios[count]!,
  resistanceFactor: strandFactor,
  strands: { count, diameter: strand },
});

/** Strands of clad steel: the bundle is taken as one clad wire whose copper is as thick as that of a strand. */
export const cladStrands = (diameter: number, count: 7 | 19, strand: number, share: number): RoundConductor => ({
  ...strands(diameter, count, strand),
  layers: clad(diameter, (share * strand) / diameter),
});

/** One wire; m. */
export const solid = (diameter: number): RoundConductor => ({
  form: "solid",
  layers: [{ metal: copper, outerRadius: diameter / 2 }],
  holeRadius: 0,
  effectiveRadiusRatio: 1,
  resistanceFactor: 1,
});

/** Shares of the radius that are copper, by the conductivity of the whole wire beside steel of 10 % IACS. */
export const drop21 = 0.065;
export const mil40 = 0.1835;

/** Copper-clad steel: copper of 6.5 % of the radius unless told, 21 % IACS with the steel as listed (from memory). */
export const cladSteel = (diameter: number, share = drop21): RoundConductor => ({
  ...solid(diameter),
  layers: clad(diameter, share),
});

/** Copper-clad aluminium with a tenth of its section in copper (ASTM B566, class 10, from memory). */
export const cladAluminium = (diameter: number): RoundConductor => ({
  ...solid(diameter),
  layers: [
    { metal: aluminium, outerRadius: Math.sqrt(0.9) * (diameter / 2) },
    { metal: copper, outerRadius: diameter / 2 },
  ],
});

export const copperTube = (diameter: number, wall: number): RoundConductor => ({
  ...solid(diameter),
  form: "tube",
  holeRadius: diameter / 2 - wall,
});

/** One or two braids: diameter below them in m, coverage of one, m across one of its wires. */
export const braid = (innerDiameter: number, coverage: number, wire: number, layers = 1): OuterConductor => ({
  innerRadius: innerDiameter / 2,
  wall: Number.POSITIVE_INFINITY,
  metal: copper,
  resistanceFactor: braidFactor,
  shield: { form: "braid", braid: { coverage, carriers: null, ends: null, wire, angle: null, layers } },
});

export function dielectric(name: string): Dielectric {
  const found = cableDielectric(name);
  if (!found) throw new Error(`catalogue of lines: no dielectric "${name}"`);
  return { name: found.name, permittivity: found.permittivity, lossTangent: found.lossTangent };
}

/** The same with the permittivity of a published velocity factor. */
export const dielectricOf = (name: string, velocityFactor: number): Dielectric => ({
  ...dielectric(name),
  permittivity: 1 / velocityFactor ** 2,
});

/**
 * Foam that is three quarters gas: of the loss tangent of clean polyethylene, 2e-4, about the third that the field in the
 * polyethylene makes (from memory and rough).
 */
export const lightFoam = (velocityFactor: number): Dielectric => ({
  ...dielectricOf("foam polyethylene", velocityFactor),
  lossTangent: 6e-5,
});

/** Pieces of one designation are taken to come from one reel: their constants move together. */
export const known = (value: number, bound: number, tied: string): Quantity => ({
  ...within(value, bound, "catalogue"),
  tied,
});

export const spread = (low: number, high: number): Quantity => between(low, high, "catalogue");

/** Loss at one frequency in MHz, in dB for the length of `per`, and the greatest where a sheet gives it. */
export type LossRow = readonly [megahertz: number, nominal: number, highest?: number];

/** All points of a line move together. Relative spans where no greatest is given: `low` and `high`. */
export function lossPoints(
  designation: string,
  points: readonly LossRow[],
  low: number,
  high: number,
  per = perHundredFeet,
): { frequency: number; decibelsPerMetre: Quantity }[] {
  return points.map(([megahertz, nominal, highest]) => ({
    frequency: megahertz * 1e6,
    decibelsPerMetre: {
      value: nominal * per,
      low: low * nominal * per,
      high: (highest ?? high * nominal) * per,
      basis: "catalogue",
      tied: `loss of ${designation}`,
    },
  }));
}

/** Aluminium foil on a film under a braid: diameter below in m, coverage of the braid. The wall is taken as thick. */
export const foilAndBraid = (
  innerDiameter: number,
  coverage: number,
  wire: number,
  braidMetal: "copper" | "aluminium",
): OuterConductor => ({
  innerRadius: innerDiameter / 2,
  wall: Number.POSITIVE_INFINITY,
  metal: braidMetal === "copper" ? copper : aluminium,
  resistanceFactor: 1,
  shield: {
    form: "foil and braid",
    foil: { metal: aluminium, thickness: foilThickness },
    braid: { coverage, carriers: null, ends: null, wire, angle: null, layers: 1 },
  },
});
/** m of aluminium on the side that meets the braid (from memory). */
const foilThickness = 9e-6;
