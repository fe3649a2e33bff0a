/** Shapes of antennas as written to shapes as the engine sees them. */
import { type Conductor, exactly, type Quantity, type Shape } from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { FileShape } from "../schema/antenna";
import { parseConductor } from "../units/conductor";
import { formatQuantity } from "../units/formatQuantity";
import { type Build, fault, fill, fillQuantity } from "./build";
import { adjustable } from "./components";
import { theAntenna } from "./spot";

/** Where a shape stands: in the file, in the station, and what it is called. */
export interface ShapeSpot {
  readonly build: Build;
  readonly path: KeyPath;
  readonly place: string;
  readonly name: string;
}

export type ShapeKind = Shape["kind"];

/** Wire taken where none is given; the text is read like the owner's own. */
const usualWire = "2 mm copper";

export function wireOf(spot: ShapeSpot, written: Conductor | undefined, key = "wire"): Conductor {
  if (written) return written;
  const usual = parseConductor(usualWire);
  if (!usual.ok) throw new Error(usual.fault.message);
  return fill<Conductor>(spot.build, undefined, {
    place: `${spot.place}.${key}`,
    name: `wire of ${theAntenna(spot.name)}`,
    value: usual.value,
    says: `${usualWire}, bare`,
    reason: "not given: common practice, no source",
  });
}

const east = Math.PI / 2;

function turned(spot: ShapeSpot, written: Quantity | undefined, key: string, what: string): Quantity {
  return fillQuantity(spot.build, written, "angle", {
    place: `${spot.place}.${key}`,
    name: `${what} of ${theAntenna(spot.name)}`,
    value: east,
    reason: "not given: azimuths of the answer count from this",
  });
}

interface FileSpan {
  readonly height: Quantity;
  readonly "ends height"?: Quantity | undefined;
  readonly sag?: Quantity | undefined;
  readonly direction?: Quantity | undefined;
  readonly wire?: Conductor | undefined;
}

function spanOf(spot: ShapeSpot, written: FileSpan) {
  const endsHeight = fill<Quantity | null>(spot.build, written["ends height"], {
    place: `${spot.place}.endsHeight`,
    name: `ends of ${theAntenna(spot.name)}`,
    value: null,
    says: "as high as the feed point",
    reason: "not given",
  });
  const sag = fillQuantity(spot.build, written.sag, "length", {
    place: `${spot.place}.sag`,
    name: `sag of ${theAntenna(spot.name)}`,
    value: 0,
    reason: "not given: a taut wire",
  });
  const direction = turned(spot, written.direction, "direction", "direction");
  return { height: written.height, endsHeight, sag, direction, wire: wireOf(spot, written.wire) };
}

export function buildShape(spot: ShapeSpot, written: FileShape): Shape {
  if ("dipole" in written) return { kind: "dipole", length: written.dipole.length, ...spanOf(spot, written.dipole) };
  if ("off-centre dipole" in written) {
    const { legs } = written["off-centre dipole"];
    return { kind: "off-centre dipole", legs, ...spanOf(spot, written["off-centre dipole"]) };
  }
  if ("inverted vee" in written) {
    const vee = written["inverted vee"];
    const direction = turned(spot, vee.direction, "direction", "direction");
    const { length, height } = vee;
    return {
      kind: "inverted vee",
      length,
      height,
      endsHeight: vee["ends height"],
      direction,
      wire: wireOf(spot, vee.wire),
    };
  }
  if ("folded dipole" in written) {
    const folded = written["folded dipole"];
    const direction = turned(spot, folded.direction, "direction", "direction");
    const { length, spacing, height } = folded;
    return { kind: "folded dipole", length, spacing, height, direction, wire: wireOf(spot, folded.wire) };
  }
  if ("end-fed wire" in written) {
    const { points, wire } = written["end-fed wire"];
    return { kind: "end-fed wire", points, wire: wireOf(spot, wire) };
  }
  if ("vertical" in written) return vertical(spot, written.vertical);
  if ("loop" in written) return loop(spot, written.loop);
  if ("small loop" in written) return smallLoop(spot, written["small loop"]);
  return beam(spot, written.beam);
}

