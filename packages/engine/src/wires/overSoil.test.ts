import { describe, expect, it } from "vitest";
import { chosenKernels } from "../kernels/chosen";
import { magnitude, subtract } from "../numerics/complex";
import { dipole, groundPlane, impedance, testFrequency, testWavelength, upright } from "./antennas.fixture";
import { solveAntenna } from "./solveAntenna";
import type { Soil } from "./structure";

const soils = {
  average: { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 },
  poor: { kind: "homogeneous", relativePermittivity: 5, conductivity: 0.001 },
  good: { kind: "homogeneous", relativePermittivity: 20, conductivity: 0.0303 },
} as const;

describe("antennas over soil", () => {
  const heights = [0.03, 0.05, 0.1, 0.25, 0.5, 1];
  it.each(Object.entries(soils))("level dipoles are within 0.3 ohm of their converged value: %s", (_, soil) => {
    for (const h of heights) {
      const antenna = dipole(testWavelength / 2, 1e-3, h * testWavelength);
      const given = impedance(solveAntenna(antenna, soil, testFrequency));
      const refined = solveAntenna(antenna, soil, testFrequency, chosenKernels(), { refinement: 4 });
      expect(refined.errorEstimate).toBeLessThan(0.05);
      expect(magnitude(subtract(given, impedance(refined))), `${h} wavelengths`).toBeLessThan(0.3);
    }
  });

  // Change of impedance against free space of half-wave dipoles with sinusoidal current, by the exact Sommerfeld
  // integral in another form (own script; integrals good to 1e-8). Tolerance for a true current on a thin wire: 5 % of
  // R and 4 ohm of X. Free space: 73.0790 + j42.5151.
  const records = [
    { soil: soils.average, f: 14.2e6, h: 0.1, up: false, r: 55.01315, x: 54.12246 },
    { soil: soils.average, f: 14.2e6, h: 0.25, up: false, r: 82.10746, x: 57.64227 },
    { soil: soils.average, f: 14.2e6, h: 0.5, up: false, r: 69.43317, x: 32.63757 },
    { soil: soils.average, f: 3.6e6, h: 0.05, up: false, r: 47.91581, x: 56.01311 },
    { soil: soils.average, f: 3.6e6, h: 0.1, up: false, r: 48.33207, x: 62.37077 },
    { soil: soils.poor, f: 14.2e6, h: 0.25, up: false, r: 78.81444, x: 51.66104 },
    { soil: soils.average, f: 14.2e6, h: 0.3, up: true, r: 82.88717, x: 37.20418 },
    { soil: soils.average, f: 14.2e6, h: 0.5, up: true, r: 70.32903, x: 42.69159 },
  ];
  it.each(records)("change impedance as the exact integral says: $f Hz, $h wavelengths, upright $up", (record) => {
    const wl = 299792458 / record.f;
    const antenna = (record.up ? upright : dipole)(wl / 2, 1e-6 * wl, record.h * wl);
    const over = impedance(solveAntenna(antenna, record.soil, record.f));
    const free = impedance(solveAntenna(antenna, { kind: "free space" }, record.f));
    expect(Math.abs(over.re - free.re - (record.r - 73.079))).toBeLessThan(0.05 * record.r);
    expect(Math.abs(over.im - free.im - (record.x - 42.5151))).toBeLessThan(4);
  });

  // Hertzian dipoles: power over that in free space, exact integral to 1e-6 (same script). Tolerance: the dipole here is
  // 0.004 wavelengths long, (length/height)^2 = 0.6 % at the lowest height.
  it.each([
    { soil: soils.average, f: 14.2e6, h: 0.05, vertical: 3.7558506, level: 1.5655256 },
    { soil: soils.average, f: 14.2e6, h: 0.25, vertical: 1.1884872, level: 1.1259199 },
    {
      soil: { kind: "homogeneous", relativePermittivity: 80, conductivity: 5 } as Soil,
      f: 3.6e6,
      h: 0.1,
      vertical: 1.8680614,
      level: 0.3076521,
    },
  ])("short dipoles take the power the exact integral says: $h wavelengths", ({ soil, f, h, vertical, level }) => {
    const wl = 299792458 / f;
    for (const [build, ratio] of [
      [upright, vertical],
      [dipole, level],
    ] as const) {
      const antenna = build(0.004 * wl, 1e-5 * wl, h * wl);
      const once = { refinement: 1 };
      const over = solveAntenna(antenna, soil, f, chosenKernels(), once);
      const free = solveAntenna(antenna, { kind: "free space" }, f, chosenKernels(), once);
      expect(Math.abs(impedance(over).re / impedance(free).re / ratio - 1)).toBeLessThan((0.004 / h) ** 2 + 1e-4);
    }
  });

  it("a vertical over radials converges too", () => {
    const given = impedance(solveAntenna(groundPlane(3), soils.average, testFrequency));
    const refined = solveAntenna(groundPlane(3), soils.average, testFrequency, chosenKernels(), { refinement: 2.5 });
    expect(magnitude(subtract(given, impedance(refined)))).toBeLessThan(0.3);
  });
});
