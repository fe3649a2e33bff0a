/** The station worked out with other radials, everything else as it is. */
import { antennaStructure } from "../../antenna/antennaStructure";
import { requestAt } from "../../chain/solveRequest";
import { workPoint } from "../../chain/workPoint";
import { gain } from "../../fields/gain";
import type { Station } from "../../station/station";
import { movedStation } from "../../station/uncertainInputs";
import type { DrivenAntenna } from "../../wires/driveAntenna";
import { meshRule } from "../../wires/grading";
import { countUnknowns } from "../../wires/validateSize";
import { ranked } from "../common/bounds";
import type { Progress } from "../common/question";
import { stationNumbers, toDecibels } from "../common/stationNumbers";
import type { Worked } from "../common/worked";
import { type RadialCurrent, radialCurrents } from "./currents";
import type { Plan } from "./layouts";
import { type RadialChange, withRadials } from "./withRadials";

/** Unknown currents a tried layout may have: about 4 s of computing in plain TypeScript. The station's own may have more. */
export const mostUnknowns = 1300;
/** Directions over which a gain is averaged where the file wants none. */
const directions = 12;
/** Elevations told besides the wanted one, degrees. */
export const lowElevation = 10;
export const highElevation = 25;

export interface Aim {
  /** Degrees; azimuth null: the mean of all directions. */
  readonly elevation: number;
  readonly azimuth: number | null;
}

export interface RadialPoint extends RadialChange {
  /** Of the power into the antenna, what leaves for the sky; 0 to 1. */
  readonly share: number;
  /** W with path and transmitter as they are. */
  readonly radiatedPower: number;
  readonly resistance: number;
  readonly reactance: number;
  readonly swrAtFeedPoint: number;
  readonly swrAtTransmitter: number;
  /** dBi at the wanted elevation and at the two others. */
  readonly gains: { readonly wanted: number; readonly low: number; readonly high: number };
  readonly currents: readonly RadialCurrent[];
  /** Share with the input that moves it most at its ends; left out where it was not asked for. */
  readonly range?: { readonly low: number; readonly high: number };
}

export interface Study {
  /** The station as it is. */
  readonly present: RadialPoint;
  readonly byCount: readonly RadialPoint[];
  readonly byLength: readonly RadialPoint[];
  readonly sameWire: readonly RadialPoint[];
  readonly otherwise: readonly RadialPoint[];
  readonly allRound: RadialPoint | null;
  /** Name of the input whose range `byCount` carries; null without one. */
  readonly ranged: string | null;
  /** Largest number of radials left out because it would take too long; null where none was. */
  readonly tooMany: number | null;
  /** Why the other place could not be worked out; null where it was. */
  readonly otherRefused: string | null;
}

const key = (c: RadialChange): string => [c.count, c.length.toFixed(4), c.lie, c.allRound ?? false].join();

