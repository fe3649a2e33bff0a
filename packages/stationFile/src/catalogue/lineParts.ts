/** What the lines of the catalogue have in common: conductors, insulation, loss points. */
import {
  type Braid,
  between,
  braidCoverage,
  cableDielectric,
  cableMetals,
  type Dielectric,
  type OuterConductor,
  plating,
  type platingThickness,
  type Quantity,
  type RoundConductor,
  shieldedConductor,
  strandedConductor,
  usualBraid,
  within,
} from "@feedpath/engine";

export const fromMemory = "published, quoted from memory";
export const practice = "common practice, no source";

export const perHundredFeet = 1 / (100 * 0.3048);
export const perHundredMetres = 1 / 100;
/** Ohm. */
export const vacuumImpedance = 4e-7 * Math.PI * 299_792_458;
const { copper, steel, aluminium } = cableMetals;

/** Copper of `share` of the radius of every strand over steel. */
const cladding = (strand: number, share: number) => ({ metal: copper, thickness: share * (strand / 2) });

export type Coat = keyof typeof platingThickness;

/** Strands of copper, plated or bare; m across one, over its coat. */
export const strands = (count: 7 | 19, strand: number, coat?: Coat): RoundConductor =>
  strandedConductor(count, strand, copper, coat ? { coatings: [plating(coat)] } : {});

/** Strands of copper-clad steel, silvered or bare; m across one. */
export const cladStrands = (count: 7 | 19, strand: number, share: number, coat?: Coat): RoundConductor =>
  strandedConductor(count, strand, steel, { coatings: [cladding(strand, share), ...(coat ? [plating(coat)] : [])] });

/** One wire of copper, plated or bare; m. */
export const solid = (diameter: number, coat?: Coat): RoundConductor =>
  strandedConductor(1, diameter, copper, coat ? { coatings: [plating(coat)] } : {});

/** Shares of the radius that are copper, by the conductivity of the whole wire beside steel of 10 % IACS. */
export const drop21 = 0.065;
export const mil40 = 0.1835;

/** Copper-clad steel: copper of 6.5 % of the radius unless told, 21 % IACS with the steel as listed (from memory). */
export const cladSteel = (diameter: number, share = drop21, coat?: Coat): RoundConductor =>
  strandedConductor(1, diameter, steel, { coatings: [cladding(diameter, share), ...(coat ? [plating(coat)] : [])] });

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

/** Carriers, wires in each, and m across one; at 28 degrees to the axis, as usual. */
export type BraidWires = readonly [carriers: number, ends: number, wire: number];

const wiresOf = ([carriers, ends, wire]: BraidWires, layers = 1): Braid => {
  return { coverage: null, carriers, ends, wire, angle: usualBraid.angle, layers };
};

/** One or two braids of copper; diameter below them in m. */
export const braid = (innerDiameter: number, wires: BraidWires, coat?: Coat, layers = 1): OuterConductor =>
  shieldedConductor({
    innerRadius: innerDiameter / 2,
    metal: copper,
    shield: { form: "braid", braid: wiresOf(wires, layers) },
    ...(coat && { coating: plating(coat) }),
  });

/** m of aluminium on the side of the film that meets the braid (from memory). */
const foilThickness = 9e-6;

/** Aluminium foil on a film, under a braid of aluminium or tinned copper; diameter below in m. */
export const foilAndBraid = (
  innerDiameter: number,
  wires: BraidWires,
  metal: "tinned copper" | "aluminium",
): OuterConductor =>
  shieldedConductor({
    innerRadius: innerDiameter / 2,
    metal: metal === "aluminium" ? aluminium : copper,
    shield: {
      form: "foil and braid",
      foil: { metal: aluminium, thickness: foilThickness },
      braid: wiresOf(wires),
    },
    ...(metal === "tinned copper" && { coating: plating("tin") }),
  });

/** "24 carriers of 8 wires of 0.18 mm at 28°, covering 97 %", or nothing where there is no braid. */
export function braidSays({ innerRadius, shield }: OuterConductor): string {
  if (!shield || !("braid" in shield)) return "";
  const { carriers, ends, wire, angle } = shield.braid;
  const coverage = braidCoverage(innerRadius, shield.braid);
  if (wire === null || angle === null || coverage === null) return "";
  const degrees = Math.round((180 * angle) / Math.PI);
  return `${carriers} carriers of ${ends} wires of ${Number((1000 * wire).toFixed(3))} mm at ${degrees}°, covering ${Math.round(100 * coverage)} %`;
}

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
