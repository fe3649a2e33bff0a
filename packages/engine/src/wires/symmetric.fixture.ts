/** Structures with symmetries of several kinds, and without, for the tests of what is made of it. Metres. */
import { soilLength } from "../ground/soilLength";
import { chosenKernels } from "../kernels/chosen";
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
  const prepared = preparedMesh(made, ground, meshRule(testFrequency, 1), chosenKernels());
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

/** A mast over bent arms that differ by turns about it alone: random, but for that; coils in all of them. */
export function turnedArms(count: number, seed: number): Structure {
  let state = seed;
  const next = (): number => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 2147483648;
  };
  const foot: Point = [3 * next(), 3 * next(), 4];
  // Arms keep to a sector of less than half the angle between them, and never come back.
  const [near, far] = [2 + next(), 5 + 4 * next()];
  const bend = (0.4 * 2 * Math.PI * (0.2 + 0.8 * next())) / count;
  const [low, high] = [3 + 2 * next(), 3 + 4 * next()];
  const turn = 2 * Math.PI * next();
  const at = (radius: number, azimuth: number, z: number): Point => [
    foot[0] + radius * Math.sin(azimuth),
    foot[1] + radius * Math.cos(azimuth),
    z,
  ];
  const arms = Array.from({ length: count }, (_, i) => {
    const azimuth = turn + (2 * Math.PI * i) / count;
    const knee = at(near, azimuth, low);
    return [wire(foot, knee), wire(knee, at(far, azimuth + bend, high))];
  });
  return {
    wires: [wire(foot, [foot[0], foot[1], 12], 3e-3), ...arms.flat()],
    feeds: [{ name: "foot", at: foot, from: arms.map((_, i) => 1 + 2 * i), into: [0] }],
    loads: arms.map((_, i) => ({ wire: 2 + 2 * i, distance: 1, impedance: coil(100) })),
  };
}
