/** Antennas: shapes, feeds, what they work against, radials and loads. */
import {
  type Antenna,
  exactly,
  type Feed,
  type Place,
  type Quantity,
  type Radials,
  type Shape,
} from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { FileAntenna, FileRadials, FileShape } from "../schema/antenna";
import type { FileStation } from "../schema/station";
import { type Build, fault, fill } from "./build";
import { buildJoined } from "./joined";
import { buildLoad } from "./loads";
import { buildShape, type ShapeSpot, wireOf } from "./shapes";
import { theAntenna } from "./spot";
import { buildWires } from "./wires";

/** Antennas by name with their place in the file. */
export interface WrittenAntenna {
  readonly name: string;
  readonly path: KeyPath;
  readonly written: FileAntenna;
}

export function writtenAntennas(build: Build, file: FileStation): readonly WrittenAntenna[] {
  if (file.antenna !== undefined && file.antennas !== undefined) {
    build.report(
      ["antenna"],
      "key",
      fault('"antenna" and "antennas" exclude each other: name this one under antennas.', "either of them"),
    );
  }
  if (file.antennas !== undefined) {
    const named = Object.entries(file.antennas);
    if (named.length === 0)
      build.report(["antennas"], "key", fault("At least one antenna is needed.", "NAME: { dipole: ... }"));
    return named.map(([name, written]) => ({ name, path: ["antennas", name], written }));
  }
  if (file.antenna !== undefined) return [{ name: "antenna", path: ["antenna"], written: file.antenna }];
  build.report(
    [],
    "key",
    fault('A station needs "antenna", or "antennas" with a name for each.', "antenna: { dipole: ... }"),
  );
  return [];
}

/** Names of an antenna's feeds; an unnamed feed bears the antenna's name. */
export const feedNames = ({ name, written }: WrittenAntenna): readonly string[] =>
  written.feeds && Object.keys(written.feeds).length > 0 ? Object.keys(written.feeds) : [name];

export function buildAntenna(build: Build, antenna: WrittenAntenna, index: number): Antenna {
  const { name, path, written } = antenna;
  const place = `antennas.${index}`;
  if (written.feed && written.feeds) {
    build.report([...path, "feed"], "key", fault('"feed" and "feeds" exclude each other.', "either of them"));
  }
  const spot = { build, path, place, name };
  const shapes = buildShapes(spot, written);
  return {
    name,
    shapes,
    feeds: buildFeeds(written, name),
    against: written.against ?? null,
    radials: written.radials
      ? buildRadials(
          { ...spot, place: `${place}.radials`, name: `the radials of ${theAntenna(name)}` },
          written.radials,
        )
      : null,
    loads: (written.loads ?? []).map((load, at) =>
      buildLoad({ ...spot, path: [...path, "loads", at], place: `${place}.loads.${at}` }, load, at),
    ),
    ...(written.joined ? { joined: buildJoined({ ...spot, path: [...path, "joined"] }, written.joined) } : {}),
    at: written.at ?? originOf(build, shapes, place, name),
  };
}

const origin: Place = [exactly(0), exactly(0), exactly(0)];

/** Shapes given by places carry them; for others the spot on the ground is x = y = 0, which only fixes where zero is. */
function originOf(build: Build, shapes: Antenna["shapes"], place: string, name: string): Place {
  const placed = shapes.every(({ shape }) => ["end-fed wire", "loop", "wires"].includes(shape.kind));
  if (placed) return origin;
  const reason = "not given: the other places of the file count from there";
  return fill<Place>(build, undefined, {
    place: `${place}.at`,
    name: `where ${theAntenna(name)} stands`,
    value: origin,
    says: "at the origin",
    reason,
  });
}

function buildShapes(spot: ShapeSpot, written: FileAntenna): Antenna["shapes"] {
  const shapePlace = (index: number): string => `${spot.place}.shapes.${index}.shape`;
  if ("wires" in written) {
    const at = { ...spot, path: [...spot.path, "wires"], place: shapePlace(0) };
    return [{ name: "wires", shape: buildWires(at, written.wires) }];
  }
  if ("elements" in written) {
    const named = Object.entries(written.elements);
    if (named.length === 0)
      spot.build.report(
        [...spot.path, "elements"],
        "key",
        fault("At least one element is needed.", "NAME: { dipole: ... }"),
      );
    return named.map(([name, shape], index) => {
      const kind = kindOfShape(shape);
      const path = [...spot.path, "elements", name, kind];
      return { name, shape: buildShape({ ...spot, path, place: shapePlace(index), name }, shape) };
    });
  }
  const kind = kindOfShape(written);
  return [{ name: kind, shape: buildShape({ ...spot, path: [...spot.path, kind], place: shapePlace(0) }, written) }];
}

const shapeKinds = [
  "dipole",
  "inverted vee",
  "off-centre dipole",
  "folded dipole",
  "end-fed wire",
  "vertical",
  "loop",
  "small loop",
  "beam",
] as const;

const kindOfShape = (written: FileShape): Exclude<Shape["kind"], "wires"> =>
  shapeKinds.find((kind) => Object.hasOwn(written, kind)) ?? "dipole";

function buildFeeds(written: FileAntenna, name: string): readonly Feed[] {
  const named = Object.entries(written.feeds ?? {});
  if (named.length > 0) return named.map(([feed, gap]) => ({ name: feed, ...gap }));
  return written.feed ? [{ name, ...written.feed }] : [];
}

function buildRadials(spot: ShapeSpot, written: FileRadials): Radials {
  const whole = { from: 0, to: 2 * Math.PI };
  return {
    count: written.count,
    length: written.length,
    wire: wireOf(spot, written.wire),
    lie: fill<Quantity | "on the soil">(spot.build, written.lie, {
      place: `${spot.place}.lie`,
      name: `where ${spot.name} lie`,
      value: "on the soil",
      says: "on the soil",
      reason: "not given",
    }),
    over: fill(spot.build, written.over, {
      place: `${spot.place}.over`,
      name: `sector of ${spot.name}`,
      value: whole,
      says: "all round",
      reason: "not given",
    }),
    bond: written.bond ?? null,
  };
}
