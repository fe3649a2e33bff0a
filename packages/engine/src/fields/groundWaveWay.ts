/** The way of a ground wave and what it meets on it. */
import { complexPermittivity } from "../ground/soilMedium";
import type { Complex } from "../numerics/complex";
import type { Soil } from "../wires/structure";
import { flatAttenuation, grazingImpedance, numericalDistance } from "./groundWaveFlat";
import { sphereAttenuation } from "./groundWaveSphere";

/** Nearer than this the terms that fall faster count. */
const nearestInWavelengths = 10;
const leastRadius = 1e5;
/** On a sphere waves spread less than in a plane: by 1 per cent at this share of the radius. */
const farthestInRadii = 1 / 3;

/** Along the ground: wavenumber of the air (rad/m), distance (m), radius of the sphere (m), null when flat. */
export interface Way {
  readonly k: number;
  readonly distance: number;
  readonly radius: number | null;
}

/** Field over that on a perfect plane, for a normalised surface impedance (or TE admittance). */
export const attenuationOf = (impedance: Complex, { k, distance, radius }: Way): Complex =>
  radius === null
    ? flatAttenuation(numericalDistance(k, distance, impedance))
    : sphereAttenuation(k, distance, radius, impedance);

/** Refuses what is no soil of one kind. */
export function soilImpedance(soil: Soil, frequency: number): ReturnType<typeof grazingImpedance> {
  if (soil.kind !== "homogeneous") {
    throw new RangeError(`ground wave over "${soil.kind}" ground: expected soil of one kind; see nearField for others`);
  }
  return grazingImpedance(complexPermittivity(soil, frequency));
}

/** Throws RangeError for a way too short or a sphere too small. */
export function checkWay({ k, distance, radius }: Way): void {
  const least = (nearestInWavelengths * 2 * Math.PI) / k;
  if (!(distance >= least && Number.isFinite(distance))) {
    throw new RangeError(`ground wave at ${distance} m: expected ${Math.ceil(least)} m or more`);
  }
  if (radius !== null && !(radius >= leastRadius && Number.isFinite(radius))) {
    throw new RangeError(
      `ground wave on a sphere of ${radius} m: expected ${leastRadius} m or more, or null for flat ground`,
    );
  }
  if (radius !== null && distance > farthestInRadii * radius) {
    throw new RangeError(`ground wave at ${distance} m: expected ${Math.floor(farthestInRadii * radius)} m or less`);
  }
}
