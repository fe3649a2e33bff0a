/**
 * The station with further places along the outside of its line where a choke may go: each a choke of no impedance, so
 * that nothing changes until one is given. A line is cut into pieces for it, which its inside does not notice.
 */
import type { OutsideLine } from "../../antenna/outside/outsideLine";
import { complex } from "../../numerics/complex";
import { exactly } from "../../quantity/quantity";
import { mapParts } from "../../station/mapParts";
import type { LinePart, Part } from "../../station/path";
import type { Place } from "../../station/place";
import type { Station } from "../../station/station";
import { chokeOf } from "./chokes";

/** Shares of the whole run at which a line is cut, and how near (share) to its own ends it is not. */
const cuts = [0.25, 0.5, 0.75];
const nearEnd = 0.06;

export const probeName = (index: number): string => `place ${index} along the outside`;

export interface Probed {
  readonly station: Station;
  /** Names of the probes in order from the transmitter; the last one is at the feed. */
  readonly probes: readonly string[];
}

export function probedStation(station: Station, run: OutsideLine): Probed {
  const probes: string[] = [];
  const probe = (): Part => {
    probes.push(probeName(probes.length + 1));
    return chokeOf(probes.at(-1)!, complex(0));
  };
  let start = 0;
  const change = (part: Part): readonly Part[] => {
    if (part.kind !== "line" || !run.lines.includes(part.name)) return [part];
    const before = part.name === run.lines[0] && run.earthed !== null ? [probe()] : [];
    const length = routeLength(part.route);
    const shares = cuts
      .map((cut) => (cut * run.length - start) / length)
      .filter((share) => share * length > nearEnd * run.length && (1 - share) * length > nearEnd * run.length);
    start += length;
    return [...before, ...cutLine(part, shares).flatMap((piece) => [piece, probe()])];
  };
  return { station: { ...station, path: mapParts(station.path, change) }, probes };
}

const distanceOf = (a: Place, b: Place): number =>
  Math.hypot(a[0].value - b[0].value, a[1].value - b[1].value, a[2].value - b[2].value);

/** Metres along a route. */
export const routeLength = (route: readonly Place[]): number =>
  route.slice(1).reduce((sum, place, i) => sum + distanceOf(route[i]!, place), 0);

/** Pieces of a line cut at shares of its route; electrically the same line. */
function cutLine(line: LinePart, shares: readonly number[]): LinePart[] {
  const ends = [0, ...shares, 1];
  return ends.slice(1).map((to, i) => {
    const from = ends[i]!;
    const share = to - from;
    const { value, low, high } = line.length;
    return {
      ...line,
      name: i === 0 ? line.name : `${line.name}, piece ${i + 1}`,
      length: { ...line.length, value: share * value, low: share * low, high: share * high },
      route: routeBetween(line.route, from * routeLength(line.route), to * routeLength(line.route)),
    };
  });
}

/** The part of a route between two distances (m) from its start. */
export function routeBetween(route: readonly Place[], from: number, to: number): Place[] {
  const places: Place[] = [placeAt(route, from)];
  let gone = 0;
  for (const [i, place] of route.entries()) {
    if (i > 0) gone += distanceOf(route[i - 1]!, place);
    if (gone > from + 1e-9 && gone < to - 1e-9) places.push(place);
  }
  return [...places, placeAt(route, to)];
}

function placeAt(route: readonly Place[], distance: number): Place {
  let gone = 0;
  for (const [i, place] of route.slice(1).entries()) {
    const from = route[i]!;
    const step = distanceOf(from, place);
    if (distance <= gone + step + 1e-9 && step > 0) {
      const share = Math.min(1, Math.max(0, (distance - gone) / step));
      if (share === 0) return from;
      if (share === 1) return place;
      const at = (axis: 0 | 1 | 2) =>
        exactly(from[axis].value + share * (place[axis].value - from[axis].value), from[axis].basis);
      return [at(0), at(1), at(2)];
    }
    gone += step;
  }
  return route.at(-1)!;
}
