import { describe, expect, it } from "vitest";
import { exactly } from "../quantity/quantity";
import type { Shape } from "../station/antennaDescription";
import { antennaOf, copper, place, plainStation } from "../testing/plainStation";
import { antennaStructure } from "./antennaStructure";
import { distance } from "./wireRun";

const q = exactly;
const build = (shape: Shape, more = {}) =>
  antennaStructure(plainStation({ antennas: [{ ...antennaOf(shape), ...more }] }));
const total = (shape: Shape) => build(shape).structure.wires.reduce((sum, w) => sum + distance(w.from, w.to), 0);
const wire = copper(2e-3);

describe("shapes as wires", () => {
  it("keeps the stated wire length in a level and in a drooping dipole", () => {
    const span = { height: q(11), direction: q(1), wire };
    expect(total({ kind: "dipole", length: q(26), endsHeight: null, sag: q(0), ...span })).toBeCloseTo(26, 9);
    expect(total({ kind: "inverted vee", length: q(26), endsHeight: q(5), ...span })).toBeCloseTo(26, 9);
  });

  it("hangs a sagging leg below its chord without losing length", () => {
    const shape: Shape = {
      kind: "dipole",
      length: q(26),
      height: q(11),
      endsHeight: q(10),
      sag: q(0.7),
      direction: q(0),
      wire,
    };
    expect(total(shape)).toBeCloseTo(26, 6);
    const lowest = Math.min(...build(shape).structure.wires.map((w) => w.to[2]));
    expect(lowest).toBeLessThan(10);
  });

  it("sends the first leg where `direction` points", () => {
    const [first] = build({
      kind: "dipole",
      length: q(20),
      height: q(10),
      endsHeight: null,
      sag: q(0),
      direction: q(Math.PI / 2),
      wire,
    }).structure.wires;
    expect(first!.to[0]).toBeCloseTo(10, 9);
    expect(first!.to[1]).toBeCloseTo(0, 9);
  });

  it("splits the fed side of a loop and closes the ring", () => {
    const corners = [place(0, 0, 10), place(10, 0, 10), place(10, 0, 15), place(0, 0, 15)];
    const { structure } = build({ kind: "loop", corners, fedAt: { side: 1 }, wire });
    expect(structure.wires).toHaveLength(5);
    expect(structure.feeds[0]!.at).toEqual([5, 0, 10]);
    expect(structure.wires[4]!.to).toEqual(structure.wires[0]!.from);
  });

  it("builds a beam across its boom with one fed element", () => {
    const elements = [0, 2.6, 5.6].map((along, i) => ({ length: q([10.5, 9.6, 9.3][i]!), along: q(along) }));
    const { structure } = build({
      kind: "beam",
      elements,
      driven: 2,
      height: q(12),
      boom: q(0),
      wire,
      boomCorrection: "none",
    });
    expect(structure.wires).toHaveLength(4);
    expect(structure.feeds[0]!.at[1]).toBeCloseTo(-0.2, 9);
  });
});

describe("loads lie where the file puts them", () => {
  const coil = (on: string, fromFeed: number) => ({
    kind: "coil" as const,
    component: { coil: q(2e-6), capacitor: null, resistor: null, q: q(200) },
    hat: null,
    on,
    fromFeed: q(fromFeed),
    length: null,
  });
  const spots = (shape: Shape, more: object) => {
    const { structure, refused } = build(shape, more);
    expect(refused).toBeNull();
    return structure.loads.map((load) => {
      const { from, to } = structure.wires[load.wire]!;
      const share = load.distance / distance(from, to);
      return [0, 1, 2].map((i) => Number((from[i]! + (to[i]! - from[i]!) * share).toFixed(9)) + 0);
    });
  };

  it("counts from the feed whichever way a wire was written", () => {
    const ends = [place(0, 0, 2), place(0, 0, 12)] as const;
    const radial = { name: "radial", from: place(0, 0, 2), to: place(5, 0, 2), wire };
    const feeds = [{ name: "antenna", at: place(0, 0, 2), from: "mast", into: "radial" }];
    for (const [from, to] of [ends, [ends[1], ends[0]]] as const) {
      const shape: Shape = { kind: "wires", wires: [{ name: "mast", from, to, wire }, radial] };
      expect(spots(shape, { feeds, loads: [coil("mast", 3)] })).toEqual([[0, 0, 5]]);
    }
  });

  it("loads both halves of an element of a beam, fed or not", () => {
    const elements = [0, 2].map((along) => ({ length: q(7), along: q(along) }));
    const more = { driven: 2, height: q(12), boom: q(0), wire, boomCorrection: "none" as const };
    const shape: Shape = { kind: "beam", elements, ...more };
    for (const [element, y] of [
      ["element 1", -1],
      ["element 2", 1],
    ] as const) {
      const found = spots(shape, { loads: [coil(element, 2)] }).sort((a, b) => a[0]! - b[0]!);
      expect(found).toEqual([
        [-2, y, 12],
        [2, y, 12],
      ]);
    }
  });

  it("loads one shape of several by its name", () => {
    const span = (length: number, endsHeight: number): Shape => ({
      kind: "dipole",
      length: q(length),
      height: q(8),
      endsHeight: q(endsHeight),
      sag: q(0),
      direction: q(Math.PI / 2),
      wire,
    });
    const shapes = [
      { name: "long", shape: span(20, 8) },
      { name: "short", shape: span(7, 7) },
    ];
    const { structure } = build(shapes[0]!.shape, { shapes, loads: [coil("long", 4)] });
    expect(structure.loads.map((l) => [l.wire, l.distance])).toEqual([
      [0, 4],
      [1, 4],
    ]);
  });
});

