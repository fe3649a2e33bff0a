/** A hanging wire as straight pieces that are together as long as the wire. */
import type { Hanging } from "../../station/antennaDescription";
import type { Point } from "../../wires/structure";
import { offset } from "../wireRun";
import {
  type Catenary,
  catenaryOfLength,
  catenaryOfSag,
  catenaryOfTension,
  catenaryPoints,
  catenaryTurn,
} from "./catenary";

/** Fewest straight pieces of a hanging wire, and the most that one of them stands for, rad. Tests hold finer ones against it. */
const fewestPieces = 4;
const turnOfPiece = 0.12;
const mostPieces = 24;

const piecesFor = (curve: Catenary): number =>
  Math.min(mostPieces, Math.max(fewestPieces, Math.ceil(catenaryTurn(curve) / turnOfPiece)));

/** Points of a leg of `length` from `from` towards an azimuth, its end `rise` higher, `sag` below the chord at mid-span. */
export function saggingPoints(
  from: Point,
  azimuth: number,
  { length, rise, sag, pieces }: { length: number; rise: number; sag: number; pieces?: number },
): Point[] {
  if (sag === 0) return [from, offset(from, azimuth, Math.sqrt(Math.max(0, length * length - rise * rise)), rise)];
  const count = pieces ?? piecesFor(catenaryOfSag(length, rise, sag));
  return asLongAs(length, (curved) => placed(from, azimuth, catenaryOfSag(curved, rise, sag), count));
}

/** Points of a wire between two places. A taut one, and one between places above each other, is straight. */
export function hangingPoints(from: Point, to: Point, hangs: Hanging, pieces?: number): Point[] {
  const run = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const rise = to[2] - from[2];
  const azimuth = Math.atan2(to[0] - from[0], to[1] - from[1]);
  const chord = Math.hypot(run, rise);
  const slack = hangs.kind === "length" ? hangs.length.value / chord - 1 : Number.POSITIVE_INFINITY;
  if (run < 1e-6 || slack < 1e-9) return [from, to];
  if (hangs.kind === "tension") {
    const curve = catenaryOfTension(run, rise, hangs.tension.value, hangs.weight);
    return ended(placed(from, azimuth, curve, pieces ?? piecesFor(curve)), to);
  }
  const length = hangs.length.value;
  const count = pieces ?? piecesFor(catenaryOfLength(run, rise, length));
  return ended(
    asLongAs(length, (curved) => placed(from, azimuth, catenaryOfLength(run, rise, curved), count)),
    to,
  );
}

/** The far end exactly where it is tied, so that wires meet there. */
const ended = (points: readonly Point[], to: Point): Point[] => [...points.slice(0, -1), to];

const placed = (from: Point, azimuth: number, curve: Catenary, pieces: number): Point[] =>
  catenaryPoints(curve, pieces).map(({ along, up }) => offset(from, azimuth, along, up));

/** Chords are shorter than the curve by a few parts in ten thousand: a curve that much longer gives pieces of the right length. */
function asLongAs(length: number, pieces: (curved: number) => Point[]): Point[] {
  let curved = length;
  let points = pieces(curved);
  for (let step = 0; step < 4; step++) {
    curved *= length / lengthOf(points);
    points = pieces(curved);
  }
  return points;
}

const lengthOf = (points: readonly Point[]): number =>
  points
    .slice(1)
    .reduce((sum, p, i) => sum + Math.hypot(p[0] - points[i]![0], p[1] - points[i]![1], p[2] - points[i]![2]), 0);
