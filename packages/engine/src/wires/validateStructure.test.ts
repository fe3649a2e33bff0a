import { describe, expect, it } from "vitest";
import { chosenKernels } from "../kernels/chosen";
import { dipole, groundPlane, testFrequency, wire } from "./antennas.fixture";
import { solveAntenna } from "./solveAntenna";
import type { Point, Soil, Structure } from "./structure";
import { validateStructure } from "./validateStructure";

const free: Soil = { kind: "free space" };
const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };
const perfect: Soil = { kind: "perfect" };
const base = dipole(20, 1e-3, 10);

const withWires = (...more: Structure["wires"]): Structure => ({ ...base, wires: [...base.wires, ...more] });
const replaced = (change: Partial<Structure["wires"][number]>): Structure => ({
  ...base,
  wires: [base.wires[0]!, { ...base.wires[1]!, ...change }],
});

describe("validateStructure", () => {
  it("lets good structures pass", () => {
    for (const ground of [free, soil, perfect]) {
      expect(validateStructure(base, ground, testFrequency)).toEqual([]);
      expect(validateStructure(groundPlane(2), ground, testFrequency)).toEqual([]);
    }
    expect(validateStructure(dipole(20, 1e-3, 0.03 * 42), soil, testFrequency)).toEqual([]);
  });

  const far: Point = [30, 0, 10];
  const cases: readonly (readonly [string, Structure, Soil, string])[] = [
    ["no wires", { wires: [], feeds: [], loads: [] }, free, "no wires"],
    ["no feed", { ...base, feeds: [] }, free, "no feed"],
    ["a wire without length", withWires(wire(far, far)), free, "no length"],
    ["a negative radius", replaced({ radius: -1 }), free, "radius"],
    ["a stub thicker than long", withWires(wire(far, [30, 0, 10.005])), free, "shorter than 20"],
    ["a wire thick for its wavelength", replaced({ radius: 0.5 }), free, "0.01 wavelengths"],
    [
      "insulation inside the wire",
      replaced({ insulation: { outerRadius: 5e-4, permittivity: 2 } }),
      free,
      "insulation",
    ],
    ["a wire on the soil", dipole(20, 1e-3, 0), soil, "stay 0.0015 m above the soil"],
    ["a wire in the soil", dipole(20, 1e-3, -1), soil, "stay 0.0015 m above the soil"],
    ["a wire through a perfect plane", dipole(20, 1e-3, -1), perfect, "perfect plane"],
    ["a wire along a perfect plane", dipole(20, 1e-3, 0), perfect, "perfect plane"],
    ["crossing wires", withWires(wire([-1, 3, 10], [1, 3, 10])), free, "cross"],
    ["an end on a middle", withWires(wire([0, 3, 10], [1, 3, 10])), free, "middle"],
    ["wires too close", withWires(wire([0.004, 0, 10], [0.004, 5, 10])), free, "come within"],
    ["a sharp corner", withWires(wire([0, 10, 10], [0.001, 5, 10])), free, "degrees apart"],
    ["a feed in the air", { ...base, feeds: [{ ...base.feeds[0]!, at: [0, 1, 10] }] }, free, "no end at the feed"],
    ["a feed with one side", { ...base, feeds: [{ ...base.feeds[0]!, from: [] }] }, free, "no wire on the side"],
    ["two feeds at a point", { ...base, feeds: [base.feeds[0]!, base.feeds[0]!] }, free, "at one point"],
    [
      "a load beyond the wire",
      { ...base, loads: [{ wire: 0, distance: 11, impedance: () => ({ re: 1, im: 0 }) }] },
      free,
      "11 m along",
    ],
    [
      "an open load",
      { ...base, loads: [{ wire: 0, distance: 1, impedance: () => ({ re: Infinity, im: 0 }) }] },
      free,
      "infinite",
    ],
    ["too many unknowns", dipole(5000, 1e-3, 100), free, "unknown currents"],
    ["too much memory, told in MB with what to leave out", dipole(5000, 1e-3, 100), free, "(576 MB)"],
    [
      "thousands of wires, before each pair of them is looked at",
      withWires(...Array.from({ length: 20_000 }, (_, i) => wire([i, 0, 30], [i, 1, 30]))),
      free,
      "draw fewer",
    ],
    ["wires too close to it", dipole(20, 1e-3, 0.0014), soil, "stay 0.0015 m above the soil"],
    [
      "long wires low over the sea",
      dipole(150, 1e-3, 0.03),
      { kind: "homogeneous", relativePermittivity: 80, conductivity: 5 },
      "sample points",
    ],
    [
      "soil lighter than air",
      base,
      { kind: "homogeneous", relativePermittivity: 0.5, conductivity: 0 },
      "permittivity",
    ],
  ];
  it.each(cases)("refuses %s", (_, structure, ground, words) => {
    const problems = validateStructure(structure, ground, testFrequency);
    expect(problems.join("\n")).toContain(words);
    expect(() => solveAntenna(structure, ground, testFrequency)).toThrow(words);
  });

  it("refuses a mesh out of all proportion", () => {
    expect(() => solveAntenna(base, free, testFrequency, chosenKernels(), { refinement: 200 })).toThrow("unknowns");
  });

  it("refuses a frequency that is none", () => {
    expect(validateStructure(base, free, 0)).toHaveLength(1);
    expect(validateStructure(base, free, Number.NaN)).toHaveLength(1);
  });
});
