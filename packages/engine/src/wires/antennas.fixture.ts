/** Structures the tests share. Metres; lossless bare wires unless said otherwise. */
import { type Complex, divide, one } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import type { AntennaSolution } from "./antennaSolution";
import type { Point, Structure, Wire } from "./structure";

export const testFrequency = 7.1e6;
export const testWavelength = speedOfLight / testFrequency;

export const wire = (from: Point, to: Point, radius = 1e-3, conductivity = Number.POSITIVE_INFINITY): Wire => ({
  name: `${from} to ${to}`,
  from,
  to,
  radius,
  conductivity,
  permeability: 1,
  insulation: null,
});

/** Two arms from a feed in the middle at height h, along y; all in metres. */
export function dipole(length: number, radius: number, h: number, conductivity = Number.POSITIVE_INFINITY): Structure {
  const middle: Point = [0, 0, h];
  return {
    wires: [
      wire([0, -length / 2, h], middle, radius, conductivity),
      wire(middle, [0, length / 2, h], radius, conductivity),
    ],
    feeds: [{ name: "feed", at: middle, from: [0], into: [1] }],
    loads: [],
  };
}

export function upright(length: number, radius: number, h: number): Structure {
  const middle: Point = [0, 0, h];
  return {
    wires: [wire([0, 0, h - length / 2], middle, radius), wire(middle, [0, 0, h + length / 2], radius)],
    feeds: [{ name: "feed", at: middle, from: [0], into: [1] }],
    loads: [],
  };
}

/** Quarter-wave vertical over four level radials at height h. */
export function groundPlane(h: number): Structure {
  const base: Point = [0, 0, h];
  const l = testWavelength / 4;
  const radials: Point[] = [
    [l, 0, h],
    [-l, 0, h],
    [0, l, h],
    [0, -l, h],
  ];
  return {
    wires: [wire(base, [0, 0, h + l], 5e-3), ...radials.map((end) => wire(base, end))],
    feeds: [{ name: "base", at: base, from: [1, 2, 3, 4], into: [0] }],
    loads: [],
  };
}

export const impedance = (solution: AntennaSolution): Complex => divide(one, solution.admittance[0]![0]!);
export const fineImpedance = (solution: AntennaSolution): Complex => divide(one, solution.fineAdmittance[0]![0]!);
