/** Limits that are known exactly, or from texts. */
import { type Complex, type Soil, solveAntenna } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { distance, portImpedance } from "./antennas/portImpedance";
import { resonantLength, solveDipole } from "./antennas/solvedDipole";
import { type Dipole, dipoles, level, speedOfLight, upright } from "./antennas/thinWires";

const frequency = 14.2e6;
const wavelength = speedOfLight / frequency;
const freeSpace: Soil = { kind: "free space" };
const perfect: Soil = { kind: "perfect" };

const dipole = (height: number, along: Dipole["along"]): Dipole => ({
  length: 0.48 * wavelength,
  radius: 1e-3,
  middle: [0, 0, height * wavelength],
  along,
});

const cases = [
  ["level", 0.05, level],
  ["level", 0.25, level],
  ["level", 0.9, level],
  ["upright", 0.26, upright],
  ["upright", 0.6, upright],
] as const;

const over = (ground: Soil, height: number, along: Dipole["along"]): Complex =>
  portImpedance(solveAntenna(dipoles(dipole(height, along)), ground, frequency));

describe.each(cases)("a dipole, %s, %f wavelengths high", (_, height, along) => {
  it("over a perfect plane is the dipole with its mirrored twin, to 1e-6", () => {
    const twins = dipoles(dipole(height, along), dipole(-height, along));
    const { admittance } = solveAntenna(twins, freeSpace, frequency, undefined, { refinement: 2 });
    // The image carries the opposite current when level, the same when upright.
    const sign = along === upright ? 1 : -1;
    const [own, other] = [admittance[0]![0]!, admittance[0]![1]!];
    const alone = solveAntenna(dipoles(dipole(height, along)), perfect, frequency, undefined, { refinement: 2 });
    const image = { re: own.re + sign * other.re, im: own.im + sign * other.im };
    const plane = alone.admittance[0]![0]!;
    expect(distance(image, plane) / Math.hypot(plane.re, plane.im)).toBeLessThan(1e-6);
  });

  it("over soil of 1e9 S/m is the dipole over a perfect plane", () => {
    // Reflection differs from that of the plane by 2 sqrt(w eps0/sigma) = 2e-6; kernels are good to 1e-6.
    const metal: Soil = { kind: "homogeneous", relativePermittivity: 1, conductivity: 1e9 };
    expect(distance(over(metal, height, along), over(perfect, height, along))).toBeLessThan(1e-3);
  });

  it("over soil of permittivity 1 without conductivity is the dipole in free space", () => {
    const nothing: Soil = { kind: "homogeneous", relativePermittivity: 1, conductivity: 0 };
    expect(distance(over(nothing, height, along), over(freeSpace, height, along))).toBeLessThan(1e-9);
  });
});

describe("a half-wave dipole in free space whose radius tends to zero", () => {
  const radii = [1e-3, 1e-4, 1e-5, 1e-6, 1e-9, 1e-12];
  const found = radii.map((radius) => portImpedance(solveDipole(0.5, radius)));
  /** 1/Omega = 1/(2 ln(length/radius)): the expansion parameter of thin-wire theory. */
  const parameters = radii.map((radius) => 1 / (2 * Math.log(0.5 / radius)));

  it("comes nearer to the induced-EMF limit at every step", () => {
    const gaps = found.map((z) => distance(z, { re: 73.079, im: 42.515 }));
    for (let i = 1; i < gaps.length; i++) expect(gaps[i]!).toBeLessThan(gaps[i - 1]!);
  });

  /** Value at 0 of the parabola through the three thinnest. */
  const limit = (of: (z: Complex) => number): number => {
    const [x, y] = [parameters.slice(-3), found.slice(-3).map(of)];
    return y.reduce((sum, yi, i) => sum + x.reduce((p, xj, j) => (j === i ? p : (p * xj) / (xj - x[i]!)), yi), 0);
  };

  it("tends to 73.08 + j42.5 ohm within the 0.5 ohm the engine allows each of its impedances", () => {
    expect(Math.abs(limit((z) => z.re) - 73.079)).toBeLessThan(0.5);
    expect(Math.abs(limit((z) => z.im) - 42.515)).toBeLessThan(0.5);
  });

  it("has a resonant length that grows towards half a wavelength", () => {
    const lengths = [50, 500, 5000, 50_000].map(resonantLength);
    for (let i = 1; i < lengths.length; i++) expect(lengths[i]!).toBeGreaterThan(lengths[i - 1]!);
    expect(lengths.at(-1)!).toBeLessThan(0.5);
  });
});
