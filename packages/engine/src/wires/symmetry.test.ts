import { describe, expect, it } from "vitest";
import { soilLength } from "../ground/soilLength";
import { referenceKernels } from "../kernels/reference/referenceKernels";
import { speedOfLight } from "../numerics/vacuum";
import { dipole, groundPlane, testFrequency, testWavelength, upright, wire } from "./antennas.fixture";
import { withElectrodes } from "./electrodes";
import { meshRule } from "./grading";
import { localImpedances } from "./localTerms";
import { onGrid } from "./onGrid";
import { portAdmittance } from "./portMatrices";
import { preparedMesh } from "./preparedMesh";
import { buildSamplePoints } from "./samplePoints";
import { solvePorts, solveSystem } from "./solveSystem";
import { isRealSoil, type Point, type Soil, type Structure } from "./structure";
import { symmetryOf } from "./symmetry";

const free: Soil = { kind: "free space" };
const perfect: Soil = { kind: "perfect" };
const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };

function assemblyOf(asked: Structure, ground: Soil) {
  const w = 2 * Math.PI * testFrequency;
  const made = withElectrodes(onGrid(asked), ground);
  const { structure } = made;
  const prepared = preparedMesh(made, ground, meshRule(testFrequency, 1), referenceKernels);
  const length = isRealSoil(ground) ? soilLength(ground, testFrequency) : null;
  const points = buildSamplePoints(structure, prepared, speedOfLight / testFrequency, length);
  const local = localImpedances(structure, prepared.mesh, w);
  return { structure, prepared, points, local, soil: ground, angularFrequency: w };
}

const orderOf = (structure: Structure, ground: Soil = free): number =>
  symmetryOf(assemblyOf(structure, ground))?.order ?? 1;

/** Largest difference of admittances and of currents with and without symmetry, over the largest of each. */
function differences(structure: Structure, ground: Soil) {
  const assembly = assemblyOf(structure, ground);
  const { ports } = assembly.prepared.mesh;
  const all = ports.map((_, p) => p);
  const plain = solvePorts(assembly, all, referenceKernels);
  const made = solveSystem(assembly, referenceKernels);
  const ofVectors = (a: { re: Float64Array; im: Float64Array }, b: typeof a): number => {
    let [most, size] = [0, 0];
    a.re.forEach((re, i) => {
      most = Math.max(most, Math.hypot(re - b.re[i]!, a.im[i]! - b.im[i]!));
      size = Math.max(size, Math.hypot(re, a.im[i]!));
    });
    return most / size;
  };
  const flat = (currents: typeof made.currents) => {
    const entries = portAdmittance(currents, ports).flat();
    return { re: Float64Array.from(entries, (y) => y.re), im: Float64Array.from(entries, (y) => y.im) };
  };
  return {
    symmetry: made.symmetry,
    currents: ofVectors(plain.fine.vectors, made.currents),
    admittance: ofVectors(flat(plain.fine.vectors), flat(made.currents)),
    coarse: ofVectors(flat(plain.coarse), flat(made.coarseCurrents)),
  };
}

