/**
 * The outside of the line made longer and shorter at the transmitter's end, over half a wave in all: every state that a
 * line of another length can bring. The transmitter and what it is earthed to move along; the inside stays as it is.
 */
import type { OutsideLine } from "../../antenna/outside/outsideLine";
import { requestAt } from "../../chain/solveRequest";
import { complex } from "../../numerics/complex";
import { speedOfLight } from "../../numerics/vacuum";
import { exactly } from "../../quantity/quantity";
import { mapParts } from "../../station/mapParts";
import type { Place } from "../../station/place";
import type { Station } from "../../station/station";
import type { Progress } from "../common/question";
import { withImpedances } from "./chokes";
import { routeBetween, routeLength } from "./probedStation";
import { type Asked, isOutside, type OutsideState, workOutside } from "./state";

const points = 11;
/** What is left of the first straight piece at least, m. */
const leastLeft = 0.5;

export interface LengthPoint {
  /** m more than in the file. */
  readonly extra: number;
  readonly share: number;
  readonly shareWithoutChokes: number;
  readonly swr: number;
}

export interface LengthStudy {
  readonly points: readonly LengthPoint[];
  readonly worst: LengthPoint;
  readonly leftOut: string | null;
}

export function* studyLengths(
  station: Station,
  asked: Asked,
  run: OutsideLine,
  share: (state: OutsideState) => number,
): Generator<Progress, LengthStudy | null> {
  const first = lineOf(station, run.lines[0]!);
  if (!first) return null;
  const wave = speedOfLight / asked.frequency;
  const piece = routeLength(first.slice(0, 2));
  const shorter = Math.max(0, Math.min(wave / 4, piece - leastLeft));
  const found: LengthPoint[] = [];
  let leftOut: string | null = null;
  const step = wave / 2 / (points - 1);
  const least = -Math.floor(shorter / step);
  const all = Array.from({ length: points }, (_, i) => {
    const extra = (least + i) * step;
    return { extra, changed: lengthened(station, run, first, extra) };
  });
  const ahead = all.map(({ changed }) => requestAt(changed, asked.frequency));
  for (const [i, { extra, changed }] of all.entries()) {
    yield { done: i, of: points, what: "lengths of the outside", ...(i === 0 ? { ahead } : {}) };
    const state = workOutside(changed, asked);
    const bare = workOutside(
      withImpedances(changed, () => complex(0)),
      asked,
    );
    if (isOutside(state) && isOutside(bare))
      found.push({
        extra,
        share: share(state),
        shareWithoutChokes: share(bare),
        swr: state.point.swrAtTransmitter,
      });
    else if (!isOutside(state)) leftOut ??= state.refused.why;
  }
  if (found.length < 3) return null;
  return { points: found, worst: found.reduce((a, b) => (b.share > a.share ? b : a)), leftOut };
}

function lineOf(station: Station, name: string): readonly Place[] | null {
  let route: readonly Place[] | null = null;
  mapParts(station.path, (part) => {
    if (part.kind === "line" && part.name === name) route = part.route;
    return [part];
  });
  return route;
}

/** The station with `extra` metres of line more before the start of the route, level; its earth moves along. */
export function lengthened(station: Station, run: OutsideLine, route: readonly Place[], extra: number): Station {
  if (Math.abs(extra) < 1e-9) return station;
  const start = route[0]!;
  const moved = extra < 0 ? routeBetween(route, -extra, routeLength(route)) : [stretched(route, extra), ...route];
  const shift: readonly [number, number] = [moved[0]![0].value - start[0].value, moved[0]![1].value - start[1].value];
  const path = mapParts(station.path, (part) =>
    part.kind === "line" && part.name === run.lines[0] ? [{ ...part, route: moved }] : [part],
  );
  const earths = station.earths.map((earth) =>
    earth.name === run.earthed && earth.at ? { ...earth, at: shifted(earth.at, shift) } : earth,
  );
  return { ...station, path, earths };
}

const shifted = (place: Place, [x, y]: readonly [number, number]): Place => [
  exactly(place[0].value + x),
  exactly(place[1].value + y),
  place[2],
];

/** A place `extra` metres before the start, level, in the direction in which the line already leads away. */
function stretched(route: readonly Place[], extra: number): Place {
  const [start, next] = [route[0]!, route[1]!];
  const last = route.at(-1)!;
  const away = [next, last].map((p) => [start[0].value - p[0].value, start[1].value - p[1].value] as const);
  const [x, y] = away.find(([dx, dy]) => Math.hypot(dx, dy) > 0.1) ?? [0, -1];
  const unit = extra / Math.hypot(x, y);
  return [exactly(start[0].value + x * unit), exactly(start[1].value + y * unit), start[2]];
}
