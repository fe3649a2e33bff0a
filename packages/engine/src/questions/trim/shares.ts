/** What makes the length what it is: thickness and form, insulation, the ground, lowest SWR against X = 0, the path. */

import { speedOfLight } from "../../numerics/vacuum";
import type { Antenna, Shape } from "../../station/antennaDescription";
import type { Conductor } from "../../station/place";
import type { Station } from "../../station/station";
import { type Bench, feedPointAt } from "./bench";
import { nearestTo, zeros } from "./curveSearch";
import { fitLine } from "./fit";
import type { Scan } from "./lengthScan";

/** Changes of length, m, in the order in which they are put on; null where a step cannot be worked out or does not apply. */
export interface Shares {
  /** Whole number of half waves (or a quarter wave) the piece is near, m. */
  readonly inVacuum: number | null;
  /** X = 0 of the bare wire without ground, over `inVacuum`. */
  readonly thickness: number | null;
  readonly insulation: number | null;
  readonly ground: number | null;
  /** Lowest SWR at the feed point instead of X = 0; at the transmitter where `path` is null. */
  readonly lowestSwr: number | null;
  /** Lowest SWR at the transmitter instead of at the feed point. */
  readonly path: number | null;
}

const difference = (to: number | null, from: number | null): number | null =>
  to === null || from === null ? null : to - from;

/** Solves anew without ground, and without ground and insulation. */
export function* shareLengths(bench: Bench, scan: Scan): Generator<void, Shares> {
  const { resonance, lowestSwr, lowestSwrAtFeedPoint } = scan;
  const halfWaves = bench.trimmed.nominalHalfWaves;
  const wave = speedOfLight / bench.frequency;
  const loaded = bench.station.antennas.some((a) => a.name === bench.trimmed.antenna && a.loads.length > 0);
  const inVacuum = halfWaves === null || loaded ? null : (halfWaves * wave) / 2;
  const free: Station = { ...bench.station, ground: { kind: "free space" } };
  const insulated = bench.station.antennas.some((a) =>
    a.shapes.some(({ shape }) => wiresOf(shape).some((w) => w.insulation)),
  );
  const grounded = bench.station.ground.kind !== "free space";
  const noGround =
    grounded && resonance !== null ? yield* resonanceOf({ ...bench, station: free }, resonance) : resonance;
  const bare =
    insulated && noGround !== null ? yield* resonanceOf({ ...bench, station: bared(free) }, noGround) : noGround;
  const atFeed = difference(lowestSwrAtFeedPoint, resonance);
  // Where a transformer lies between, the lowest SWR on the rated load lies elsewhere at the wire: then both steps are told as one.
  const apart = atFeed === null || Math.abs(atFeed) > oneStep * bench.trimmed.length;
  return {
    inVacuum,
    thickness: difference(bare, inVacuum),
    insulation: insulated ? difference(noGround, bare) : null,
    ground: grounded ? difference(resonance, noGround) : null,
    lowestSwr: apart ? difference(lowestSwr, resonance) : atFeed,
    path: apart ? null : difference(lowestSwr, lowestSwrAtFeedPoint),
  };
}

/** Lowest SWR and X = 0 at the wire lie nearer than this share of the length where no transformer lies between. */
const oneStep = 0.03;
const reach = 0.12;
const mostIntervals = 8;

function* resonanceOf(bench: Bench, near: number): Generator<void, number | null> {
  const span = { from: Math.max(bench.trimmed.least, (1 - reach) * near), to: (1 + reach) * near };
  const feed = yield* fitLine((l) => feedPointAt(bench, bench.frequency, l, bench.frequency), span, mostIntervals);
  return (
    feed &&
    nearestTo(
      near,
      zeros((l) => feed.at(l).im, span),
    )
  );
}

function wiresOf(shape: Shape): Conductor[] {
  if (shape.kind === "vertical") return shape.sections.map((s) => s.wire);
  return shape.kind === "wires" ? shape.wires.map((w) => w.wire) : [shape.wire];
}

const bareWire = (wire: Conductor): Conductor => ({ ...wire, insulation: null });

/** The station with bare wires in its antennas; radials and lines as they are. */
function bared(station: Station): Station {
  const bareShape = (shape: Shape): Shape => {
    if (shape.kind === "vertical")
      return { ...shape, sections: shape.sections.map((s) => ({ ...s, wire: bareWire(s.wire) })) };
    if (shape.kind === "wires") return { ...shape, wires: shape.wires.map((w) => ({ ...w, wire: bareWire(w.wire) })) };
    return { ...shape, wire: bareWire(shape.wire) };
  };
  const bareAntenna = (antenna: Antenna): Antenna => ({
    ...antenna,
    shapes: antenna.shapes.map((one) => ({ ...one, shape: bareShape(one.shape) })),
  });
  return { ...station, antennas: station.antennas.map(bareAntenna) };
}
