/** Physical sense of places: routes, drops, wires one by one. Metres. */
import type { Place, Shape } from "@feedpath/engine";
import { fault, list } from "../building/build";
import { samePlace } from "../building/wires";
import type { KeyPath } from "../reading/sourceText";
import { formatAmount, formatPlace } from "../units/formatQuantity";
import { shown, someOf } from "../units/nearest";
import type { Checked } from "./checked";
import { checkCrossings } from "./crossings";
import { checkHanging } from "./hanging";
import { partsWithPlaces } from "./references";

/** Differences below this are rounding, m. */
const tolerance = 1e-6;
/** An end this near to another wire touches it, m. */
const thickness = 2e-3;

const metres = (value: number): string => formatAmount(Number(value.toFixed(3)), "length");
const at = (place: Place): readonly [number, number, number] => [place[0].value, place[1].value, place[2].value];

type Point = ReturnType<typeof at>;

const distance = (p: Point, q: Point): number => Math.hypot(q[0] - p[0], q[1] - p[1], q[2] - p[2]);
const between = (a: Place, b: Place): number => distance(at(a), at(b));

export function checkRoutes(checked: Checked): void {
  partsWithPlaces(checked).forEach(({ part, path }) => {
    if (part.kind !== "line" || part.route.length < 2) return;
    const routed = part.route
      .slice(1)
      .reduce((sum, place, index) => sum + between(part.route[index] ?? place, place), 0);
    if (routed > part.length.high + tolerance) {
      const message = `The route of ${part.name} is ${metres(routed)} long, the line only ${metres(part.length.high)}.`;
      checked.build.report([...path, "route"], "value", fault(message, "a route no longer than the line"));
      return;
    }
    const slack = part.length.value - routed;
    if (slack < 0.01) return;
    list(
      checked.build,
      "path",
      `slack of ${part.name}`,
      metres(slack),
      "the line is longer than its route: the rest has no outside in the model",
    );
  });
}

export function checkShapes(checked: Checked): void {
  checked.station.antennas.forEach((antenna, index) => {
    const path = checked.antennas[index]?.path ?? [];
    for (const { name, shape } of antenna.shapes) {
      const here = antenna.shapes.length > 1 ? [...path, "elements", name, shape.kind] : [...path, shape.kind];
      checkShape(checked, shape, here);
    }
  });
}

function checkShape(checked: Checked, shape: Shape, path: KeyPath): void {
  const tell = (key: string, message: string, expected: string): void =>
    checked.build.report([...path, key], "value", fault(message, expected));
  if (shape.kind === "wires") checkWires(checked, shape.wires, path);
  if (shape.kind === "dipole" || shape.kind === "inverted vee" || shape.kind === "off-centre dipole") {
    const leg =
      shape.kind === "off-centre dipole" ? Math.min(shape.legs[0].value, shape.legs[1].value) : shape.length.value / 2;
    const drop = Math.abs(shape.height.value - (shape.endsHeight ?? shape.height).value);
    if (drop >= leg)
      tell("ends height", `A leg of ${metres(leg)} cannot reach down ${metres(drop)}.`, "ends that the legs reach");
    if (shape.kind !== "inverted vee" && 2 * shape.sag.value >= leg)
      tell("sag", `A leg of ${metres(leg)} cannot sag ${metres(shape.sag.value)}.`, "a sag below half of the leg");
  }
  if ((shape.kind === "dipole" || shape.kind === "off-centre dipole") && checked.station.ground.kind !== "free space") {
    const lowest = Math.min(shape.height.value, (shape.endsHeight ?? shape.height).value) - shape.sag.value;
    if (lowest <= 0) tell("sag", "The wire would sag to the ground.", "a sag less than the height");
  }
}

type Wires = Extract<Shape, { kind: "wires" }>["wires"];

