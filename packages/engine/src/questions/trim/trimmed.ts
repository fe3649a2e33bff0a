/** What is cut or made longer: the piece of an antenna whose length decides, and at which ends. */
import type { Antenna, Load, Shape } from "../../station/antennaDescription";
import type { Station } from "../../station/station";
import { freeEnds } from "./freeEnds";
import { pieceLength } from "./pieceLength";

/** A place where wire is cut or added; `share` of the change of length falls on it (on each, where it stands for two). */
export interface TrimEnd {
  readonly place: string;
  readonly share: number;
}

export interface Trimmed {
  /** Name of the antenna, index of the shape in it, and the feed it hangs on. */
  readonly antenna: string;
  readonly shape: number;
  readonly feed: string;
  readonly kind: Shape["kind"];
  /** As the file has it, m. */
  readonly length: number;
  /** No shorter than this: loads stay on the wire, m. */
  readonly least: number;
  readonly ends: readonly TrimEnd[];
  /** Half waves that make this kind resonate; null where the kind does not tell. */
  readonly nominalHalfWaves: number | null;
  /** What is kept while the length changes, for people. */
  readonly kept: readonly string[];
}

export interface CannotTrim {
  readonly refused: string;
  readonly mend: string;
}

/** The piece to trim of the antenna on `feed`; `element` counts its shapes from 1, null takes the one nearest to resonance. */
export function trimmedOf(station: Station, feed: string, wave: number, element: number | null): Trimmed | CannotTrim {
  const antenna =
    station.antennas.find((a) => (a.feeds.length > 0 ? a.feeds : [a]).some((f) => f.name === feed)) ??
    station.antennas[0];
  if (!antenna) return { refused: "the file has no antenna", mend: "an `antenna` in the file" };
  const shapes = antenna.shapes;
  if (element !== null && element > shapes.length)
    return {
      refused: `there is no element ${element}: this antenna has ${shapes.length}`,
      mend: `an element from 1 to ${shapes.length}`,
    };
  const chosen = element === null ? nearestToResonance(antenna, feed, wave) : element - 1;
  const { shape, name } = shapes[chosen]!;
  const length = pieceLength(shape, antenna, feed);
  if (shape.kind === "small loop")
    return {
      refused: "a small loop is brought to its frequency by its capacitor, not by its length",
      mend: "“What will the transmitter see across the band?” for this loop, or an antenna of wire",
    };
  if (length === null)
    return {
      refused: "no wire of this feed has a free end: each ends on other wires or in the soil",
      mend: "a wire of the feed with a free end, or a shape such as `dipole`",
    };
  return {
    antenna: antenna.name,
    shape: chosen,
    feed,
    kind: shape.kind,
    length,
    least: leastLength(shape, antenna, length),
    ends: endsOf(shape, antenna, feed),
    nominalHalfWaves: halfWaves(shape),
    kept: keptOf(shape, antenna, feed, shapes.length > 1 ? name : null),
  };
}

/** Half waves of wire to its usual resonance. */
function halfWaves(shape: Shape): number | null {
  switch (shape.kind) {
    case "dipole":
    case "inverted vee":
    case "off-centre dipole":
    case "folded dipole":
    case "beam":
      return 1;
    case "vertical":
      return 0.5;
    case "loop":
      return 2;
    default:
      return null;
  }
}

function nearestToResonance(antenna: Antenna, feed: string, wave: number): number {
  const distance = antenna.shapes.map(({ shape }) => {
    const nominal = ((halfWaves(shape) ?? 1) * wave) / 2;
    return Math.abs(Math.log((pieceLength(shape, antenna, feed) ?? 1e-3) / nominal));
  });
  return distance.indexOf(Math.min(...distance));
}

function endsOf(shape: Shape, antenna: Antenna, feed: string): TrimEnd[] {
  switch (shape.kind) {
    case "off-centre dipole": {
      const [first, second] = shape.legs.map((leg) => leg.value) as [number, number];
      return [
        { place: "the first leg", share: first / (first + second) },
        { place: "the second leg", share: second / (first + second) },
      ];
    }
    case "end-fed wire":
      return [{ place: "the far end", share: 1 }];
    case "vertical":
      return [{ place: "the top", share: 1 }];
    case "loop":
      return [{ place: "the loop", share: 1 }];
    case "beam":
      return [{ place: "each half of the driven element", share: 0.5 }];
    case "wires":
      return endsOfWires(shape, antenna, feed);
    default:
      return [{ place: "each leg", share: 0.5 }];
  }
}

function endsOfWires(shape: Extract<Shape, { kind: "wires" }>, antenna: Antenna, feed: string): TrimEnd[] {
  const ends = freeEnds(shape, antenna, feed);
  const names = ends.map(({ chain }) => shape.wires[chain.at(-1)!]!.name);
  if (ends.length === 2) return [{ place: `each far end of ${names.join(" and ")}`, share: 0.5 }];
  return [{ place: `the far end of ${names.join(" and ")}`, share: 1 }];
}

/** Shortest piece searched at all, as a share of the present length. */
const shortestShare = 0.3;
/** Wire left beyond the outermost load, m. */
const beyondLoad = 0.05;

function leastLength(shape: Shape, antenna: Antenna, length: number): number {
  const ends = "legs" in shape ? shape.legs.map((leg) => leg.value / length) : [0.5];
  const share = ["end-fed wire", "vertical", "loop", "wires"].includes(shape.kind) ? 1 : Math.min(...ends);
  const outermost = antenna.loads.map((load: Load) =>
    load.fromFeed === "end" ? 0 : load.fromFeed.value + (load.length?.value ?? 0) / 2 + beyondLoad,
  );
  return Math.max(shortestShare * length, ...outermost.map((x) => x / share));
}

function keptOf(shape: Shape, antenna: Antenna, feed: string, element: string | null): string[] {
  const kept = element === null ? [] : [`only the element "${element}" changes, the others stay as they are`];
  if (shape.kind === "loop") kept.push("the loop keeps its form and grows or shrinks about its feed point");
  if (shape.kind === "beam") kept.push("only the driven element changes, the others stay as they are");
  if (slopes(shape)) kept.push("the ends move along the line of their leg: slope and sag stay in proportion");
  if (shape.kind === "wires" && freeEnds(shape, antenna, feed).length === 1)
    kept.push("the other side of the feed point has no free end and stays as it is");
  if (antenna.loads.length > 0)
    kept.push("coils, traps and other loads stay where they are: only the outer ends change");
  return kept;
}

const slopes = (shape: Shape): boolean =>
  shape.kind === "inverted vee" ||
  ((shape.kind === "dipole" || shape.kind === "off-centre dipole") &&
    (shape.sag.value > 0 || (shape.endsHeight !== null && shape.endsHeight.value !== shape.height.value)));
