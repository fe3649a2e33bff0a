/** Each shape of the station file as wires and a feed: trade dimensions in, straight runs out. */
import { exactly } from "../../quantity/quantity";
import type { Shape } from "../../station/antennaDescription";
import type { Point, Wire } from "../../wires/structure";
import { type Built, chainOf, distance, fedLegs, joined, offset, pointOf, wireOf } from "../wireRun";
import { beam } from "./beam";
import { hangingPoints } from "./hangingWire";
import { smallLoop } from "./smallLoop";
import { spanLegs } from "./span";

type Of<K extends Shape["kind"]> = Extract<Shape, { kind: K }>;

/** Wires of a shape standing at `at` (spot on the ground), its feed named `feedName`; null feed where it is one-sided. */
export function shapeWires(shape: Shape, at: Point, feedName: string): Built {
  switch (shape.kind) {
    case "dipole":
      return spanLegs(at, [shape.length.value / 2, shape.length.value / 2], shape, feedName);
    case "off-centre dipole":
      return spanLegs(at, [shape.legs[0].value, shape.legs[1].value], shape, feedName);
    case "inverted vee":
      return spanLegs(
        at,
        [shape.length.value / 2, shape.length.value / 2],
        { ...shape, endsHeight: shape.endsHeight, sag: exactly(0) },
        feedName,
      );
    case "folded dipole":
      return foldedDipole(shape, at, feedName);
    case "end-fed wire":
      return oneSided("wire", chainOf("wire", shape.points.map(pointOf), shape.wire));
    case "vertical":
      return oneSided("mast", verticalSections(shape, at));
    case "loop":
      return loop(shape, feedName);
    case "beam":
      return beam(shape, at, feedName);
    case "wires":
      return separateWires(shape);
    case "small loop":
      return smallLoop(shape, at, feedName);
  }
}

const oneSided = (name: string, wires: readonly Wire[]): Built => ({
  wires,
  legs: [{ name, wires: wires.map((_, i) => i) }],
  feeds: [],
});

function verticalSections(shape: Of<"vertical">, at: Point): Wire[] {
  let z = shape.base.value;
  return shape.sections.map((section, i) => {
    const from: Point = [at[0], at[1], z];
    z += section.length.value;
    const name = shape.sections.length === 1 ? "mast" : `mast ${i + 1}`;
    return wireOf(name, from, [at[0], at[1], z], section.wire);
  });
}

/** Fed in the middle of the lower wire; the upper wire runs `spacing` above it; `length` is tip to tip. */
function foldedDipole(shape: Of<"folded dipole">, at: Point, feedName: string): Built {
  const feed: Point = [at[0], at[1], shape.height.value];
  const half = shape.length.value / 2;
  const end = (azimuth: number, up: number) => offset(feed, azimuth, half, up);
  const azimuth = shape.direction.value;
  const first = chainOf("first leg", [feed, end(azimuth, 0), end(azimuth, shape.spacing.value)], shape.wire);
  const second = chainOf(
    "second leg",
    [feed, end(azimuth + Math.PI, 0), end(azimuth + Math.PI, shape.spacing.value)],
    shape.wire,
  );
  const back = wireOf("upper wire", first[1]!.to, second[1]!.to, shape.wire);
  const legs = fedLegs(first, second, feedName);
  return { ...legs, wires: [...legs.wires, back] };
}

/** Corners joined into a closed loop; a feed in the middle of a side splits that side. */
function loop(shape: Of<"loop">, feedName: string): Built {
  const corners = shape.corners.map(pointOf);
  const count = corners.length;
  const ring = [...corners];
  let start = 0;
  if ("side" in shape.fedAt) {
    const a = corners[(shape.fedAt.side - 1) % count]!;
    const b = corners[shape.fedAt.side % count]!;
    ring.splice(shape.fedAt.side, 0, [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2]);
    start = shape.fedAt.side;
  } else start = shape.fedAt.corner - 1;
  const around = ring.map((_, i) => ring[(start + i) % ring.length]!);
  const wires = chainOf("side", [...around, around[0]!], shape.wire);
  return {
    wires,
    legs: [{ name: "loop", wires: wires.map((_, i) => i) }],
    feeds: [{ name: feedName, at: around[0]!, from: [0], into: [wires.length - 1] }],
  };
}

/** Each wire is a leg of its name; a hanging one is a chain of straight pieces. */
const separateWires = (shape: Of<"wires">): Built =>
  joined(
    shape.wires.map((w): Built => {
      const [from, to] = [pointOf(w.from), pointOf(w.to)];
      const wires = chainOf(w.name, w.hangs ? hangingPoints(from, to, w.hangs) : [from, to], w.wire);
      return { wires, legs: [{ name: w.name, wires: wires.map((_, i) => i) }], feeds: [] };
    }),
  );

/** Closest distance that counts as "the same place", metres. */
export const samePlace = 1e-3;
export const meets = (a: Point, b: Point): boolean => distance(a, b) <= samePlace;
