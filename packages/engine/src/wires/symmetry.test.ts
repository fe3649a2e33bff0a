import { describe, expect, it } from "vitest";
import { dipole, groundPlane, upright, wire } from "./antennas.fixture";
import type { Point, Soil, Structure } from "./structure";
import {
  assemblyOf,
  free,
  inSeries,
  invertedVee,
  loaded,
  loop,
  offCentre,
  soil,
  star,
  twoVerticals,
} from "./symmetric.fixture";
import { symmetryOf } from "./symmetry";

const orderOf = (structure: Structure, ground: Soil = free): number =>
  symmetryOf(assemblyOf(structure, ground))?.order ?? 1;

describe("symmetryOf", () => {
  it.each([
    ["dipole", dipole(20, 1e-3, 10), free, 2],
    ["dipole over soil", dipole(20, 1e-3, 10), soil, 2],
    ["inverted vee in an oblique plane", invertedVee, free, 2],
    ["square loop on edge", loop, free, 2],
    ["four radials: square with its mirrors", groundPlane(5), free, 8],
    ["sixteen radials", star(16, 5), free, 32],
    ["five radials", star(5, 5), free, 10],
    ["dipole with equal loads at equal places", loaded(300, 4), free, 2],
    ["dipole with a load in series with its feed", inSeries, free, 2],
  ])("finds that of a %s", (_, structure, ground, order) => {
    expect(orderOf(structure, ground)).toBe(order);
  });
  const [left, right] = dipole(20, 1e-3, 10).wires;
  it.each([
    ["a wire on the axis alone", upright(20, 1e-3, 15), free],
    ["two verticals fed apart, which a mirror would exchange", twoVerticals, free],
    ["unequal loads", loaded(301, 4), free],
    ["loads at unequal places", loaded(300, 4.1), free],
    ["a load on one side", { ...loaded(300, 4), loads: loaded(300, 4).loads.slice(1) }, free],
    [
      "one load here, the same twice there",
      { ...loaded(300, 4), loads: [0, 1, 1].map((i) => loaded(300, 4).loads[i]!) },
      free,
    ],
    [
      "an arm longer by 10 nm",
      { ...dipole(20, 1e-3, 10), wires: [left!, { ...right!, to: [0, 10 + 1e-8, 10] }] },
      free,
    ],
    ["arms of two metals", { ...dipole(20, 1e-3, 10), wires: [left!, { ...right!, conductivity: 5.8e7 }] }, free],
    ["arms of two thicknesses", { ...dipole(20, 1e-3, 10), wires: [left!, { ...right!, radius: 1.1e-3 }] }, free],
    ["a wire fed off its middle", offCentre(), free],
    ["a radial left out", { ...star(5, 5), wires: star(5, 5).wires.slice(0, 5), feeds: star(4, 5).feeds }, free, 2],
  ] as [string, Structure, Soil, number?][])("takes %s for what it is", (_, structure, ground, order = 1) => {
    expect(orderOf(structure, ground)).toBe(order);
  });
  it("finds none in random wires", () => {
    let state = 5;
    const next = () => {
      state = (state * 1103515245 + 12345) % 2147483648;
      return 10 * (state / 2147483648);
    };
    for (let i = 0; i < 5; i++) {
      const at: Point = [next(), next(), 5 + next()];
      const wires = Array.from({ length: 4 }, () => wire(at, [next(), next(), 5 + next()]));
      expect(orderOf({ wires, feeds: [{ name: "feed", at, from: [0], into: [1] }], loads: [] })).toBe(1);
    }
  });
  it("solves for a few unknowns of a star", () => {
    const assembly = assemblyOf(star(16, 5), soil);
    const { kinds } = symmetryOf(assembly)!;
    expect(kinds).toHaveLength(1);
    const { firstElement, unknowns } = assembly.prepared.mesh;
    // Mast and one radial, each with as many unknowns inside as it has elements less one, and the current at the foot.
    expect(kinds[0]!.symmetric.size).toBe(firstElement[2]! - 2 + 1);
    expect(unknowns).toBeGreaterThan(8 * kinds[0]!.symmetric.size);
  });
});
