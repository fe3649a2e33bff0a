/** Lobes of a vertical cut through the pattern. */
import type { DrivenAntenna } from "../wires/driveAntenna";
import { directionGrid } from "./directions";
import { gain, gains } from "./gain";
import type { Direction } from "./strongestDirection";

const step = Math.PI / 360;

/**
 * All local maxima of gain over elevation at one azimuth (radians), from the lowest up; refined by a parabola through
 * half-degree samples (0.02 degree). Ends of the cut count when the gain falls away from them.
 */
export function elevationLobes(driven: DrivenAntenna, azimuth: number): readonly Direction[] {
  const lowest = driven.solution.soil.kind === "free space" ? -Math.PI / 2 : 0;
  const count = Math.round((Math.PI / 2 - lowest) / step);
  const elevations = Array.from({ length: count + 1 }, (_, i) => lowest + i * step);
  const values = gains(driven, directionGrid(elevations, [azimuth]));
  const lobes: Direction[] = [];
  for (let i = 0; i <= count; i++) {
    const here = values[i]!;
    const before = values[i - 1] ?? -1;
    const after = values[i + 1] ?? -1;
    if (!(here > 0 && here > before && here >= after)) continue;
    const curvature = before - 2 * here + after;
    const inside = i > 0 && i < count && curvature < 0;
    const shift = inside ? (before - after) / (2 * curvature) : 0;
    const elevation = lowest + (i + shift) * step;
    lobes.push({ elevation, azimuth, gain: inside ? gain(driven, elevation, azimuth) : here });
  }
  return lobes;
}
