/** The antennas that are timed. Every one can be had slightly different, so that nothing kept from before answers. */
import {
  chooseKernels,
  driveAntenna,
  type Kernels,
  type Point,
  type Soil,
  type Structure,
  solveAntenna,
  strongestDirection,
  type Wire,
} from "@feedpath/engine";

export const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };
export const frequency = 7.1e6;
/** Hz; above all that is solved, so that a mesh can be held over a sweep. */
export const meshFor = 7.3e6;

const wire = (from: Point, to: Point): Wire => ({
  name: `${from} to ${to}`,
  from,
  to,
  radius: 1e-3,
  conductivity: 58e6,
  permeability: 1,
  insulation: null,
});

/** m */
export const leg = 10.05;

let made = 0;
/** A length within a tenth of a millimetre, never the same twice. */
export function fresh(length: number): number {
  made += 1;
  return length + 1e-8 * (made % 10_000);
}

/** A level dipole along y, 2 mm thick. */
export function dipole(height: number, length = leg): Structure {
  return {
    wires: [wire([0, -length, height], [0, 0, height]), wire([0, 0, height], [0, length, height])],
    feeds: [{ name: "feed", at: [0, 0, height], from: [0], into: [1] }],
    loads: [],
  };
}

/** A mast over level radials, each a little longer than the one before: no mirror symmetry to use. */
export function mast(radials: number, length = 9): Structure {
  const foot: Point = [0, 0, 3];
  const ends = Array.from({ length: radials }, (_, i): Point => {
    const azimuth = (2 * Math.PI * i) / radials;
    const reach = length + 0.013 * i;
    return [reach * Math.cos(azimuth), reach * Math.sin(azimuth), 3];
  });
  return {
    wires: [wire(foot, [0, 0, 13]), ...ends.map((end) => wire(foot, end))],
    feeds: [{ name: "feed", at: foot, from: ends.map((_, i) => i + 1), into: [0] }],
    loads: [],
  };
}

/** A level grid of `columns` by `rows` cells of a metre, fed in its first bar: several thousand pairs of wires that meet. */
export function wireGrid(columns: number, rows: number, height = 5): Structure {
  const at = (x: number, y: number): Point => [x, y, height];
  const wires: Wire[] = [];
  for (let y = 0; y <= rows; y++) for (let x = 0; x < columns; x++) wires.push(wire(at(x, y), at(x + 1, y)));
  for (let x = 0; x <= columns; x++) for (let y = 0; y < rows; y++) wires.push(wire(at(x, y), at(x, y + 1)));
  const from = wires.findIndex((one) => one.from[0] === 0 && one.from[1] === 0 && one.to[0] === 1);
  return { wires, feeds: [{ name: "feed", at: at(0, 0), from: [from], into: [columns * (rows + 1)] }], loads: [] };
}

/** The refinement, in steps of a tenth, whose mesh comes closest to so many unknowns. */
export function refinementFor(structure: Structure, unknowns: number): number {
  const steps = Array.from({ length: 31 }, (_, i) => 0.5 + i / 10);
  const off = steps.map((refinement) =>
    Math.abs(
      solveAntenna(structure, { kind: "free space" }, frequency, undefined, { refinement, meshFrequency: meshFor })
        .unknowns - unknowns,
    ),
  );
  return steps[off.indexOf(Math.min(...off))]!;
}

/** Impedance (in the solution) and greatest gain with one twin of the kernels. */
export function solvePoint(structure: Structure, kernels: Kernels, refinement: number) {
  chooseKernels(kernels);
  return solvePointAt(structure, frequency, refinement);
}

/** The same with the kernels chosen, at a frequency in Hz, on the mesh that all antennas here have. */
export function solvePointAt(structure: Structure, at: number, refinement: number) {
  const solution = solveAntenna(structure, soil, at, undefined, { refinement, meshFrequency: meshFor });
  const { gain } = strongestDirection(driveAntenna(solution, [{ re: 1, im: 0 }]));
  return { solution, gain };
}
