import { describe, expect, it } from "vitest";
import { speedOfLight } from "../numerics/vacuum";
import { dipole } from "../wires/antennas.fixture";
import { driveAntenna } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Soil } from "../wires/structure";
import { gain } from "./gain";
import { strongestDirection } from "./strongestDirection";

const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 5e-3 };
const driven = (frequency: number, length: number, height: number) =>
  driveAntenna(solveAntenna(dipole(length, 1e-3, height), soil, frequency), [{ re: 1, im: 0 }]);
const decibels = (ratio: number): number => 10 * Math.log10(ratio);

describe("the strongest direction", () => {
  // Lobes of a level dipole lie near sin(elevation) = (2n - 1)/(4 h), h in wavelengths (image theory): the lowest is the
  // strongest over soil, and at these heights narrower than the 5 degrees of a coarse grid. Compared with a dense scan.
  it.each([
    { megahertz: 145, height: 12 },
    { megahertz: 145, height: 9 },
    { megahertz: 145, height: 20 },
    { megahertz: 433, height: 10 },
    { megahertz: 28.5, height: 15 },
  ])("is that of the narrow lowest lobe: $megahertz MHz, $height m", ({ megahertz, height }) => {
    const wavelength = speedOfLight / (megahertz * 1e6);
    const antenna = driven(megahertz * 1e6, 0.47 * wavelength, height);
    const best = strongestDirection(antenna);
    expect(Math.abs(best.elevation / Math.asin(wavelength / (4 * height)) - 1)).toBeLessThan(0.1);
    expect(Math.abs(Math.sin(best.azimuth))).toBeGreaterThan(0.999);
    const scan = Array.from({ length: 1800 }, (_, i) => gain(antenna, ((i + 1) * Math.PI) / 3600, Math.PI / 2));
    expect(decibels(Math.max(...scan) / best.gain)).toBeLessThan(0.05);
  });

  it("finds the cone of a long wire in azimuth", () => {
    // Five wavelengths of wire: its main lobe leans towards the wire (array theory); dense scan at the elevation found.
    const wavelength = 10;
    const antenna = driven(speedOfLight / wavelength, 5 * wavelength, 10);
    const best = strongestDirection(antenna);
    let top = 0;
    for (let e = 1; e <= 90; e++)
      for (let a = 0; a <= 180; a++) top = Math.max(top, gain(antenna, (e * Math.PI) / 180, (a * Math.PI) / 180));
    expect(decibels(top / best.gain)).toBeLessThan(0.05);
  });
});
