import { describe, expect, it } from "vitest";
import { readStation } from "./readStation";

const station = (antenna: string): string => `feedpath: 1
station: Test
frequency: 7.1 MHz
transmitter: { power: 100 W }
path: [{ line: RG-213/U, length: 10 m }, { feed: one }]
ground: free space
antenna:
${antenna.replace(/^/gm, "  ")}
`;

const wires = `wires:
  - { name: first, from: [8 m up], to: [10 m east, 9 m up], wire: 2 mm copper, length: 10.3 m }
  - { name: second, from: [8 m up], to: [10 m west, 8 m up], wire: 2 mm copper, tension: 60 N }
  - { name: third, from: [5 m north, 8 m up], to: [5 m north, 5 m east, 8 m up], wire: 2 mm copper }
  - { name: fourth, from: [5 m north, 8 m up], to: [5 m north, 5 m west, 8 m up], wire: 2 mm copper }
feeds:
  one: { at: [8 m up], from: first, into: second }
  two: { at: [5 m north, 8 m up], from: third, into: fourth }
`;

const read = (more = "", from = wires) =>
  readStation(station(from + more), { fileName: "test.yaml", readFile: () => null });
const messages = (more: string, from = wires): readonly string[] => read(more, from).problems.map((p) => p.message);

const roundTrip = (more: string) => {
  const first = read(more);
  expect(first.problems).toEqual([]);
  const second = readStation(first.normalised, { fileName: "test.yaml", readFile: () => null });
  expect(second.problems).toEqual([]);
  expect(second.station).toEqual(first.station);
  return first.station!.antennas[0]!;
};

describe("lines between feeds", () => {
  it("are read, written and read back", () => {
    const { joined } = roundTrip(`joined:
  - { line: RG-58C/U, length: 5.2 m, from: one, to: two, crossed: yes }
  - { line: { impedance: 450 ohm, velocity: 0.91, loss: { 7 MHz: 0.3 dB/100 m }, side: balanced }, length: 2 m, from: two, to: one }
  - { stub: RG-213/U, length: 4 m, at: two, far end: shorted }
  - { series: { coil: 2 uH, Q: 200 }, from: one, to: two, crossed: no }
  - { across: { capacitor: 100 pF, resistor: 5 kohm }, at: two }
`);
    expect(joined?.map(({ from, farEnd }) => [from, farEnd])).toEqual([
      ["one", { feed: "two", crossed: true }],
      ["two", { feed: "one", crossed: false }],
      ["two", "shorted"],
      ["one", { feed: "two", crossed: false }],
      ["two", "across"],
    ]);
  });

  it("count as what a feed is connected to", () => {
    const open = (more: string) => read(more).station?.assumptions.some((a) => a.name === "feed two");
    expect(open("")).toBe(true);
    expect(open("joined: [{ line: RG-58C/U, length: 5 m, from: one, to: two }]\n")).toBe(false);
  });

  it("must join two feeds of their antenna", () => {
    expect(messages("joined: [{ line: RG-58C/U, length: 5 m, from: one, to: tow }]\n")[0]).toContain("Nearest: two");
    expect(messages("joined: [{ line: RG-58C/U, length: 5 m, from: one, to: one }]\n")[0]).toContain("stub");
    expect(messages("joined: [{ stub: RG-58C/U, length: 5 m, at: three, far end: open }]\n")[0]).toContain("three");
    expect(messages("joined: [{ line: RG-58C/U, from: one, to: two }]\n")[0]).toContain('needs "length"');
    expect(messages("joined: [{ across: { Q: 100 }, at: two }]\n")[0]).toContain("at least one");
  });
});

describe("loads", () => {
  it("of every kind are read, written and read back", () => {
    const { loads } = roundTrip(`loads:
  - { coil: 3 uH, Q: 200, self-capacitance: 4 pF, on: first, from feed: 3 m }
  - { resistor: 600 ohm, on: third, from feed: 2 m }
  - { series: { coil: 2 uH, resistor: 10 ohm, Q: 150 }, on: third, from feed: 3 m, length: 10 cm }
  - { parallel: { resistor: 470 ohm, capacitor: 30 pF }, on: fourth, from feed: 3 m }
`);
    expect(loads.map((l) => l.kind)).toEqual(["coil", "resistor", "series", "parallel"]);
    expect(loads[0]!.selfCapacitance?.value).toBeCloseTo(4e-12, 20);
  });

  it("must hold something", () => {
    expect(messages("loads: [{ series: { Q: 100 }, on: first, from feed: 3 m }]\n")[0]).toContain("at least one");
  });
});

describe("hanging wires", () => {
  it("have a length, or a pull with the weight of their metal", () => {
    const { shapes } = roundTrip("");
    const [shape] = shapes.map((s) => s.shape);
    const hangs = shape?.kind === "wires" ? shape.wires.map((w) => w.hangs) : [];
    expect(hangs[0]).toMatchObject({ kind: "length", length: { value: 10.3 } });
    // 8960 kg/m³ (CRC Handbook, from memory) times the area of 2 mm times 9.80665 m/s².
    expect(hangs[1]).toMatchObject({ kind: "tension", weight: expect.closeTo(8960 * Math.PI * 1e-6 * 9.80665, 9) });
    expect(hangs[2]).toBeUndefined();
  });

  it("reach from end to end, by one of the two", () => {
    expect(messages("", wires.replace("10.3 m", "9 m"))[0]).toContain("its ends are");
    expect(messages("", wires.replace("10.3 m", "10.3 m, tension: 5 N"))[0]).toContain("one of the two");
    expect(messages("", wires.replace("copper, tension", "perfect, tension"))[0]).toContain("weighs");
    expect(messages("", wires.replace("60 N", "0.1 N"))[0]).toContain("deeper than its ends are apart");
    expect(messages("", wires.replace("[10 m west, 8 m up]", "[3 m up]"))[0]).toContain("above each other");
  });
});

describe("a beam stepped in diameter", () => {
  const beam = (inner: string): string => `beam:
  elements:
    - { length: 10.6 m, along: 0 m, sections: [{ length: ${inner}, wire: 30 mm tube aluminium }, { length: 1 m, wire: 25 mm tube aluminium }] }
    - { length: 10 m, along: 3 m }
  driven: 2
  height: 12 m
  wire: 20 mm tube aluminium
`;
  const oneFeed = (text: string) => station(text).replace("{ feed: one }", "{ feed: antenna }");
  const readBeam = (text: string) => readStation(text, { fileName: "test.yaml", readFile: () => null });

  it("is read, written and read back", () => {
    const first = readBeam(oneFeed(beam("2 m")));
    expect(first.problems).toEqual([]);
    const shape = first.station!.antennas[0]!.shapes[0]!.shape;
    expect(shape.kind === "beam" && shape.elements[0]!.sections?.map((s) => s.length.value)).toEqual([2, 1]);
    expect(readBeam(first.normalised).station).toEqual(first.station);
  });

  it("ends its sections before the tip", () => {
    expect(readBeam(oneFeed(beam("4.5 m"))).problems[0]?.message).toContain("half of the element");
  });
});