export function* studyRadials(worked: Worked, antenna: string, plan: Plan, aim: Aim): Generator<Progress, Study> {
  const present = presentPoint(worked, plan, aim);
  const known = new Map<string, RadialPoint | string>(plan.present ? [[key(plan.present), present]] : []);
  const all = [plan.byCount, plan.byLength, plan.sameWire, plan.otherwise, plan.allRound ? [plan.allRound] : []].flat();
  const left = new Set<number>();
  const open = [...new Map(all.map((c) => [key(c), c])).values()].filter((c) => !known.has(key(c)));
  const input = rangedInput(worked);
  const total = open.length + (input ? 2 * plan.byCount.length : 0);
  let done = 0;
  const tried = open.map((change) => {
    const station = withRadials(worked.station, antenna, change);
    return { change, station, tooLarge: station !== null && unknownsOf(worked, station) > mostUnknowns };
  });
  const ahead = tried.flatMap((t) => (t.station && !t.tooLarge ? [requestAt(t.station, worked.frequency)] : []));
  for (const [i, { change, station, tooLarge }] of tried.entries()) {
    yield { done: done++, of: total, what: "radials", ...(i === 0 ? { ahead } : {}) };
    if (tooLarge) left.add(change.count);
    else known.set(key(change), station ? radialPoint(worked, station, change, aim) : "this shape cannot be moved");
  }
  const found = (list: readonly RadialChange[]): RadialPoint[] =>
    list.flatMap((c) => {
      const point = known.get(key(c));
      return point && typeof point !== "string" ? [point] : [];
    });
  const counted = found(plan.byCount);
  const refused = plan.otherwise.map((c) => known.get(key(c))).find((p) => typeof p === "string");
  const [allRound] = found(plan.allRound ? [plan.allRound] : []);
  const otherwise = found(plan.otherwise);
  return {
    present,
    byCount: plan.present ? yield* ranged(counted, done, total) : [present, ...(yield* ranged(counted, done, total))],
    byLength: found(plan.byLength),
    sameWire: found(plan.sameWire),
    otherwise,
    allRound: allRound ?? null,
    ranged: input?.name ?? null,
    tooMany: left.size > 0 ? Math.min(...left) : null,
    otherRefused: otherwise.length === 0 && typeof refused === "string" ? refused : null,
  };

  /** The points by count with the share at both ends of the most telling input. */
  function* ranged(points: readonly RadialPoint[], from: number, of: number): Generator<Progress, RadialPoint[]> {
    if (!input) return [...points];
    const out: RadialPoint[] = [];
    const [low, high] = [movedStation(worked.station, input, "low"), movedStation(worked.station, input, "high")];
    const all = points.map((point) => ({
      point,
      ends: [low, high].map((station) => withRadials(station, antenna, point)),
    }));
    const ahead = all.flatMap((one) => one.ends.flatMap((s) => (s ? [requestAt(s, worked.frequency)] : [])));
    for (const [i, { point, ends: stations }] of all.entries()) {
      const ends: number[] = [point.share];
      for (const [j, station] of stations.entries()) {
        yield { done: from + 2 * i + j, of, what: "radials", ...(i + j === 0 ? { ahead } : {}) };
        const moved = station && radialPoint(worked, station, point, aim);
        if (moved && typeof moved !== "string") ends.push(moved.share);
      }
      out.push({ ...point, range: { low: Math.min(...ends), high: Math.max(...ends) } });
    }
    return out;
  }
}

/** The uncertain input that moves the share most, from one per cent of it on. */
function rangedInput(worked: Worked) {
  const [first] = ranked(worked.bounds, "skyShare", 1);
  return first?.input ?? null;
}

const unknownsOf = ({ frequency, point }: Worked, station: Station): number =>
  countUnknowns(antennaStructure(station).structure, point.antenna.soil, meshRule(frequency, 1));

function presentPoint(worked: Worked, plan: Plan, aim: Aim): RadialPoint {
  const change = plan.present ?? { count: 0, length: 0, lie: "on the soil" as const };
  return pointOf(worked.point, worked.result, change, aim);
}

function radialPoint(worked: Worked, station: Station, change: RadialChange, aim: Aim): RadialPoint | string {
  const band = station.bands[worked.station.bands.indexOf(worked.band)]!;
  const point = workPoint(station, band, worked.frequency, worked.solver, { tuner: "matched" });
  if ("refused" in point) return point.refused.why;
  return pointOf(point, stationNumbers(point), change, aim);
}

function pointOf(
  point: Worked["point"],
  { numbers, driven }: Worked["result"],
  change: RadialChange,
  aim: Aim,
): RadialPoint {
  const at = (elevation: number): number => gainTowards(driven, elevation, aim.azimuth);
  return {
    ...change,
    share: numbers.radiatedPower! / point.powerIntoAntenna,
    radiatedPower: numbers.radiatedPower!,
    resistance: numbers.feedPointResistance!,
    reactance: numbers.feedPointReactance!,
    swrAtFeedPoint: numbers.swrAtFeedPoint!,
    swrAtTransmitter: point.swrAtTransmitter,
    gains: { wanted: at(aim.elevation), low: at(lowElevation), high: at(highElevation) },
    currents: radialCurrents(driven, point.resolved.feedsInUse[0] ?? ""),
  };
}

/** dBi at an elevation (degrees) and azimuth, or the mean of all directions. */
function gainTowards(driven: DrivenAntenna, elevation: number, azimuth: number | null): number {
  const up = (elevation * Math.PI) / 180;
  if (azimuth !== null) return toDecibels(gain(driven, up, (azimuth * Math.PI) / 180));
  const all = Array.from({ length: directions }, (_, i) => gain(driven, up, (2 * Math.PI * i) / directions));
  return toDecibels(all.reduce((sum, g) => sum + g, 0) / directions);
}
