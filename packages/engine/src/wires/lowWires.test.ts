import { describe, expect, it } from "vitest";
import { powerAccount } from "../fields/powerAccount";
import { soilLength } from "../ground/soilLength";
import { chosenKernels } from "../kernels/chosen";
import { type Complex, divide, magnitude, one, subtract } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import { dipole, impedance, wire } from "./antennas.fixture";
import { assembleMatrix } from "./assembleMatrix";
import { driveAntenna } from "./driveAntenna";
import { withElectrodes } from "./electrodes";
import { meshRule } from "./grading";
import { localImpedances } from "./localTerms";
import { portAdmittance, portVectors } from "./portMatrices";
import { preparedMesh } from "./preparedMesh";
import { buildSamplePoints } from "./samplePoints";
import { solveAntenna } from "./solveAntenna";
import type { Point, Structure } from "./structure";

const frequency = 7e6;
const soils = {
  average: { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 },
  poor: { kind: "homogeneous", relativePermittivity: 3, conductivity: 1e-4 },
  wet: { kind: "homogeneous", relativePermittivity: 30, conductivity: 0.03 },
} as const;
type RealSoil = (typeof soils)[keyof typeof soils];

/** Vertical of 10 m over radials of 8 m of 2 mm wire at height h. */
function vertical(radials: number, h: number, radius = 5e-3): Structure {
  const base: Point = [0, 0, h];
  const ends = Array.from({ length: radials }, (_, i): Point => {
    const azimuth = (2 * Math.PI * (i + 0.3)) / radials;
    return [8 * Math.sin(azimuth), 8 * Math.cos(azimuth), h];
  });
  return {
    wires: [wire(base, [0, 0, h + 10], radius), ...ends.map((end) => wire(base, end))],
    feeds: [{ name: "base", at: base, from: ends.map((_, i) => i + 1), into: [0] }],
    loads: [],
  };
}

/** Impedance on the default mesh with sample points for a soil of another length; of none to speak of: no wire is low. */
function withSoilLength(structure: Structure, soil: RealSoil, length: number): Complex {
  const made = withElectrodes(structure, soil);
  const prepared = preparedMesh(made, soil, meshRule(frequency, 1), chosenKernels());
  const { mesh } = prepared;
  const points = buildSamplePoints(structure, prepared, speedOfLight / frequency, length);
  const angularFrequency = 2 * Math.PI * frequency;
  const local = localImpedances(structure, mesh, angularFrequency);
  const { matrix } = assembleMatrix({ structure, prepared, points, local, soil, angularFrequency }, chosenKernels());
  const solved = chosenKernels().solveSymmetric(matrix, portVectors(mesh.unknowns, mesh.ports));
  return divide(one, portAdmittance(solved.vectors, mesh.ports)[0]![0]!);
}

const onMesh = (structure: Structure, soil: RealSoil, refinement: number) =>
  solveAntenna(structure, soil, frequency, chosenKernels(), { refinement });

describe("wires low over soil", () => {
  // Both routes rest on kernels and pair integrals good to 1e-6 of the free-space kernel.
  it.each([
    { h: 0.5, finer: 1 },
    { h: 0.2, finer: 1 },
    { h: 0.05, finer: 4 },
  ])("are the same with their images apart as by tables alone: $h m", ({ h, finer }) => {
    for (const structure of [dipole(10, 1e-3, h), vertical(2, h, 1e-3)]) {
      const apart = withSoilLength(structure, soils.average, soilLength(soils.average, frequency) / finer);
      const whole = withSoilLength(structure, soils.average, 1e-9);
      expect(magnitude(subtract(apart, whole)) / magnitude(whole)).toBeLessThan(1e-6);
    }
  });

  it.each(Object.entries(soils))(
    "need no more sample points, by a tenth of the mesh's own error: %s soil",
    (_, soil) => {
      for (const structure of [dipole(10, 1e-3, 0.002), dipole(10, 1e-3, 0.02), vertical(4, 0.005)]) {
        const { errorEstimate } = onMesh(structure, soil, 1);
        const length = soilLength(soil, frequency);
        const given = withSoilLength(structure, soil, length);
        const finer = withSoilLength(structure, soil, length / 2);
        expect(magnitude(subtract(given, finer))).toBeLessThan(errorEstimate / 10);
      }
    },
  );

  it.each([4, 16])("%s radials on the soil converge with the mesh, all power accounted for", (radials) => {
    const given = onMesh(vertical(radials, 0.005), soils.average, 1);
    const finer = onMesh(vertical(radials, 0.005), soils.average, radials === 4 ? 2 : 1.4);
    expect(magnitude(subtract(impedance(given), impedance(finer)))).toBeLessThan(given.errorEstimate);
    expect(finer.errorEstimate).toBeLessThan(given.errorEstimate);
    expect(Math.abs(powerAccount(driveAntenna(given, [one])).residue)).toBeLessThan(1e-3);
  });

  it("32 radials on the soil are solved within half an ohm", () => {
    const solution = onMesh(vertical(32, 0.005), soils.average, 1);
    expect(solution.errorEstimate).toBeLessThan(0.5);
    expect(solution.goalMet).toBe(true);
  });

  // Fourth differences over the logarithm of height, a sixth of them the distance from the neighbours' cubic: a step would
  // stand out of it.
  it("go down to 2 mm without a step", () => {
    const heights = (count: number) => Array.from({ length: count }, (_, i) => 0.002 * 2 ** (0.4 * i));
    for (const [build, count] of [
      [(h: number) => dipole(10, 1e-3, h), 9],
      [(h: number) => vertical(4, h), 5],
    ] as const) {
      const solved = heights(count).map((h) => onMesh(build(h), soils.average, 1));
      for (let i = 2; i < count - 2; i++) {
        for (const part of ["re", "im"] as const) {
          const [a, b, c, d, e] = solved.slice(i - 2, i + 3).map((s) => impedance(s)[part]);
          const apart = (a! + e! - 4 * (b! + d!) + 6 * c!) / 6;
          expect(Math.abs(apart)).toBeLessThan(solved[i]!.errorEstimate / 3);
        }
      }
    }
  });

  it.each(Object.entries(soils))("account for their power: %s soil", (_, soil) => {
    const insulated = (structure: Structure): Structure => ({
      ...structure,
      wires: structure.wires.map((w) => ({ ...w, insulation: { outerRadius: 2e-3, permittivity: 2.3 } })),
    });
    for (const structure of [dipole(10, 1e-3, 0.0015), dipole(10, 1e-3, 0.05), insulated(dipole(10, 1e-3, 0.002))]) {
      expect(Math.abs(powerAccount(driveAntenna(onMesh(structure, soil, 1), [one])).residue)).toBeLessThan(1e-5);
    }
  });
});
