import { describe, expect, it } from "vitest";
import { exactly } from "../../quantity/quantity";
import type { Antenna, Load, Shape } from "../../station/antennaDescription";
import { antennaOf, copper, levelDipole, place, plainStation } from "../../testing/plainStation";
import { freeEnds } from "./freeEnds";
import { pieceLength } from "./pieceLength";
import { type Trimmed, trimmedOf } from "./trimmed";
import { withTrim } from "./withTrim";

const q = exactly;
const wire = copper(2e-3);

const shapes: readonly Shape[] = [
  levelDipole(20, 12),
  { kind: "inverted vee", length: q(20), height: q(12), endsHeight: q(6), direction: q(0), wire },
  {
    kind: "off-centre dipole",
    legs: [q(7), q(14)],
    height: q(12),
    endsHeight: null,
    sag: q(0.3),
    direction: q(0),
    wire,
  },
  { kind: "folded dipole", length: q(20), spacing: q(0.3), height: q(12), direction: q(0), wire },
  { kind: "end-fed wire", points: [place(0, 0, 9), place(12, 0, 9), place(12, 5, 9)], wire },
  {
    kind: "vertical",
    base: q(1),
    sections: [
      { length: q(6), wire },
      { length: q(4), wire },
    ],
  },
  {
    kind: "loop",
    corners: [place(0, 0, 6), place(0, 10, 6), place(0, 10, 16), place(0, 0, 16)],
    fedAt: { corner: 1 },
    wire,
  },
  {
    kind: "beam",
    elements: [
      { length: q(10.5), along: q(0) },
      { length: q(10), along: q(2.6) },
      { length: q(9.4), along: q(5.4) },
    ],
    driven: 2,
    height: q(12),
    boom: q(0),
    wire: copper(20e-3),
    boomCorrection: "none",
  },
];

const stationOf = (antenna: Antenna) => plainStation({ antennas: [antenna] });

function trimmedIn(antenna: Antenna, element: number | null = null): Trimmed {
  const trimmed = trimmedOf(stationOf(antenna), antenna.feeds[0]?.name ?? "antenna", 42, element);
  if ("refused" in trimmed) throw new Error(trimmed.refused);
  return trimmed;
}

const lengthAfter = (antenna: Antenna, length: number): number => {
  const moved = withTrim(stationOf(antenna), trimmedIn(antenna), length).antennas[0]!;
  return pieceLength(moved.shapes[0]!.shape, moved, moved.feeds[0]?.name ?? "antenna")!;
};

