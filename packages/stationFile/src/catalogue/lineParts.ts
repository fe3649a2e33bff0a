/** What the lines of the catalogue have in common: conductors, insulation, loss points. */
import {
  cableDielectric,
  cableMetals,
  type Dielectric,
  type LineEntry,
  type OuterConductor,
  type Quantity,
  type RoundConductor,
  within,
} from "@feedpath/engine";

export interface CatalogueLine extends LineEntry {
  /** A phrase for people: size, insulation, what it is used for. */
  readonly about: string;
}

const perHundredFeet = 100 * 0.3048;
const { copper, steel } = cableMetals;

/** Strands and braid raise the resistance over smooth conductors: common practice, no source; checked against loss points. */
const strandFactor = 1.25;
const braidFactor = 2;

/** Strands of copper: diameter over all in m; effective over geometric diameter from cable handbooks (from memory). */
export const strands = (diameter: number, effectiveRadiusRatio: number): RoundConductor => ({
  form: "stranded",
  layers: [{ metal: copper, outerRadius: diameter / 2 }],
  holeRadius: 0,
  effectiveRadiusRatio,
  resistanceFactor: strandFactor,
});

/** Copper-clad steel: copper of 6.5 % of the radius, the 30 % IACS grade of ASTM B452 (from memory). */
export const cladSteel = (diameter: number): RoundConductor => ({
  form: "solid",
  layers: [
    { metal: steel, outerRadius: 0.935 * (diameter / 2) },
    { metal: copper, outerRadius: diameter / 2 },
  ],
  holeRadius: 0,
  effectiveRadiusRatio: 1,
  resistanceFactor: 1,
});

export const braid = (innerDiameter: number): OuterConductor => ({
  innerRadius: innerDiameter / 2,
  wall: Number.POSITIVE_INFINITY,
  metal: copper,
  resistanceFactor: braidFactor,
});

export function dielectric(name: string): Dielectric {
  const found = cableDielectric(name);
  if (!found) throw new Error(`catalogue of lines: no dielectric "${name}"`);
  return { name: found.name, permittivity: found.permittivity, lossTangent: found.lossTangent };
}

/** Pieces of one designation are taken to come from one reel: their constants move together. */
export const known = (value: number, bound: number, tied: string): Quantity => ({
  ...within(value, bound, "catalogue"),
  tied,
});

/** MHz to dB per 100 ft; all points of a line move together. Relative spans where none is given: `low` and `high`. */
export function lossPoints(
  designation: string,
  points: readonly (readonly [megahertz: number, nominal: number, highest?: number])[],
  low: number,
  high: number,
): { frequency: number; decibelsPerMetre: Quantity }[] {
  return points.map(([megahertz, nominal, highest]) => ({
    frequency: megahertz * 1e6,
    decibelsPerMetre: {
      value: nominal / perHundredFeet,
      low: (low * nominal) / perHundredFeet,
      high: (highest ?? high * nominal) / perHundredFeet,
      basis: "catalogue",
      tied: `loss of ${designation}`,
    },
  }));
}
