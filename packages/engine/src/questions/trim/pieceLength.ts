/** Length of the piece that is trimmed, along the wire. */
import type { Antenna, Shape } from "../../station/antennaDescription";
import { freeEnds, placesApart } from "./freeEnds";

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/**
 * m: tip to tip of a dipole, both legs of an off-centre one, the whole wire or mast, once round a loop, the driven element
 * of a beam, all wires from the feed to their free ends; null where nothing can be trimmed.
 */
export function pieceLength(shape: Shape, antenna: Antenna, feed: string): number | null {
  switch (shape.kind) {
    case "dipole":
    case "inverted vee":
    case "folded dipole":
      return shape.length.value;
    case "off-centre dipole":
      return shape.legs[0].value + shape.legs[1].value;
    case "end-fed wire":
      return sum(shape.points.slice(1).map((p, i) => placesApart(p, shape.points[i]!)));
    case "vertical":
      return sum(shape.sections.map((s) => s.length.value));
    case "loop":
      return sum(shape.corners.map((c, i) => placesApart(c, shape.corners[(i + 1) % shape.corners.length]!)));
    case "beam":
      return shape.elements[shape.driven - 1]!.length.value;
    case "wires": {
      const chains = freeEnds(shape, antenna, feed).flatMap((end) => end.chain);
      return chains.length === 0 ? null : sum(chains.map((i) => lengthOf(shape.wires[i]!)));
    }
    case "small loop":
      return null;
  }
}

type OneWire = Extract<Shape, { kind: "wires" }>["wires"][number];

export const lengthOf = (wire: OneWire): number =>
  wire.hangs?.kind === "length" ? wire.hangs.length.value : placesApart(wire.from, wire.to);