const invertedVee: Structure = {
  wires: [wire([-8, 3, 6], [0, 0, 11]), wire([0, 0, 11], [8, -3, 6])],
  feeds: [{ name: "feed", at: [0, 0, 11], from: [0], into: [1] }],
  loads: [],
};
const corners: Point[] = [
  [-5, 0, 3],
  [5, 0, 3],
  [5, 0, 13],
  [-5, 0, 13],
];
/** A square loop on edge, fed at the middle of its lower side. */
const loop: Structure = {
  wires: [
    wire([0, 0, 3], corners[1]!),
    wire(corners[1]!, corners[2]!),
    wire(corners[2]!, corners[3]!),
    wire(corners[3]!, corners[0]!),
    wire(corners[0]!, [0, 0, 3]),
  ],
  feeds: [{ name: "feed", at: [0, 0, 3], from: [4], into: [0] }],
  loads: [],
};
function star(count: number, height: number): Structure {
  const base: Point = [2, 1, height];
  const ends = Array.from({ length: count }, (_, i): Point => {
    const azimuth = 0.3 + (2 * Math.PI * i) / count;
    return [2 + 6 * Math.sin(azimuth), 1 + 6 * Math.cos(azimuth), height];
  });
  return {
    wires: [wire(base, [2, 1, height + 9], 5e-3), ...ends.map((end) => wire(base, end))],
    feeds: [{ name: "base", at: base, from: ends.map((_, i) => i + 1), into: [0] }],
    loads: [],
  };
}
const twoVerticals: Structure = {
  wires: [-5, 5].flatMap((x) => [wire([x, 0, 1], [x, 0, 5]), wire([x, 0, 5], [x, 0, 10])]),
  feeds: [-5, 5].map((x, i) => ({ name: `feed ${i}`, at: [x, 0, 5] as const, from: [2 * i], into: [2 * i + 1] })),
  loads: [],
};
const coil = (reactance: number) => () => ({ re: 1, im: reactance });
const loaded = (second: number, place: number): Structure => ({
  ...dipole(16, 1e-3, 10),
  loads: [
    { wire: 0, distance: 4, impedance: coil(300) },
    { wire: 1, distance: place, impedance: coil(second) },
  ],
});
const inSeries: Structure = { ...dipole(20, 1e-3, 10), loads: [{ wire: 0, distance: 10, impedance: coil(30) }] };

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

function offCentre(): Structure {
  const at: Point = [0, 1, 10];
  return {
    wires: [wire([0, -10, 10], at), wire(at, [0, 10, 10])],
    feeds: [{ name: "feed", at, from: [0], into: [1] }],
    loads: [],
  };
}

/** A dipole fed in the middle, and a wire below it, opened in its middle, across or along: a gap that mirrors turn or keep. */
const withGap = (from: Point, to: Point, distance: number): Structure => ({
  ...dipole(20, 1e-3, 10),
  wires: [...dipole(20, 1e-3, 10).wires, wire(from, to)],
  gaps: [{ name: "gap", wire: 2, distance }],
});

/**
 * Moments of elements beside others 100 times as long cancel to 1e-11, for a pair and its images by other roundings; near
 * resonance the sum of many of them, thousands of ohms, leaves some ohms. Images are off by the grid of coordinates, too:
 * 1e-9 m of lengths of 5 m and more, 2e-10, with the sharpness of resonance (10 to 100) 2e-8.
 */
const within = 1e-7;

describe("what is solved by way of symmetry is what is solved without", () => {
  it.each([
    ["dipole in free space", dipole(20, 1e-3, 10), free, 2],
    ["dipole over soil", dipole(20, 1e-3, 10), soil, 2],
    ["dipole over a perfect plane", dipole(20, 1e-3, 4), perfect, 2],
    ["dipole of copper with coils", loaded(300, 4), soil, 2],
    ["inverted vee", invertedVee, soil, 2],
    ["loop", loop, soil, 2],
    ["four radials low over soil", groundPlane(0.3), soil, 8],
    ["nine radials", star(9, 5), free, 18],
    ["a gap that the mirror keeps, beside a feed it turns", withGap([0, 0, 2], [0, 0, 8], 2), soil, 2],
    ["a gap that the mirror turns as it does the feed", withGap([0, -6, 5], [0, 6, 5], 6), free, 2],
    ["mast on an earth", mastOnEarth(), soil, 8],
  ] as [string, Structure, Soil, number][])("%s", (_, structure, ground, order) => {
    const made = differences(structure, ground);
    expect(made.symmetry).toBe(order);
    expect(made.admittance).toBeLessThan(within);
    expect(made.coarse).toBeLessThan(within);
    expect(made.currents).toBeLessThan(within);
  });
});

/** A quarter wave over an earth, fed above its foot: the four arms of the electrode have the symmetry of a square, turned. */
function mastOnEarth(): Structure {
  const foot: Point = [0, 0, 0.2];
  const at: Point = [0, 0, 1];
  return {
    wires: [wire(foot, at), wire(at, [0, 0, testWavelength / 4])],
    feeds: [{ name: "feed", at, from: [0], into: [1] }],
    loads: [],
    contacts: [{ name: "earth", at: foot, reach: 1 }],
  };
}