type Of<Key extends string> = Extract<FileShape, Readonly<Record<Key, unknown>>>;

function vertical(spot: ShapeSpot, written: Of<"vertical">["vertical"]): Shape {
  const both = written.sections !== undefined && (written.length !== undefined || written.wire !== undefined);
  if (both || (written.sections === undefined && written.length === undefined)) {
    const message = "A vertical has its length and wire, or its sections from the base: write one of the two.";
    spot.build.report(spot.path, "key", fault(message, "length and wire, or sections"));
  }
  const base = fillQuantity(spot.build, written.base, "length", {
    place: `${spot.place}.base`,
    name: `base of ${theAntenna(spot.name)}`,
    value: 0,
    reason: "not given: fed at the surface of the soil",
  });
  if (written.sections) return { kind: "vertical", base, sections: written.sections };
  const length = written.length ?? base;
  return { kind: "vertical", base, sections: [{ length, wire: wireOf(spot, written.wire, "sections.0.wire") }] };
}

function loop(spot: ShapeSpot, written: Of<"loop">["loop"]): Shape {
  const { corners, "fed at": fedAt } = written;
  const number = "corner" in fedAt ? fedAt.corner : fedAt.side;
  if (number < 1 || number > corners.length) {
    const message = `The loop has ${corners.length} corners and as many sides; they count from 1.`;
    spot.build.report([...spot.path, "fed at"], "value", fault(message, `1 to ${corners.length}`));
  }
  return { kind: "loop", corners, fedAt, wire: wireOf(spot, written.wire) };
}

function smallLoop(spot: ShapeSpot, written: Of<"small loop">["small loop"]): Shape {
  const capacitor = adjustable(spot, written.capacitor, "capacitor");
  return {
    kind: "small loop",
    round: written.round,
    height: written.height,
    plane: turned(spot, written.plane, "plane", "plane"),
    wire: wireOf(spot, written.wire),
    capacitor: capacitor ?? { from: 0, to: 0, q: written.round },
    jointsResistance: written["joints resistance"] ?? null,
  };
}

function beam(spot: ShapeSpot, written: Of<"beam">["beam"]): Shape {
  const { elements, driven, height } = written;
  if (driven > elements.length) {
    const message = `The beam has ${elements.length} elements, counted from the back; ${driven} is none of them.`;
    spot.build.report([...spot.path, "driven"], "value", fault(message, `1 to ${elements.length}`));
  }
  elements.forEach(({ length, sections = [] }, index) => {
    const inner = sections.reduce((sum, section) => sum + section.length.value, 0);
    if (inner < length.value / 2) return;
    const message = `The sections of this element are ${formatQuantity(exactly(inner), "length")} from the boom; half of the element is ${formatQuantity(exactly(length.value / 2), "length")}. What is left to its tip is the beam's wire.`;
    spot.build.report(
      [...spot.path, "elements", index, "sections"],
      "value",
      fault(message, "sections that end before the tip"),
    );
  });
  const backwards = elements.findIndex(
    (element, index) => index > 0 && element.along.value <= (elements[index - 1]?.along.value ?? 0),
  );
  if (backwards > 0) {
    const message = "Elements stand from back to front: this one does not lie in front of the one before it.";
    spot.build.report(
      [...spot.path, "elements", backwards, "along"],
      "value",
      fault(message, "a greater distance along the boom"),
    );
  }
  const boomCorrection = fill<"insulated" | "none">(spot.build, written["boom correction"], {
    place: `${spot.place}.boomCorrection`,
    name: `boom correction of ${theAntenna(spot.name)}`,
    value: "none",
    says: "none",
    reason: "not given: element lengths are taken as they act",
  });
  const boom = turned(spot, written.boom, "boom", "direction of the boom");
  const built = elements.map(({ length, along, sections }) => ({ length, along, ...(sections ? { sections } : {}) }));
  return { kind: "beam", elements: built, driven, height, boom, wire: wireOf(spot, written.wire), boomCorrection };
}
