/** Antennas as a tree of texts. */
import type { Antenna, Conductor, Quantity, Radials, Shape } from "@feedpath/engine";
import { formatDirection, formatOffset, formatPlace, formatQuantity, formatSpan } from "../units/formatQuantity";
import { writeAdjustable } from "./writeComponents";
import { length, writeConductor } from "./writeConductor";
import { writeJoined, writeLoad } from "./writeLoads";
import { type Branch, type Leaf, present, type Writing } from "./writing";

export function writeAntenna(writing: Writing, antenna: Antenna, place: string): Branch {
  return present({
    ...writeShapes(writing, antenna, place),
    ...writeFeeds(antenna),
    against: antenna.against ?? undefined,
    radials: antenna.radials ? writeRadials(writing, antenna.radials, `${place}.radials`) : undefined,
    loads:
      antenna.loads.length > 0
        ? antenna.loads.map((load, at) => writeLoad(writing, load, `${place}.loads.${at}`))
        : undefined,
    joined: antenna.joined?.map((one, at) => writeJoined(writing, one, `${place}.joined.${at}`)),
    at: antenna.at.every((quantity) => quantity.value === 0)
      ? undefined
      : writing.given(`${place}.at`, formatPlace(antenna.at)),
  });
}

function writeFeeds(antenna: Antenna): Branch {
  const gaps = antenna.feeds.map(
    (feed) => [feed.name, { at: formatPlace(feed.at), from: feed.from, into: feed.into }] as const,
  );
  const [first] = gaps;
  if (!first) return {};
  return gaps.length === 1 && first[0] === antenna.name ? { feed: first[1] } : { feeds: Object.fromEntries(gaps) };
}

function writeShapes(writing: Writing, antenna: Antenna, place: string): Branch {
  const written = antenna.shapes.map(({ name, shape }, index) => ({
    name,
    kind: shape.kind,
    body: writeShape(writing, shape, `${place}.shapes.${index}.shape`),
  }));
  const [only] = written;
  if (!only) return {};
  if (written.length === 1 && only.name === only.kind) return { [only.kind]: only.body };
  return { elements: Object.fromEntries(written.map(({ name, kind, body }) => [name, { [kind]: body }])) };
}

function writeShape(writing: Writing, shape: Shape, place: string): Leaf {
  const given = (key: string, leaf: Leaf): Leaf => writing.given(`${place}.${key}`, leaf);
  const wire = (conductor: Conductor): Leaf => given("wire", writeConductor(conductor));
  const direction = (quantity: Quantity): Leaf => given("direction", formatDirection(quantity));
  switch (shape.kind) {
    case "dipole":
    case "off-centre dipole": {
      const size = shape.kind === "dipole" ? { length: length(shape.length) } : { legs: shape.legs.map(length) };
      return present({
        ...size,
        height: length(shape.height),
        "ends height": shape.endsHeight ? length(shape.endsHeight) : undefined,
        sag: given("sag", length(shape.sag)),
        direction: direction(shape.direction),
        wire: wire(shape.wire),
      });
    }
    case "inverted vee":
      return present({
        length: length(shape.length),
        height: length(shape.height),
        "ends height": length(shape.endsHeight),
        direction: direction(shape.direction),
        wire: wire(shape.wire),
      });
    case "folded dipole":
      return present({
        length: length(shape.length),
        spacing: length(shape.spacing),
        height: length(shape.height),
        direction: direction(shape.direction),
        wire: wire(shape.wire),
      });
    case "end-fed wire":
      return present({ points: shape.points.map(formatPlace), wire: wire(shape.wire) });
    case "vertical":
      return writeVertical(writing, shape, place);
    case "loop": {
      const fedAt = "corner" in shape.fedAt ? `corner ${shape.fedAt.corner}` : `middle of side ${shape.fedAt.side}`;
      return present({ corners: shape.corners.map(formatPlace), "fed at": fedAt, wire: wire(shape.wire) });
    }
    case "small loop":
      return present({
        round: length(shape.round),
        height: length(shape.height),
        plane: given("plane", formatDirection(shape.plane)),
        wire: wire(shape.wire),
        capacitor: writeAdjustable(writing, shape.capacitor, "capacitance", `${place}.capacitor`),
        "joints resistance": shape.jointsResistance ? formatQuantity(shape.jointsResistance, "impedance") : undefined,
      });
    case "beam":
      return present({
        elements: shape.elements.map((element) =>
          present({
            length: length(element.length),
            along: length(element.along),
            sections: element.sections?.map(writeSection),
          }),
        ),
        driven: String(shape.driven),
        height: length(shape.height),
        boom: given("boom", formatDirection(shape.boom)),
        wire: wire(shape.wire),
        "boom correction": given("boomCorrection", shape.boomCorrection),
      });
    case "wires":
      return shape.wires.map(({ name, from, to, wire: conductor, hangs }, index) =>
        present({
          name,
          from: formatPlace(from),
          to: formatPlace(to),
          wire: given(`wires.${index}.wire`, writeConductor(conductor)),
          length: hangs?.kind === "length" ? length(hangs.length) : undefined,
          tension: hangs?.kind === "tension" ? formatQuantity(hangs.tension, "force") : undefined,
        }),
      );
  }
}

const writeSection = (section: { readonly length: Quantity; readonly wire: Conductor }): Branch => ({
  length: length(section.length),
  wire: writeConductor(section.wire),
});

function writeVertical(writing: Writing, shape: Extract<Shape, { kind: "vertical" }>, place: string): Branch {
  const base = writing.given(`${place}.base`, length(shape.base));
  const [first, ...more] = shape.sections;
  if (!first || more.length > 0) {
    return present({ base, sections: shape.sections.map(writeSection) });
  }
  const wire = writing.given(`${place}.sections.0.wire`, writeConductor(first.wire));
  return present({ length: length(first.length), base, wire });
}

function writeRadials(writing: Writing, radials: Radials, place: string): Branch {
  const lie = radials.lie === "on the soil" ? radials.lie : formatOffset(radials.lie, 2);
  return present({
    count: String(radials.count),
    length: length(radials.length),
    wire: writing.given(`${place}.wire`, writeConductor(radials.wire)),
    lie: writing.given(`${place}.lie`, lie),
    over: writing.given(`${place}.over`, formatSpan(radials.over.from, radials.over.to, "angle")),
    bond: radials.bond ?? undefined,
  });
}