function checkWires(checked: Checked, wires: Wires, path: KeyPath): void {
  const free = checked.station.ground.kind === "free space";
  const straight = wires.map(({ from, to }) => ({ from: at(from), to: at(to) }));
  checkCrossings(checked, wires, path);
  wires.forEach((wire, index) => {
    const here = [...path, index];
    if (between(wire.from, wire.to) < tolerance) {
      checked.build.report([...here, "to"], "value", fault(`The wire "${wire.name}" has no length.`, "another place"));
    }
    checkHanging(checked, wire, here);
    if (!free && wire.from[2].value * wire.to[2].value < 0) {
      const message = `The wire "${wire.name}" goes through the surface of the soil: only an earth or a radial may.`;
      checked.build.report([...here, "to"], "value", fault(message, "both ends on one side of the surface"));
    }
    for (const end of ["from", "to"] as const) checkEnd(checked, wires, straight, index, end, here);
  });
}

/** An end that lies on another wire, but not at its end, is not joined: offers where to split. */
function checkEnd(
  checked: Checked,
  wires: Wires,
  straight: readonly Straight[],
  index: number,
  end: "from" | "to",
  path: KeyPath,
): void {
  const wire = wires[index];
  const spot = straight[index]?.[end];
  if (!wire || !spot) return;
  const met = wires[straight.findIndex((other, at) => at !== index && !wires[at]?.hangs && onMiddle(spot, other))];
  if (!met) return;
  const where = formatPlace(wire[end]).join(", ");
  const message = `The wire "${shown(wire.name)}" ends on the middle of "${shown(met.name)}". Split that one in two at [${where}].`;
  checked.build.report([...path, end], "value", fault(message, `two wires joined at [${where}]`));
}

interface Straight {
  readonly from: Point;
  readonly to: Point;
}

/** Within a few millimetres (about a wire's thickness) of the straight line between two ends, but at neither of them. */
function onMiddle(spot: Point, { from, to }: Straight): boolean {
  for (let axis = 0; axis < 3; axis++) {
    const [a, b, s] = [from[axis] ?? 0, to[axis] ?? 0, spot[axis] ?? 0];
    if (s < Math.min(a, b) - thickness || s > Math.max(a, b) + thickness) return false;
  }
  const [before, after, whole] = [distance(from, spot), distance(spot, to), distance(from, to)];
  if (before < tolerance || after < tolerance || whole < tolerance) return false;
  // Height of the triangle over the wire: 2 A / whole, from its sides (Heron's formula).
  const half = (before + after + whole) / 2;
  const area = Math.sqrt(Math.max(0, half * (half - before) * (half - after) * (half - whole)));
  return (2 * area) / whole < thickness;
}

/** A feed of `wires` lies where an end of `from` meets an end of `into`. */
export function checkFeeds(checked: Checked): void {
  checked.station.antennas.forEach((antenna, index) => {
    const written = checked.antennas[index];
    const wires = antenna.shapes.flatMap(({ shape }) => (shape.kind === "wires" ? shape.wires : []));
    if (!written || wires.length === 0) return;
    if (antenna.feeds.length === 0) {
      checked.build.report(
        written.path,
        "key",
        fault("Wires one by one need a feed: feed: { at, from, into }.", "feed or feeds"),
      );
    }
    for (const feed of antenna.feeds) {
      const path = written.written.feed ? [...written.path, "feed"] : [...written.path, "feeds", feed.name];
      for (const side of ["from", "into"] as const) checkFeedSide(checked, wires, feed.at, feed[side], [...path, side]);
      if (feed.from === feed.into) {
        checked.build.report(
          [...path, "into"],
          "value",
          fault("A feed lies between two wires: from and into are the same.", "another wire"),
        );
      }
    }
  });
}

function checkFeedSide(checked: Checked, wires: Wires, spot: Place, name: string, path: KeyPath): void {
  const wire = wires.find((known) => known.name === name);
  if (!wire) {
    const names = wires.map((known) => known.name);
    const message = `No wire is called "${shown(name)}". Known: ${someOf(names)}.`;
    checked.build.report(path, "value", fault(message, "a wire of this antenna"));
  } else if (!samePlace(wire.from, spot) && !samePlace(wire.to, spot)) {
    const message = `The wire "${name}" has no end at the feed, [${formatPlace(spot).join(", ")}].`;
    checked.build.report(path, "value", fault(message, "a wire that ends at the feed"));
  }
}
