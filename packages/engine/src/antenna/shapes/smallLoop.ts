/** The small transmitting loop as a polygon: fed in its lowest corner, its capacitor in the highest one. */
import type { Shape } from "../../station/antennaDescription";
import type { Point } from "../../wires/structure";
import { type Built, chainOf, heading } from "../wireRun";

/** Sides of the polygon: its area is 1.3 % below that of the circle of the same circumference. */
const sides = 16;

/** Both halves from the feed up; the capacitor lies where they meet, at the end of leg "first half". */
export function smallLoop(shape: Extract<Shape, { kind: "small loop" }>, at: Point, feedName: string): Built {
  const radius = shape.round.value / (2 * sides * Math.sin(Math.PI / sides));
  const [east, north] = heading(shape.plane.value);
  const corner = (i: number): Point => {
    const turn = (2 * Math.PI * i) / sides;
    const out = radius * Math.sin(turn);
    return [at[0] + east * out, at[1] + north * out, shape.height.value - radius * Math.cos(turn)];
  };
  const points = Array.from({ length: sides }, (_, i) => corner(i));
  const wires = chainOf("loop", [...points, points[0]!], shape.wire);
  return {
    wires,
    legs: [{ name: "loop", wires: wires.map((_, i) => i) }],
    feeds: [{ name: feedName, at: points[0]!, from: [0], into: [sides - 1] }],
  };
}

/** Where the capacitor sits: at the beginning of the wire that leaves the highest corner. */
export const capacitorWire = sides / 2;
