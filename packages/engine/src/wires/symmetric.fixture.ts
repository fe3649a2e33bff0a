/** Structures with symmetries of several kinds, and without, for the tests of what is made of it. Metres. */
import { soilLength } from "../ground/soilLength";
import { referenceKernels } from "../kernels/reference/referenceKernels";
import { speedOfLight } from "../numerics/vacuum";
import { dipole, testFrequency, testWavelength, wire } from "./antennas.fixture";
import { withElectrodes } from "./electrodes";
import { meshRule } from "./grading";
import { localImpedances } from "./localTerms";
import { onGrid } from "./onGrid";
import { preparedMesh } from "./preparedMesh";
import { buildSamplePoints } from "./samplePoints";
import { isRealSoil, type Point, type Soil, type Structure } from "./structure";

export const free: Soil = { kind: "free space" };
export const perfect: Soil = { kind: "perfect" };
export const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };

export function assemblyOf(asked: Structure, ground: Soil) {
  const w = 2 * Math.PI * testFrequency;
  const made = withElectrodes(onGrid(asked), ground);
  const { structure } = made;
  const prepared = preparedMesh(made, ground, meshRule(testFrequency, 1), referenceKernels);
  const length = isRealSoil(ground) ? soilLength(ground, testFrequency) : null;
  const points = buildSamplePoints(structure, prepared, speedOfLight / testFrequency, length);
  const local = localImpedances(structure, prepared.mesh, w);
  return { structure, prepared, points, local, soil: ground, angularFrequency: w };
}

export const invertedVee: Structure = {
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
export const loop: Structure = {
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
export function star(count: number, height: number): Structure {
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
export const twoVerticals: Structure = {
  wires: [-5, 5].flatMap((x) => [wire([x, 0, 1], [x, 0, 5]), wire([x, 0, 5], [x, 0, 10])]),
  feeds: [-5, 5].map((x, i) => ({ name: `feed ${i}`, at: [x, 0, 5] as const, from: [2 * i], into: [2 * i + 1] })),
  loads: [],
};
const coil = (reactance: number) => () => ({ re: 1, im: reactance });
export const loaded = (second: number, place: number): Structure => ({
  ...dipole(16, 1e-3, 10),
  loads: [
    { wire: 0, distance: 4, impedance: coil(300) },
    { wire: 1, distance: place, impedance: coil(second) },
  ],
});
export const inSeries: Structure = { ...dipole(20, 1e-3, 10), loads: [{ wire: 0, distance: 10, impedance: coil(30) }] };

export function offCentre(): Structure {
  const at: Point = [0, 1, 10];
  return {
    wires: [wire([0, -10, 10], at), wire(at, [0, 10, 10])],
    feeds: [{ name: "feed", at, from: [0], into: [1] }],
    loads: [],
  };
}

/** A dipole fed in the middle, and a wire below it, opened in its middle, across or along: a gap that mirrors turn or keep. */
export const withGap = (from: Point, to: Point, distance: number): Structure => ({
  ...dipole(20, 1e-3, 10),
  wires: [...dipole(20, 1e-3, 10).wires, wire(from, to)],
  gaps: [{ name: "gap", wire: 2, distance }],
});

/** A quarter wave over an earth, fed above its foot: the four arms of the electrode have the symmetry of a square, turned. */
export function mastOnEarth(): Structure {
  const foot: Point = [0, 0, 0.2];
  const at: Point = [0, 0, 1];
  return {
    wires: [wire(foot, at), wire(at, [0, 0, testWavelength / 4])],
    feeds: [{ name: "feed", at, from: [0], into: [1] }],
    loads: [],
    contacts: [{ name: "earth", at: foot, reach: 1 }],
  };
}
