/**
 * Field of an antenna far off along the ground: what it would be over a perfect plane, times the attenuation of the ground
 * wave. By reciprocity: the wave that comes from a distant upright dipole meets the antenna's currents, rising with
 * height as the surface's impedance says and tilted forwards by it.
 */
import { type Complex, complex, multiply } from "../numerics/complex";
import { speedOfLight, vacuumImpedance } from "../numerics/vacuum";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { numericalDistance } from "./groundWaveFlat";
import { metCurrents, type Rise, riseAt, riseOf } from "./groundWaveRise";
import { attenuationOf, checkWay, soilImpedance } from "./groundWaveWay";

/** Where the field is asked: along the ground, m; radians clockwise from north; m above the ground. */
export interface GroundPlace {
  readonly distance: number;
  readonly azimuth: number;
  readonly height: number;
}

/** Phasors rms. */
export interface GroundWave {
  /** Upwards, V/m. */
  readonly vertical: Complex;
  /** Horizontal across the way, counter-clockwise seen from above, V/m. */
  readonly across: Complex;
  /** Attenuation of the vertical field on the ground: 1 over a perfect plane. */
  readonly attenuation: Complex;
  /** Norton's, of a flat earth. */
  readonly numericalDistance: Complex;
}

const nearestInExtents = 10;
/** Largest k (sum of heights)^2/(2 distance): beyond it two terms in height are not enough. */
const mostRise = 0.1;

function checkPlace(driven: DrivenAntenna, { distance, height }: GroundPlace, k: number): void {
  const { position, count } = driven.solution.model.points;
  let [widest, highest] = [0, 0];
  for (let p = 0; p < count; p++) {
    widest = Math.max(widest, Math.hypot(position[3 * p]!, position[3 * p + 1]!));
    highest = Math.max(highest, position[3 * p + 2]!);
  }
  const least = Math.max(nearestInExtents * widest, (k * (highest + height) ** 2) / (2 * mostRise));
  if (!(height >= 0 && Number.isFinite(height))) {
    throw new RangeError(`ground wave at a height of ${height} m: expected 0 m or more`);
  }
  if (distance < least) {
    throw new RangeError(
      `ground wave at ${distance} m: for this antenna and height expected ${Math.ceil(least)} m or more`,
    );
  }
}

/**
 * The ground wave over homogeneous soil, flat (`radius` null) or a smooth sphere of `radius` m. It is the field of the
 * antenna's own currents over its own soil, so that all its losses are in it. What is left out falls as 1/(k distance) and
 * is at most 6 of it: 10 per cent at 10 wavelengths, 1 at 100. Throws RangeError nearer than 10 wavelengths or 10 of the
 * antenna's extents from the origin, where k (sum of heights)^2 exceeds a fifth of the distance, over other ground, or
 * for a radius below 100 km or three times the distance; nearField is exact near by.
 */
export function groundWaveField(driven: DrivenAntenna, place: GroundPlace, radius: number | null): GroundWave {
  const { soil, frequency } = driven.solution;
  const k = (2 * Math.PI * frequency) / speedOfLight;
  const impedance = soilImpedance(soil, frequency);
  const way = { k, distance: place.distance, radius };
  checkWay(way);
  checkPlace(driven, place, k);
  const attenuation = attenuationOf(impedance.vertical, way);
  const [vertical, horizontal] = [riseOf(impedance.vertical, way), riseOf(impedance.horizontal, way)];
  const met = metCurrents(driven, place.azimuth, k, vertical, horizontal);
  // -j w mu0 2 e^{-jkd}/(4 pi d): what currents give over a perfect plane.
  const phase = -k * place.distance - Math.PI / 2;
  const size = (k * vacuumImpedance) / (2 * Math.PI * place.distance);
  const wave = complex(size * Math.cos(phase), size * Math.sin(phase));
  const sent = (sum: Complex, loss: Complex, rise: Rise): Complex =>
    multiply(multiply(wave, sum), multiply(loss, riseAt(rise, place.height)));
  return {
    vertical: sent(met.upright, attenuation, vertical),
    across: sent(met.across, attenuationOf(impedance.horizontal, way), horizontal),
    attenuation,
    numericalDistance: numericalDistance(k, place.distance, impedance.vertical),
  };
}
