import { describe, expect, it } from "vitest";
import { chosenKernels } from "../kernels/chosen";
import { vacuumPermittivity } from "../numerics/vacuum";
import { dipole, upright } from "../wires/antennas.fixture";
import { driveAntenna } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Soil } from "../wires/structure";
import { soilHeat } from "./soilHeat";

describe("heat in the soil", () => {
  // Electrostatics: the image of a small dipole p = I l/w at height h has strength b = (eps - 1)/(eps + 1). Its field at the
  // dipole along p is b p/(4 pi eps0 (2h)^3) for a level p and twice that for an upright one; the soil takes w p E Im(-b).
  // At 300 kHz h is 1e-3 wavelengths; the dipole's own length adds about (l/2h)^2 = 0.2 %.
  it.each([
    { conductivity: 1e-5, up: false },
    { conductivity: 1e-5, up: true },
    { conductivity: 1e-4, up: false },
    { conductivity: 1e-4, up: true },
  ])("of a small dipole close to it is electrostatic: $conductivity S/m, upright $up", ({ conductivity, up }) => {
    const [frequency, h, permittivity] = [3e5, 1.2, 5];
    const w = 2 * Math.PI * frequency;
    const soil: Soil & { kind: "homogeneous" } = {
      kind: "homogeneous",
      relativePermittivity: permittivity,
      conductivity,
    };
    const structure = (up ? upright : dipole)(0.1, 1e-4, h);
    const driven = driveAntenna(solveAntenna(structure, soil, frequency), [{ re: 1, im: 0 }]);
    const { re, im } = driven.moments;
    const sum = (values: Float64Array) => values.reduce((a, b) => a + b, 0);
    const p = Math.hypot(sum(re), sum(im)) / w;
    const loss = conductivity / (w * vacuumPermittivity);
    const image = (2 * loss) / ((permittivity + 1) ** 2 + loss ** 2);
    const expected = ((up ? 2 : 1) * w * p * p * image) / (4 * Math.PI * vacuumPermittivity * (2 * h) ** 3);
    expect(Math.abs(soilHeat(driven, soil, chosenKernels()) / expected - 1)).toBeLessThan(0.005);
  });
});
