/** What the outside of the line does at one worked point: its current along the way, against the current into the feed. */
import type { OutsideLine } from "../../antenna/outside/outsideLine";
import type { AntennaSolver } from "../../chain/antennaSolver";
import { allPortVoltages } from "../../chain/closePorts";
import type { PointRefused, WorkedPoint } from "../../chain/workedPoint";
import { workPoint } from "../../chain/workPoint";
import { magnitude } from "../../numerics/complex";
import type { Band, Station } from "../../station/station";
import { type DrivenAntenna, driveAntenna } from "../../wires/driveAntenna";
import { wireCurrents } from "../../wires/wireCurrents";

/** The stretch next to the transmitter that counts as the house end: this share of the run. */
export const houseShare = 0.25;

interface Along {
  /** m along the outside from its end at the transmitter, and A rms there. */
  readonly distance: readonly number[];
  readonly current: readonly number[];
}

export interface OutsideState extends Along {
  readonly point: WorkedPoint;
  readonly driven: DrivenAntenna;
  readonly run: OutsideLine;
  /** A rms into the feed. */
  readonly feedCurrent: number;
  readonly largest: { readonly current: number; readonly at: number };
  /** Largest current in the quarter of the run next to the transmitter. */
  readonly house: { readonly current: number; readonly at: number };
  /** Largest current in the antenna, its feed included: what shares are of. A feed of high impedance takes far less. */
  readonly antennaCurrent: number;
  /** W on the outer surface itself. */
  readonly sheathHeat: number;
}

/** The run that reaches a feed in use: of several the first. Null when none does. */
export const runInUse = (point: WorkedPoint): OutsideLine | null =>
  point.antenna.build.outside.find((o) => point.resolved.feedsInUse.includes(o.feed)) ?? null;

/** `driven` as `stationNumbers` has it; null where no outside is in the model. */
export function outsideState(point: WorkedPoint, driven: DrivenAntenna): OutsideState | null {
  const run = runInUse(point);
  if (!run) return null;
  const wires = wireCurrents(driven);
  const distance: number[] = [];
  const current: number[] = [];
  let base = 0;
  for (const w of run.wires) {
    const along = wires[w]!;
    along.distance.forEach((d, i) => {
      distance.push(base + d);
      current.push(along.magnitude[i]!);
    });
    base += along.distance.at(-1)!;
  }
  const others = wires.filter(({ wire }) => !point.antenna.build.outsideWires.has(wire));
  const feedCurrent = magnitude(driven.portCurrents[point.antenna.feeds.indexOf(run.feed)]!);
  return {
    point,
    driven,
    run,
    distance,
    current,
    feedCurrent,
    largest: largestOf({ distance, current }, base),
    house: largestOf({ distance, current }, houseShare * base),
    antennaCurrent: Math.max(feedCurrent, ...others.flatMap((w) => w.magnitude)),
    sheathHeat: run.wires.reduce((sum, w) => sum + heatOf(driven, w, wires[w]!.magnitude), 0),
  };
}

/** The largest current up to a distance (m), that between the nodes at its end included. */
function largestOf(along: Along, upTo: number): { current: number; at: number } {
  const { distance, current } = along;
  let best = { current: currentAt(along, upTo), at: upTo };
  for (const [i, a] of current.entries()) {
    if (distance[i]! <= upTo && a >= best.current) best = { current: a, at: distance[i]! };
  }
  return best;
}

/** W in one wire: its resistance times the square of the current, which is taken as straight between the nodes. */
function heatOf(driven: DrivenAntenna, wire: number, current: readonly number[]): number {
  const { mesh, local } = driven.solution.model;
  const resistance = local.wires[wire]!.re;
  return current.slice(1).reduce((sum, b, i) => {
    const a = current[i]!;
    const length = mesh.elements.length[mesh.firstElement[wire]! + i]!;
    return sum + (resistance * length * (a * a + a * b + b * b)) / 3;
  }, 0);
}

export interface Asked {
  readonly band: Band;
  readonly frequency: number;
  readonly solver: AntennaSolver;
}

/** The outside of a station's line; a band of the same index is taken where the station was changed. */
export function workOutside(station: Station, asked: Asked): OutsideState | PointRefused {
  const point = workPoint(station, asked.band, asked.frequency, asked.solver, { tuner: "matched" });
  if ("refused" in point) return point;
  const { solution, portVoltages } = point.antenna;
  const driven = solution && driveAntenna(solution, allPortVoltages(portVoltages, point.portVoltages));
  const state = driven && outsideState(point, driven);
  if (!state)
    return { refused: { why: "no outside of a line reaches the feed point", mend: "a `route` on the last line" } };
  return state;
}

export const isOutside = (state: OutsideState | PointRefused): state is OutsideState => !("refused" in state);

/** Current at a distance (m) along the run, straight between the nodes. */
export function currentAt({ distance, current }: Along, at: number): number {
  const next = distance.findIndex((d) => d >= at - 1e-9);
  if (next <= 0) return current[next < 0 ? current.length - 1 : 0]!;
  const step = distance[next]! - distance[next - 1]!;
  if (step <= 0) return current[next]!;
  return current[next - 1]! + ((current[next]! - current[next - 1]!) * (at - distance[next - 1]!)) / step;
}
