/** Convergence of the antenna solution with the mesh: its order, and what is left of it at the mesh the engine chooses. */
import { type Soil, solveAntenna } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { distance, meshImpedance, portImpedance } from "./antennas/portImpedance";
import { type Dipole, dipoles, level, speedOfLight, upright } from "./antennas/thinWires";

const frequency = 7.1e6;
const wavelength = speedOfLight / frequency;
const soil = (relativePermittivity: number, conductivity: number): Soil => ({
  kind: "homogeneous",
  relativePermittivity,
  conductivity,
});
/** Classes of antenna handbooks: common practice, no source. */
const soils = { average: soil(13, 0.005), poor: soil(5, 0.001), good: soil(20, 0.0303) };

const halfWave = (height: number, along: Dipole["along"] = level) =>
  dipoles({ length: 0.48 * wavelength, radius: 1e-3, middle: [0, 0, height * wavelength], along });

describe("the impedance on one mesh", () => {
  it.each([
    ["level, free space", halfWave(0), { kind: "free space" } as const],
    ["level over average soil", halfWave(0.2), soils.average],
    ["upright over poor soil", halfWave(0.3, upright), soils.poor],
  ])("converges with the square of the element: %s", (_, structure, ground) => {
    const at = (refinement: number) =>
      meshImpedance(solveAntenna(structure, ground, frequency, undefined, { refinement }));
    const [coarse, middle, fine] = [at(1.5), at(3), at(6)];
    const order = Math.log2(distance(coarse, middle) / distance(middle, fine));
    expect(order).toBeGreaterThan(1.6);
    expect(order).toBeLessThan(2.6);
  });
});

describe("a level dipole on the mesh the engine chooses", () => {
  const heights = [0.03, 0.05, 0.07, 0.1, 0.15, 0.2, 0.25, 0.35, 0.5, 0.75, 1];
  const cases = Object.entries(soils).flatMap(([name, ground]) => heights.map((h) => [name, h, ground] as const));
  it.each(cases)("over %s soil, %f wavelengths high, is within 0.3 ohm of the converged value", (_, height, ground) => {
    const structure = halfWave(height);
    const chosen = portImpedance(solveAntenna(structure, ground, frequency));
    const at = (refinement: number) =>
      portImpedance(solveAntenna(structure, ground, frequency, undefined, { refinement }));
    const [fine, finest] = [at(3), at(5)];
    // The finest mesh counts as converged where it no longer moves against the next one.
    expect(distance(fine, finest)).toBeLessThan(0.05);
    expect(distance(chosen, finest)).toBeLessThan(0.3);
  });
});