describe("what cannot be built yet or at all is told, never left out silently", () => {
  const mast: Shape = { kind: "vertical", base: q(2.5), sections: [{ length: q(10), wire }] };
  const radials = (lie: number | "on the soil") => ({
    against: "radials",
    radials: {
      count: 4,
      length: q(10),
      wire,
      lie: lie === "on the soil" ? lie : q(lie),
      over: { from: 0, to: 2 * Math.PI },
      bond: null,
    },
  });

  it("refuses a vertical without a return", () => {
    expect(build(mast).refused?.mend).toContain("against");
  });

  it("takes raised radials and such on the soil, and refuses buried ones", () => {
    const raised = build(mast, radials(2.4));
    expect(raised.refused).toBeNull();
    expect(raised.structure.feeds[0]!.into).toHaveLength(4);
    expect(build(mast, radials(-0.05)).refused?.why).toContain("not computed yet");
    const lying = build(mast, radials("on the soil"));
    // A lead goes down from the base, and they spread from its foot.
    expect(lying.structure.feeds[0]!.into).toHaveLength(1);
    expect(lying.structure.wires.filter((w) => w.name.startsWith("radial ")).every((w) => w.to[2] === 5e-3)).toBe(true);
    expect(lying.assumed.map((a) => a.name)).toContain("radials on the soil");
    expect(build({ ...mast, base: q(13) }, radials(2.4)).refused?.why).toContain("cannot reach");
  });

  it("refuses the outside of a line that has no route", () => {
    expect(build(mast, { against: "outside of the line" }).refused?.mend).toContain("route");
  });

  it("stands conductors on the soil through an earth, and tells roofs as not computed yet", () => {
    const station = plainStation({
      surroundings: [
        {
          kind: "conductor",
          name: "mast",
          points: [place(0, 5, 0), place(0, 5, 9)],
          wire,
          foot: q(100),
          insulators: [q(4)],
        },
        { kind: "conductor", name: "gutter", points: [place(0, 5, 3), place(8, 5, 3)], wire },
        { kind: "roof", covering: "clay tile", loss: { value: 1, low: 0.3, high: 2, basis: "stated" } },
      ],
    });
    const built = antennaStructure(station);
    expect(built.notComputed).toHaveLength(1);
    expect(built.surroundingWires.size).toBe(2);
    expect(built.structure.contacts?.map((c) => c.name)).toEqual(["foot of mast"]);
    expect(built.structure.gaps).toEqual([{ name: "insulator in mast, 4 m along", wire: 0, distance: 4 }]);
  });
});

describe("wires that end on the soil", () => {
  const tower = { name: "tower", from: place(0, 0, 0), to: place(0, 0, 15), wire };
  const slope = { name: "slope", from: place(0, 0, 15), to: place(12, 0, 3), wire };
  const shape: Shape = { kind: "wires", wires: [tower, slope] };
  const feeds = [{ name: "antenna", at: place(0, 0, 15), from: "slope", into: "tower" }];
  const on = (earths: Parameters<typeof plainStation>[0]) =>
    antennaStructure(plainStation({ antennas: [{ ...antennaOf(shape), feeds }], ...earths }));

  it("meet it through the earth of the file at that place", () => {
    const earth = { form: "unspecified" as const, size: null, diameter: null };
    const at = place(0.2, 0, 0);
    const built = on({ earths: [{ ...earth, name: "footing", at, resistance: q(30) }] });
    expect(built.refused).toBeNull();
    expect(built.structure.contacts).toMatchObject([{ name: "footing", at: [0, 0, 0.02] }]);
    expect(built.structure.wires[0]!.from[2]).toBe(0.02);
    expect(built.closings.map((c) => c.kind)).toEqual(["earth"]);
  });

  it("are refused where the file has no earth, and stand directly on a perfect plane", () => {
    expect(on({}).refused?.why).toContain("ends on the soil");
    const plane = on({ ground: { kind: "perfect" } });
    expect(plane.refused).toBeNull();
    expect(plane.structure.contacts).toHaveLength(0);
  });
});