describe("a trimmed antenna", () => {
  it.each(shapes.map((shape) => [shape.kind, shape] as const))(
    "%s is as long as asked, longer or shorter",
    (_, shape) => {
      const antenna = antennaOf(shape);
      const { length } = trimmedIn(antenna);
      for (const factor of [0.7, 0.95, 1, 1.2])
        expect(lengthAfter(antenna, factor * length)).toBeCloseTo(factor * length, 9);
    },
  );

  it("shares the change out over its ends so that it adds up", () => {
    for (const shape of shapes) {
      const { ends, kind } = trimmedIn(antennaOf(shape));
      const both = ends.length === 1 && ends[0]!.share === 0.5 ? 2 : 1;
      expect(both * ends.reduce((sum, e) => sum + e.share, 0), kind).toBeCloseTo(1, 12);
    }
  });

  it("keeps the proportion of unequal legs and the slope of drooping ones", () => {
    const off = withTrim(stationOf(antennaOf(shapes[2]!)), trimmedIn(antennaOf(shapes[2]!)), 18).antennas[0]!;
    expect(off.shapes[0]!.shape).toMatchObject({ legs: [{ value: 6 }, { value: 12 }] });
    const vee = withTrim(stationOf(antennaOf(shapes[1]!)), trimmedIn(antennaOf(shapes[1]!)), 10).antennas[0]!;
    expect((vee.shapes[0]!.shape as { endsHeight: { value: number } }).endsHeight.value).toBeCloseTo(9, 12);
  });

  it("cuts past a bend or a joint of the mast when the last piece is used up", () => {
    const wireShape = withTrim(stationOf(antennaOf(shapes[4]!)), trimmedIn(antennaOf(shapes[4]!)), 10).antennas[0]!;
    expect((wireShape.shapes[0]!.shape as { points: readonly unknown[] }).points).toHaveLength(2);
    const mast = withTrim(stationOf(antennaOf(shapes[5]!)), trimmedIn(antennaOf(shapes[5]!)), 5).antennas[0]!;
    expect((mast.shapes[0]!.shape as { sections: readonly unknown[] }).sections).toHaveLength(1);
  });

  it("leaves the feed point of a loop and the other elements of a beam where they are", () => {
    const loop = withTrim(stationOf(antennaOf(shapes[6]!)), trimmedIn(antennaOf(shapes[6]!)), 44).antennas[0]!;
    const { corners } = loop.shapes[0]!.shape as Extract<Shape, { kind: "loop" }>;
    expect(corners[0]!.map((x) => x.value)).toEqual([0, 0, 6]);
    expect(corners[2]![2].value).toBeCloseTo(17, 12);
    const beam = withTrim(stationOf(antennaOf(shapes[7]!)), trimmedIn(antennaOf(shapes[7]!)), 9.8).antennas[0]!;
    const { elements } = beam.shapes[0]!.shape as Extract<Shape, { kind: "beam" }>;
    expect(elements.map((e) => e.length.value)).toEqual([10.5, 9.8, 9.4]);
  });

  it("moves both free ends of single wires round a bend, and leaves alone an end on other wires", () => {
    const wires = {
      kind: "wires" as const,
      wires: [
        { name: "mast", from: place(0, 0, 2), to: place(0, 0, 10), wire },
        { name: "top", from: place(6, 0, 10), to: place(0, 0, 10), wire },
        { name: "radial", from: place(0, 0, 2), to: place(10, 0, 2), wire },
      ],
    };
    const feeds = [{ name: "base", at: place(0, 0, 2), from: "mast", into: "radial" }];
    const antenna: Antenna = { ...antennaOf(wires), feeds };
    expect(trimmedIn(antenna).length).toBeCloseTo(24, 12);
    const moved = withTrim(stationOf(antenna), trimmedIn(antenna), 26).antennas[0]!.shapes[0]!.shape as typeof wires;
    expect(moved.wires[1]!.from[0].value).toBeCloseTo(7, 12);
    expect(moved.wires[2]!.to[0].value).toBeCloseTo(11, 12);
    const tee = {
      ...wires,
      wires: [...wires.wires, { name: "other", from: place(0, 0, 10), to: place(-6, 0, 10), wire }],
    };
    expect(freeEnds(tee, antenna, "base").map((e) => e.chain)).toEqual([[2]]);
  });

  it("never gets shorter than where its coils sit", () => {
    const coil: Load = {
      kind: "coil",
      component: { coil: q(3e-6), capacitor: null, resistor: null, q: q(100) },
      hat: null,
      on: "both legs",
      fromFeed: q(8),
      length: null,
    };
    expect(trimmedIn({ ...antennaOf(levelDipole(20, 12)), loads: [coil] }).least).toBeGreaterThan(16);
  });

  it("takes of several elements the one nearest to resonance, or the one asked for", () => {
    const fan = {
      ...antennaOf(levelDipole(20, 12)),
      shapes: [
        { name: "short", shape: levelDipole(10, 12) },
        { name: "long", shape: levelDipole(20, 12) },
      ],
    };
    expect(trimmedIn(fan).shape).toBe(1);
    expect(trimmedIn(fan, 1).shape).toBe(0);
    expect(trimmedOf(stationOf(fan), "antenna", 42, 3)).toHaveProperty("refused");
  });
});
