/** The vertical plane of the cut: places of the station as distance along it (right: towards the cut's azimuth) and height. */
import type { Answer, Drawing } from "@feedpath/engine";
import { partsInUse } from "./partsInUse";

/** [distance to the right of the feed point, height], metres. */
export type CutPoint = readonly [number, number];

/** Projection on the plane through the feed point at the cut's azimuth. */
export function projection(drawing: Drawing): (place: readonly number[]) => CutPoint {
  const azimuth = (drawing.cutAzimuth * Math.PI) / 180;
  const [east, north] = [Math.sin(azimuth), Math.cos(azimuth)];
  const [feedX = 0, feedY = 0] = drawing.feedPoint;
  return ([x = 0, y = 0, z = 0]) => [(x - feedX) * east + (y - feedY) * north, z];
}

/** Metres between the plane of the cut and the nearest point of straight pieces through `places`. */
export function distanceFromCut(drawing: Drawing, places: readonly (readonly number[])[]): number {
  const azimuth = (drawing.cutAzimuth * Math.PI) / 180;
  const [feedX = 0, feedY = 0] = drawing.feedPoint;
  const sides = places.map(([x = 0, y = 0]) => (x - feedX) * Math.cos(azimuth) - (y - feedY) * Math.sin(azimuth));
  return Math.max(0, Math.min(...sides), -Math.max(...sides));
}

/** Length of all lines of the path, metres. */
export const lineLength = (answer: Answer): number =>
  partsInUse(answer).reduce((sum, part) => sum + (part.kind === "line" ? part.length : 0), 0);

/**
 * The line unrolled to the left of the feed point: every place at its horizontal distance from it, whatever the azimuth.
 * Without a route: level along the ground, then plumb below the feed point (the lengths of the lines decide).
 */
export function unrolledLine(answer: Answer, drawing: Drawing): CutPoint[] {
  const [feedX = 0, feedY = 0, feedZ = 0] = drawing.feedPoint;
  if (drawing.lineRoute.length > 0) {
    const places = drawing.lineRoute.map(([x = 0, y = 0, z = 0]): CutPoint => [-Math.hypot(x - feedX, y - feedY), z]);
    const last = places.at(-1)!;
    const arrives = Math.abs(last[0]) < 0.01 && Math.abs(last[1] - feedZ) < 0.01;
    return arrives ? places : [...places, [0, feedZ]];
  }
  const level = Math.max(lineLength(answer) - feedZ, 0);
  return level > 0
    ? [
        [-level, 0],
        [0, 0],
        [0, feedZ],
      ]
    : [
        [0, feedZ - lineLength(answer)],
        [0, feedZ],
      ];
}
