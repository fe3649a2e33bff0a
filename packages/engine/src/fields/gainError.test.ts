import { describe, expect, it } from "vitest";
import { one, zero } from "../numerics/complex";
import { dipole, testFrequency, wire } from "../wires/antennas.fixture";
import { coarseTwin } from "../wires/coarseTwin";
import { driveAntenna } from "../wires/driveAntenna";
import { portAdmittance } from "../wires/portMatrices";
import { solveAntenna } from "../wires/solveAntenna";
import type { Soil, Structure } from "../wires/structure";
import { gainInDecibels } from "./gain";
import { gainError } from "./gainError";
import { strongestDirection } from "./strongestDirection";

const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 5e-3 };

/** Two masts a quarter wave apart on a perfect plane, the second shorted: its current rules the gain. */
const masts: Structure = {
  wires: [wire([0, 0, 0], [0, 0, 10], 20e-3), wire([10, 0, 0], [10, 0, 10], 2e-3)],
  feeds: [
    { name: "one", at: [0, 0, 0], from: [], into: [0] },
    { name: "two", at: [10, 0, 0], from: [], into: [1] },
  ],
  loads: [],
};

const cases: [string, Structure, Soil][] = [
  ["a level dipole over soil", dipole(20, 1e-3, 5), soil],
  ["a mast beside a shorted one", masts, { kind: "perfect" }],
];

describe("the error of a gain", () => {
  it.each(cases)(
    "%s: what is reported is at least the distance to a mesh of three times as many elements",
    (_, structure, ground) => {
      const drive = (refinement: number) => {
        const solution = solveAntenna(structure, ground, testFrequency, undefined, { refinement });
        const volts = solution.ports.map((_, i) => (i === 0 ? one : zero));
        return { fine: driveAntenna(solution, volts), coarse: driveAntenna(coarseTwin(solution), volts) };
      };
      const { fine, coarse } = drive(1);
      const { elevation, azimuth, gain } = strongestDirection(fine);
      const reported = gainError(fine, coarse, elevation, azimuth, gain);
      const found = gainInDecibels(fine, elevation, azimuth) - gainInDecibels(drive(3).fine, elevation, azimuth);
      // The error falls as the square of the element to first order only: a third of the difference is near, not exact.
      expect(Math.abs(found)).toBeLessThan(reported.decibels);
      expect(reported.decibels).toBeLessThan(4 * Math.abs(found));
      expect(reported.shareOfLargest).toBeCloseTo(10 ** (reported.decibels / 10) - 1, 9);
    },
  );

  it("counts against the largest gain where there is a null", () => {
    const solution = solveAntenna(dipole(20, 1e-3, 5), soil, testFrequency, undefined, { refinement: 1 });
    const [fine, coarse] = [driveAntenna(solution, [one]), driveAntenna(coarseTwin(solution), [one])];
    const alongTheWire = gainError(fine, coarse, 0, 0, strongestDirection(fine).gain);
    expect(alongTheWire.shareOfLargest).toBeLessThan(1e-3);
  });
});

describe("the coarse twin", () => {
  it("carries the currents of the doubled mesh: straight between its nodes, and its admittance at the ports", () => {
    const solution = solveAntenna(dipole(20, 1e-3, 5), { kind: "free space" }, testFrequency, undefined, {
      refinement: 1,
    });
    const { model, fineAdmittance } = coarseTwin(solution);
    expect(fineAdmittance).toEqual(portAdmittance(model.currents, model.mesh.ports));
    const kept = new Set(model.mesh.coarse);
    const inside = Array.from({ length: 6 }, (_, i) => 2 * i + 10);
    for (const n of inside) {
      expect([kept.has(n), kept.has(n + 1), kept.has(n - 1)]).toEqual([false, true, true]);
      expect(model.currents.re[n]).toBeCloseTo((model.currents.re[n - 1]! + model.currents.re[n + 1]!) / 2, 12);
    }
    // Extrapolation takes a third of the step from the coarse twin to the fine mesh further on.
    const [fine, coarse, best] = [solution.fineAdmittance, fineAdmittance, solution.admittance].map((y) => {
      const { re, im } = y[0]![0]!;
      return re / (re * re + im * im);
    }) as [number, number, number];
    expect(best).toBeCloseTo(fine + (fine - coarse) / 3, 9);
  });
});
