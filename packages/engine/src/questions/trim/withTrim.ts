/** The station with one piece of its antenna cut or made longer: the same words of the file, other numbers. */
import { exactly, type Quantity } from "../../quantity/quantity";
import type { Antenna, Shape } from "../../station/antennaDescription";
import type { Place } from "../../station/place";
import type { Station } from "../../station/station";
import { freeEnds, placesApart } from "./freeEnds";
import { lengthOf, pieceLength } from "./pieceLength";
import type { Trimmed } from "./trimmed";

/** A copy of the station whose trimmed piece is `length` m long, exactly; everything else is shared with the original. */
export function withTrim(station: Station, trimmed: Trimmed, length: number): Station {
  const antennas = station.antennas.map((antenna) => {
    if (antenna.name !== trimmed.antenna) return antenna;
    const shapes = antenna.shapes.map((one, i) =>
      i === trimmed.shape ? { ...one, shape: trimmedShape(one.shape, antenna, trimmed.feed, length) } : one,
    );
    return { ...antenna, shapes };
  });
  return { ...station, antennas };
}

const scaled = (q: Quantity, factor: number): Quantity => ({
  ...q,
  value: q.value * factor,
  low: q.low * factor,
  high: q.high * factor,
});

function trimmedShape(shape: Shape, antenna: Antenna, feed: string, length: number): Shape {
  const present = pieceLength(shape, antenna, feed)!;
  const factor = length / present;
  switch (shape.kind) {
    case "dipole":
      return { ...shape, length: exactly(length), ...alongItsLine(shape, factor) };
    case "off-centre dipole": {
      const legs = [exactly(shape.legs[0].value * factor), exactly(shape.legs[1].value * factor)] as const;
      return { ...shape, legs, ...alongItsLine(shape, factor) };
    }
    case "inverted vee":
      return { ...shape, length: exactly(length), endsHeight: lowered(shape.height, shape.endsHeight, factor) };
    case "folded dipole":
      return { ...shape, length: exactly(length) };
    case "end-fed wire":
      return { ...shape, points: trimmedPoints(shape.points, length - present) };
    case "vertical":
      return { ...shape, sections: trimmedSections(shape.sections, length - present) };
    case "loop":
      return { ...shape, corners: scaledCorners(shape, factor) };
    case "beam": {
      const driven = shape.driven - 1;
      const elements = shape.elements.map((e, i) => (i === driven ? { ...e, length: exactly(length) } : e));
      return { ...shape, elements };
    }
    case "wires":
      return trimmedWires(shape, antenna, feed, length - present);
    case "small loop":
      return shape;
  }
}

/** Height of ends that hang from a feed point: their drop in proportion to the leg, so that the slope stays. */
const lowered = (height: Quantity, ends: Quantity, factor: number): Quantity => {
  const drop = (1 - factor) * height.value;
  const at = scaled(ends, factor);
  return { ...at, value: at.value + drop, low: at.low + drop, high: at.high + drop };
};

type Spanned = Extract<Shape, { kind: "dipole" | "off-centre dipole" }>;

const alongItsLine = ({ height, endsHeight, sag }: Spanned, factor: number) => ({
  endsHeight: endsHeight && lowered(height, endsHeight, factor),
  sag: scaled(sag, factor),
});

/** The place on the line from `a` through `b` that lies `beyond` m behind b. */
function movedPlace(a: Place, b: Place, beyond: number): Place {
  const share = beyond / placesApart(a, b);
  const one = (i: 0 | 1 | 2): Quantity => exactly(b[i].value + share * (b[i].value - a[i].value));
  return [one(0), one(1), one(2)];
}

/** Shortest last piece that is left before the one ahead of it is cut into, m. */
const stump = 1e-3;

function trimmedPoints(points: readonly Place[], change: number): Place[] {
  const [before, last] = points.slice(-2) as [Place, Place];
  const own = placesApart(before, last);
  if (points.length > 2 && own + change < stump) return trimmedPoints(points.slice(0, -1), change + own);
  return [...points.slice(0, -1), movedPlace(before, last, change)];
}

type Sections = Extract<Shape, { kind: "vertical" }>["sections"];

function trimmedSections(sections: Sections, change: number): Sections {
  const top = sections.at(-1)!;
  const own = top.length.value;
  if (sections.length > 1 && own + change < stump) return trimmedSections(sections.slice(0, -1), change + own);
  return [...sections.slice(0, -1), { ...top, length: exactly(own + change) }];
}

function scaledCorners({ corners, fedAt }: Extract<Shape, { kind: "loop" }>, factor: number): Place[] {
  const first = "corner" in fedAt ? fedAt.corner - 1 : fedAt.side - 1;
  const a = corners[first]!;
  const b = "corner" in fedAt ? a : corners[(first + 1) % corners.length]!;
  return corners.map((corner): Place => {
    const one = (i: 0 | 1 | 2): Quantity => {
      const still = (a[i].value + b[i].value) / 2;
      return exactly(still + factor * (corner[i].value - still));
    };
    return [one(0), one(1), one(2)];
  });
}

/** Each free end takes the same part of the change. */
function trimmedWires(shape: Extract<Shape, { kind: "wires" }>, antenna: Antenna, feed: string, change: number): Shape {
  const ends = freeEnds(shape, antenna, feed);
  const wires = [...shape.wires];
  for (const { chain, end } of ends) {
    const index = chain.at(-1)!;
    const wire = wires[index]!;
    const by = change / ends.length;
    const factor = 1 + by / lengthOf(wire);
    const start = end === "to" ? wire.from : wire.to;
    const moved = movedPlace(start, wire[end], (factor - 1) * placesApart(start, wire[end]));
    const hangs =
      wire.hangs?.kind === "length" ? { hangs: { ...wire.hangs, length: scaled(wire.hangs.length, factor) } } : {};
    wires[index] = { ...wire, [end]: moved, ...hangs };
  }
  return { ...shape, wires };
}
