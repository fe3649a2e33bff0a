/** Antennas against textbook closed forms that rest on other principles than the moment method. */
import { describe, expect, it } from "vitest";
import { chosenKernels } from "../kernels/chosen";
import { divide, magnitude, subtract } from "../numerics/complex";
import { vacuumImpedance } from "../numerics/vacuum";
import { dipole, impedance, testFrequency, wire, testWavelength as wl } from "./antennas.fixture";
import { solveAntenna } from "./solveAntenna";
import type { Point, Structure, Wire } from "./structure";

const solve = (structure: Structure) =>
  impedance(solveAntenna(structure, { kind: "free space" }, testFrequency, chosenKernels()));

/** A closed ring of wires through the points, fed at the first. */
function ring(points: readonly Point[], radius: number): Structure {
  const closed = [...points, points[0]!];
  const wires = points.map((from, i) => wire(from, closed[i + 1]!, radius));
  return { wires, feeds: [{ name: "feed", at: points[0]!, from: [points.length - 1], into: [0] }], loads: [] };
}

/** Square loop fed in the middle of a side. */
const square = (side: number, radius: number): Structure => {
  const h = side / 2;
  return ring(
    [
      [0, 0, -h],
      [0, h, -h],
      [0, h, h],
      [0, -h, h],
      [0, -h, -h],
    ],
    radius,
  );
};

describe("closed forms", () => {
  it("a short dipole tends to 20 pi^2 (l/wl)^2 ohm as its wire gets thin", () => {
    // Triangular current, elementary (Balanis, Antenna Theory, 3rd ed. 2005, eq. 4-37, from memory). The current of a
    // real wire droops below the triangle; that vanishes like 1/ln(l/a), so the share missing falls with it.
    const missing = [1e-3, 1e-6, 1e-12].map(
      (radius) => 1 - solve(dipole(0.02 * wl, radius, 0)).re / (20 * Math.PI ** 2 * 0.02 ** 2),
    );
    const logarithms = [1e-3, 1e-6, 1e-12].map((radius) => Math.log((0.02 * wl) / radius));
    expect(missing[0]!).toBeLessThan(0.12);
    expect(missing[1]!).toBeLessThan(missing[0]!);
    expect(missing[2]!).toBeLessThan(missing[1]!);
    expect(Math.abs((missing[2]! * logarithms[2]!) / (missing[1]! * logarithms[1]!) - 1)).toBeLessThan(0.2);
  });

  it("a small loop has 320 pi^4 (A/wl^2)^2 ohm and the inductance of a square", () => {
    // Uniform current, elementary (Balanis 2005, eq. 5-24, from memory). Square of round wire, skin effect complete:
    // L = (2 mu0 s/pi) (ln(s/a) - 0.77401) (Grover, Inductance Calculations 1946, from memory). Both in the limit of
    // small size: deviations of the order of (k side)^2 remain.
    const side = (0.03 * wl) / 4;
    const z = solve(square(side, 1e-3));
    expect(Math.abs(z.re / (320 * Math.PI ** 4 * (side / wl) ** 4) - 1)).toBeLessThan(0.02);
    const inductive = ((4 * vacuumImpedance * side) / wl) * (Math.log(side / 1e-3) - 0.77401);
    expect(Math.abs(z.im / inductive - 1)).toBeLessThan(0.01);
  });

  it("a folded dipole is four times the dipole beside two shorted lines", () => {
    // Even and odd mode apart: 4 Zd with the pair as one conductor of radius sqrt(a D), parallel to both stubs in
    // series (Balanis 2005, sec. 9.5, from memory). The end pieces are not in that picture: 5 cm of 20 m.
    const [spacing, radius] = [0.05, 1e-3];
    for (const share of [0.46, 0.47, 0.48]) {
      const half = (share * wl) / 2;
      const folded = solve(
        ring(
          [
            [0, 0, 0],
            [0, half, 0],
            [0, half, spacing],
            [0, -half, spacing],
            [0, -half, 0],
          ],
          radius,
        ),
      );
      const d = solve(dipole(share * wl, Math.sqrt(radius * spacing), 0));
      const z0 = (vacuumImpedance / Math.PI) * Math.acosh(spacing / (2 * radius));
      const stubs = { re: 0, im: 2 * z0 * Math.tan(Math.PI * share) };
      const four = { re: 4 * d.re, im: 4 * d.im };
      const product = { re: -four.im * stubs.im, im: four.re * stubs.im };
      const expected = divide(product, { re: four.re, im: four.im + stubs.im });
      expect(magnitude(subtract(folded, expected)) / magnitude(expected)).toBeLessThan(0.03);
    }
  });

  it("an insulated pair is a line of more capacitance", () => {
    // Quasi-static: C = pi eps0/(arcosh(D/2a) - (1 - 1/eps) ln(b/a)), L as bare (two coaxial sleeves in series with
    // the air between). The bare pair, shorted at its far end, tells the length its ends add.
    const [spacing, radius, outerRadius, permittivity, length] = [0.1, 1e-3, 2.5e-3, 3, 8];
    const sleeve = (w: Wire): Wire => ({ ...w, insulation: { outerRadius, permittivity } });
    const bare = ring(
      [
        [0, 0, 0],
        [0, spacing / 2, 0],
        [length, spacing / 2, 0],
        [length, -spacing / 2, 0],
        [0, -spacing / 2, 0],
      ],
      radius,
    );
    const air = Math.acosh(spacing / (2 * radius));
    const coated = air - (1 - 1 / permittivity) * Math.log(outerRadius / radius);
    const k = (2 * Math.PI) / wl;
    const end = Math.atan(solve(bare).im / ((vacuumImpedance / Math.PI) * air)) / k;
    const found = solve({ ...bare, wires: bare.wires.map(sleeve) }).im;
    const phase = Math.atan(found / ((vacuumImpedance / Math.PI) * Math.sqrt(air * coated)));
    expect(end).toBeGreaterThan(length);
    expect(Math.abs(phase / (k * end * Math.sqrt(air / coated)) - 1)).toBeLessThan(0.005);
  });
});
