import { describe, expect, it } from "vitest";
import { complex, magnitude, reciprocal, subtract } from "../numerics/complex";
import { exactly } from "../quantity/quantity";
import type { Antenna, Load, Shape } from "../station/antennaDescription";
import { antennaOf, copper, levelDipole, plainStation } from "../testing/plainStation";
import { solveAntenna } from "../wires/solveAntenna";
import { validateStructure } from "../wires/validateStructure";
import { antennaStructure } from "./antennaStructure";
import { loadImpedance } from "./lumpedImpedance";
import { distance } from "./wireRun";

const q = exactly;
const w = 2 * Math.PI * 7.1e6;
const none = { coil: null, capacitor: null, resistor: null, q: q(Number.POSITIVE_INFINITY) };
const load = (changes: Partial<Load>): Load => ({
  kind: "coil",
  component: { ...none, coil: q(8e-6), q: q(200) },
  hat: null,
  on: "both legs",
  fromFeed: q(2),
  length: null,
  ...changes,
});
const build = (shape: Shape, loads: readonly Load[], more: Partial<Antenna> = {}) =>
  antennaStructure(plainStation({ antennas: [{ ...antennaOf(shape), loads, ...more }] }));
const impedance = (shape: Shape, loads: readonly Load[], more: Partial<Antenna> = {}) => {
  const { structure, refused } = build(shape, loads, more);
  expect(refused).toBeNull();
  const soil = { kind: "free space" } as const;
  expect(validateStructure(structure, soil, 7.1e6)).toEqual([]);
  return reciprocal(solveAntenna(structure, soil, 7.1e6).admittance[0]![0]!);
};

describe("what a load puts into the wire", () => {
  it("resonates with the capacitance of its own turns", () => {
    const coil = { ...none, coil: q(8e-6), q: q(200) };
    // Resonance of L and C in parallel: C = 1/(ω² L).
    const own = q(1 / (w * w * 8e-6));
    const z = loadImpedance(load({ selfCapacitance: own }), coil, w);
    expect(magnitude(z) / (w * 8e-6 * 200)).toBeCloseTo(1, 2);
    // Far below, L/(1 - ω² L C).
    const low = loadImpedance(load({ selfCapacitance: own }), coil, w / 10);
    expect(low.im).toBeCloseTo((w / 10) * 8e-6 * (1 / (1 - 0.01)), 1);
  });

  it("adds up in series, and its admittances in parallel", () => {
    const parts = { ...none, coil: q(1e-6), resistor: q(50) };
    expect(loadImpedance(load({ kind: "series" }), parts, w)).toEqual(complex(50, w * 1e-6));
    const across = reciprocal(loadImpedance(load({ kind: "parallel" }), parts, w));
    expect(across.re).toBeCloseTo(1 / 50, 12);
    expect(across.im).toBeCloseTo(-1 / (w * 1e-6), 12);
  });
});

describe("a coil of its own length", () => {
  it("acts along it, and tends to the coil at one point when it is short", () => {
    const dipole = levelDipole(12, 12);
    expect(build(dipole, [load({ length: q(0.3) })]).structure.loads).toHaveLength(10);
    const point = impedance(dipole, [load({})]);
    const apart = (length: number) => magnitude(subtract(impedance(dipole, [load({ length: q(length) })]), point));
    // The goal of a solution is half an ohm.
    expect(apart(0.03)).toBeLessThan(0.5);
    // A metre of coil in a leg of six does not act like one in a point.
    expect(apart(1)).toBeGreaterThan(5);
  });

  it("is refused where it reaches beyond the wire", () => {
    expect(build(levelDipole(12, 12), [load({ fromFeed: q(5.9), length: q(0.5) })]).refused?.why).toContain("end");
  });
});

describe("hats", () => {
  const hat = (spokes: number, length: number, ring = false) => ({
    spokes,
    length: q(length),
    wire: copper(2e-3),
    ring,
  });
  const mast: Shape = { kind: "vertical", base: q(3), sections: [{ length: q(8), wire: copper(20e-3) }] };
  const radials: Partial<Antenna> = {
    against: "radials",
    radials: { count: 4, length: q(10), wire: copper(2e-3), lie: q(3), over: { from: 0, to: 2 * Math.PI }, bond: null },
  };
  const onMast = (changes: Partial<Load>) => load({ kind: "hat", component: null, on: "mast", ...changes });

  it("stand square to the end of a mast, with their ring", () => {
    const { structure } = build(mast, [onMast({ hat: hat(6, 1, true), fromFeed: "end" })], radials);
    const spokes = structure.wires.filter((x) => x.name.includes("spoke"));
    const ring = structure.wires.filter((x) => x.name.includes("ring"));
    expect(spokes).toHaveLength(6);
    for (const { from, to } of spokes)
      expect([from[2], to[2], distance(from, to)]).toEqual([11, 11, expect.closeTo(1)]);
    // Sides of a hexagon are as long as its radius.
    for (const { from, to } of ring) expect(distance(from, to)).toBeCloseTo(1, 9);
  });

  it("divide a wire along its way and keep its loads, its feed and its length", () => {
    const loads = [onMast({ hat: hat(4, 1), fromFeed: q(6) }), load({ on: "mast", fromFeed: q(7) })];
    const { structure } = build(mast, loads, radials);
    const pieces = structure.wires.filter((x) => x.name.startsWith("mast"));
    expect(pieces.map((x) => [x.from[2], x.to[2]])).toEqual([
      [3, 9],
      [9, 11],
    ]);
    const [coil] = structure.loads;
    expect(structure.wires[coil!.wire]!.from[2] + coil!.distance).toBeCloseTo(10, 9);
  });

  it("lower the resonance the more, the longer their spokes", () => {
    const reactance = (length: number) =>
      impedance(mast, [onMast({ hat: hat(4, length), fromFeed: "end" })], radials).im;
    const bare = impedance(mast, [], radials).im;
    expect(reactance(0.5)).toBeGreaterThan(bare + 20);
    expect(reactance(1)).toBeGreaterThan(reactance(0.5) + 20);
  });

  it("sit on both legs of a dipole", () => {
    const on = load({ kind: "hat", component: null, hat: hat(2, 1), fromFeed: "end" });
    expect(build(levelDipole(14, 12), [on]).structure.wires).toHaveLength(6);
    expect(build(levelDipole(14, 12), [{ ...on, hat: hat(2, 1, true) }]).refused?.why).toContain("three spokes");
  });
});
