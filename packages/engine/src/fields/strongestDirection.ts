/** Where the gain is largest. */
import { speedOfLight } from "../numerics/vacuum";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { directionGrid } from "./directions";
import { gain, gains, radiationIntensities } from "./gain";

export interface Direction {
  /** Radians above the horizon. */
  readonly elevation: number;
  /** Radians clockwise from north, 0 to 2 pi. */
  readonly azimuth: number;
  /** Linear. */
  readonly gain: number;
}

const degree = Math.PI / 180;
const coarsestElevation = 5 * degree;
const coarsestAzimuth = 15 * degree;
/** Grid points from one maximum to the next of two sources as far apart as the antenna reaches. */
const pointsPerLobe = 4;
/** A maximum of the grid, its parabola included, may be off by this share of the true one: (1 - 0.942). */
const gridDoubt = 0.07;
const mostClimbs = 6;
/** Directions this close in gain (relative) are equal: the first stays. */
const equal = 1e-5;
/** Points with less than this share of the largest current moment make no lobes of their own. */
const faint = 0.02;
const halvings = 9;

const turn = (azimuth: number): number => ((azimuth % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);

/** Reflects a direction pushed beyond the zenith or nadir; null when it left the sky. */
function folded(elevation: number, azimuth: number, lowest: number): [number, number] | null {
  if (elevation > Math.PI / 2) return [Math.PI - elevation, turn(azimuth + Math.PI)];
  return elevation < lowest - 1e-12 ? null : [elevation, turn(azimuth)];
}

/** Level and upright distances (m) between what radiates; over ground the image counts, twice the height away. */
function span(driven: DrivenAntenna): { readonly level: number; readonly upright: number } {
  const { position, count } = driven.solution.model.points;
  const size = Array.from({ length: count }, (_, p) => Math.hypot(driven.moments.re[p]!, driven.moments.im[p]!));
  const least = faint * Math.max(...size);
  const range = (axis: number) => {
    const values = size.flatMap((s, p) => (s >= least ? [position[3 * p + axis]!] : []));
    return { low: Math.min(...values), high: Math.max(...values) };
  };
  const [x, y, z] = [range(0), range(1), range(2)];
  const free = driven.solution.soil.kind === "free space";
  return { level: Math.hypot(x.high - x.low, y.high - y.low), upright: free ? z.high - z.low : 2 * z.high };
}

/** Equal steps of at most `step` from `from` to `to`, both included. */
function steps(from: number, to: number, step: number): number[] {
  const count = Math.ceil((to - from) / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}

/** How far the top of a parabola through three samples lies above the middle one; 0 when that is no maximum. */
function rise(before: number | undefined, here: number, after: number | undefined): number {
  if (before === undefined || after === undefined || before > here || after > here) return 0;
  const curvature = 2 * here - before - after;
  return curvature > 0 ? (before - after) ** 2 / (8 * curvature) : 0;
}

/**
 * Direction of the largest gain: a grid fine enough for the lobes an antenna of this size and height can have, and from
 * each of its maxima that may be the largest a shrinking 3 by 3 search. Within 0.001 dB. Of equal directions the one
 * nearest to the horizon wins.
 */
export function strongestDirection(driven: DrivenAntenna): Direction {
  const lowest = driven.solution.soil.kind === "free space" ? -Math.PI / 2 : 0;
  const wavelength = speedOfLight / driven.solution.frequency;
  const { level, upright } = span(driven);
  const narrowest = (size: number) => wavelength / (pointsPerLobe * Math.max(size, 1e-9));
  const elevations = steps(lowest, Math.PI / 2, Math.min(coarsestElevation, narrowest(Math.max(level, upright))));
  const azimuths = steps(0, 2 * Math.PI, Math.min(coarsestAzimuth, narrowest(level))).slice(0, -1);
  const step = { elevation: elevations[1]! - elevations[0]!, azimuth: azimuths[1]! - azimuths[0]! };
  return summits(driven, elevations, azimuths)
    .map((start) => climb(driven, start, lowest, step))
    .reduce((best, next) => (next.gain > best.gain * (1 + equal) ? next : best));
}

interface Summit {
  readonly elevation: number;
  readonly azimuth: number;
  /** W/sr, by a parabola through neighbours. */
  readonly peak: number;
}

/** Maxima of the grid that may be the largest, from the horizon outwards; of equal ones the first. */
function summits(driven: DrivenAntenna, elevations: readonly number[], azimuths: readonly number[]): Summit[] {
  const all = radiationIntensities(driven, directionGrid(elevations, azimuths));
  const grid = elevations.map((_, i) => all.subarray(i * azimuths.length, (i + 1) * azimuths.length));
  const outwards = elevations.map((_, i) => i).sort((a, b) => Math.abs(elevations[a]!) - Math.abs(elevations[b]!));
  const tops: Summit[] = [];
  for (const i of outwards) {
    const [below, row, above] = [grid[i - 1], grid[i]!, grid[i + 1]];
    for (let k = 0; k < azimuths.length; k++) {
      const here = row[k]!;
      const [left, right] = [row[(k || azimuths.length) - 1]!, row[k + 1 === azimuths.length ? 0 : k + 1]!];
      const most = here * (1 + 1e-9);
      if (left > most || right > most || (below && below[k]! > most) || (above && above[k]! > most)) continue;
      const peak = here + rise(below?.[k], here, above?.[k]) + rise(left, here, right);
      tops.push({ elevation: elevations[i]!, azimuth: azimuths[k]!, peak });
    }
  }
  const top = tops.reduce((most, s) => Math.max(most, s.peak), 0);
  const likely: Summit[] = [];
  for (const s of tops) {
    const twin = (other: Summit): boolean => Math.abs(other.peak - s.peak) <= equal * top;
    if (s.peak >= (1 - gridDoubt) * top && !likely.some(twin)) likely.push(s);
  }
  const least = likely.map((s) => s.peak).sort((a, b) => b - a)[mostClimbs - 1] ?? 0;
  return likely.filter((s) => s.peak >= least);
}

function climb(
  driven: DrivenAntenna,
  start: Summit,
  lowest: number,
  grid: { readonly elevation: number; readonly azimuth: number },
): Direction {
  let best: Direction = {
    elevation: start.elevation,
    azimuth: start.azimuth,
    gain: gain(driven, start.elevation, start.azimuth),
  };
  for (let step = 0.5; step > 0.5 ** (halvings + 1); step /= 2) {
    const { elevation, azimuth } = best;
    const round = [-1, 0, 1].flatMap((up) =>
      [-1, 0, 1].flatMap((aside) => {
        const at = folded(elevation + up * step * grid.elevation, azimuth + aside * step * grid.azimuth, lowest);
        return at ? [at] : [];
      }),
    );
    const found = gains(driven, {
      elevation: Float64Array.from(round, (at) => at[0]),
      azimuth: Float64Array.from(round, (at) => at[1]),
    });
    round.forEach((at, i) => {
      if (found[i]! > best.gain * (1 + 1e-9)) best = { elevation: at[0], azimuth: at[1], gain: found[i]! };
    });
  }
  return best;
}
