/** Which part of the power leaves where: by elevation, near the strongest direction, and the gain all over the sky. */
import { gaussLegendre } from "../numerics/gaussLegendre";
import { speedOfLight } from "../numerics/vacuum";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { isRealSoil } from "../wires/structure";
import { azimuthsRound, directionGrid } from "./directions";
import { gains as gainsIn, radiationIntensities } from "./gain";
import { extent } from "./powerAccount";

/** Power (W) that leaves between two elevations (rad), all azimuths: Gauss points in the sine of elevation, equal steps in azimuth. */
export function radiatedBetween(driven: DrivenAntenna, low: number, high: number): number {
  const size = (2 * Math.PI * driven.solution.frequency * extent(driven)) / speedOfLight;
  const rule = gaussLegendre(16 + Math.ceil(size / 2));
  const azimuths = azimuthsRound(24 + 2 * Math.ceil(size));
  const [a, b] = [Math.sin(low), Math.sin(high)];
  const elevations = [...rule.points].map((x) => Math.asin((a + b + (b - a) * x) / 2));
  const intensities = radiationIntensities(driven, directionGrid(elevations, azimuths));
  return intensities.reduce((power, intensity, i) => {
    const weight = rule.weights[Math.floor(i / azimuths.length)]!;
    return power + (weight * (b - a) * Math.PI * intensity) / azimuths.length;
  }, 0);
}

/** Linear gains over the sky: one row an elevation, one column an azimuth (rad, ascending; azimuths from 0 below 2 pi). */
export interface SkyGains {
  readonly elevations: readonly number[];
  readonly azimuths: readonly number[];
  readonly gains: readonly (readonly number[])[];
}

/** Gains every `step` degrees of elevation and azimuth (a divisor of 90), the lower half only in free space. */
export function skyGains(driven: DrivenAntenna, step: number): SkyGains {
  const { soil } = driven.solution;
  const lowest = soil.kind === "free space" ? -90 : 0;
  const radians = (from: number, count: number) =>
    Array.from({ length: count }, (_, i) => ((from + i * step) * Math.PI) / 180);
  const elevations = radians(lowest, (90 - lowest) / step + 1);
  const azimuths = radians(0, 360 / step);
  const all = gainsIn(driven, directionGrid(elevations, azimuths));
  const gains = elevations.map((elevation, i) => {
    if (elevation === 0 && isRealSoil(soil)) return azimuths.map(() => 0);
    return [...all.subarray(i * azimuths.length, (i + 1) * azimuths.length)];
  });
  return { elevations, azimuths, gains };
}

/**
 * Share of the radiated power that leaves in directions within 3 dB of the strongest (`most`, linear), by cells of a table of
 * the sky: to about two hundredths with cells of 5 degrees.
 */
export function shareNearMaximum({ elevations, azimuths, gains }: SkyGains, most: number): number {
  let [near, whole] = [0, 0];
  const half = (elevations[1]! - elevations[0]!) / 2;
  elevations.forEach((elevation, i) => {
    const [low, high] = [Math.max(elevations[0]!, elevation - half), Math.min(Math.PI / 2, elevation + half)];
    const cell = (Math.sin(high) - Math.sin(low)) / azimuths.length;
    for (const g of gains[i]!) {
      whole += cell * g;
      if (g >= most / 2) near += cell * g;
    }
  });
  return near / whole;
}
