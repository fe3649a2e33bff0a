import { describe, expect, it } from "vitest";
import { speedOfLight, vacuumImpedance } from "../numerics/vacuum";
import { dipole, impedance, wire } from "./antennas.fixture";
import { timesFiner } from "./refinement";
import { solveAntenna } from "./solveAntenna";
import type { Point, Soil, Structure } from "./structure";
import { validateStructure } from "./validateStructure";

const free: Soil = { kind: "free space" };

/** Two wires side by side, fed across one end; across the other a link, or nothing. */
function stub(length: number, spacing: number, radius: number, end: "open" | "shorted"): Structure {
  const corners: Point[] = [
    [0, 0, 0],
    [0, 0, spacing],
    [0, length, spacing],
    [0, length, 0],
  ];
  const [a, b, c, d] = corners as [Point, Point, Point, Point];
  const link = end === "shorted" ? [wire(c, d, radius)] : [];
  return {
    wires: [wire(a, b, radius), wire(b, c, radius), wire(a, d, radius), ...link],
    feeds: [{ name: "feed", at: a, from: [2], into: [0] }],
    loads: [],
  };
}

/** Two wires of equal length joined at their ends, one of them fed in its middle. */
function folded(length: number, spacing: number, radius: number): Structure {
  const l = length / 2;
  const points: Point[] = [
    [0, 0, 0],
    [0, l, 0],
    [0, l, spacing],
    [0, -l, spacing],
    [0, -l, 0],
    [0, 0, 0],
  ];
  const wires = points.slice(1).map((to, i) => wire(points[i]!, to, radius));
  return { wires, feeds: [{ name: "feed", at: [0, 0, 0], from: [0], into: [4] }], loads: [] };
}

describe("a pair of close wires as a line", () => {
  // Even currents see ln(D/a); with the crowding of the current, which is not modelled, it is arcosh(D/2a).
  it.each([6, 10, 30, 100])("%i radii apart has the impedance of even currents, off by what is told", (ratio) => {
    const radius = 2e-3;
    // The ends add a length of the order of the spacing: here half a per cent of the line at most.
    const length = 200 * ratio * radius;
    const frequency = speedOfLight / (8 * length);
    const x = (end: "open" | "shorted") =>
      impedance(solveAntenna(stub(length, ratio * radius, radius, end), free, frequency)).im;
    const found = Math.sqrt(-x("open") * x("shorted"));
    const even = (vacuumImpedance / Math.PI) * Math.log(ratio);
    const exact = (vacuumImpedance / Math.PI) * Math.acosh(ratio / 2);
    expect(found / even - 1).toBeCloseTo(0, 2);
    // 1.6 % at six radii, and falling with the square of the spacing.
    expect(Math.abs(found / exact - 1)).toBeLessThan(0.6 / ratio ** 2 + 5e-3);
  });

  it("are let in down to three diameters between centres, not closer", () => {
    const problems = (ratio: number) => {
      const fed = dipole(10, 1e-3, 0);
      const beside = wire([0, 0.5, ratio * 1e-3], [0, 4, ratio * 1e-3]);
      return validateStructure({ ...fed, wires: [...fed.wires, beside] }, free, 7e6);
    };
    expect(problems(6)).toEqual([]);
    expect(problems(5.9).join()).toContain("closer than");
  });
});

describe("folded dipoles", () => {
  // Antenna and line currents of a symmetric fold: 1/Z = 1/(4 Zd) + 1/(2 j Z0 tan(k l/2)), Zd a dipole of radius
  // sqrt(a D) (Uda and Mushiake 1954, from memory).
  it.each([
    { ratio: 6, length: 0.47 },
    { ratio: 24, length: 0.47 },
    { ratio: 24, length: 0.42 },
  ])("$ratio radii apart, $length wavelengths long, transform as antenna and line currents do", ({ ratio, length }) => {
    const frequency = 14.2e6;
    const wavelength = speedOfLight / frequency;
    const [l, spacing] = [length * wavelength, 12e-3];
    const radius = spacing / ratio;
    const z = impedance(solveAntenna(folded(l, spacing, radius), free, frequency));
    const single = impedance(solveAntenna(dipole(l, Math.sqrt(radius * spacing), 0), free, frequency));
    const line = 2 * (vacuumImpedance / Math.PI) * Math.log(ratio) * Math.tan((Math.PI * l) / wavelength);
    const square = 4 * (single.re ** 2 + single.im ** 2);
    const y = { re: single.re / square, im: -single.im / square - 1 / line };
    const expected = { re: y.re / (y.re ** 2 + y.im ** 2), im: -y.im / (y.re ** 2 + y.im ** 2) };
    expect(Math.hypot(z.re - expected.re, z.im - expected.im) / Math.hypot(expected.re, expected.im)).toBeLessThan(
      0.03,
    );
  });

  it("six radii apart give one answer on every mesh, and know their error", () => {
    const structure = folded(9.8, 12e-3, 2e-3);
    const at = (refinement: number) => solveAntenna(structure, free, 14.2e6, undefined, { refinement });
    const truth = impedance(at(3));
    for (const refinement of [1, 1.25, 2]) {
      const solution = at(refinement);
      const z = impedance(solution);
      expect(Math.hypot(z.re - truth.re, z.im - truth.im)).toBeLessThan(solution.errorEstimate);
      expect(solution.errorEstimate).toBeLessThan(0.7);
    }
  });
});

describe("a closed loop", () => {
  const side = 10.8;
  const radius = 1e-3;
  const half = side / 2;
  const points: Point[] = [
    [0, 0, 0],
    [0, half, 0],
    [0, half, side],
    [0, -half, side],
    [0, -half, 0],
    [0, 0, 0],
  ];
  const loop: Structure = {
    wires: points.slice(1).map((to, i) => wire(points[i]!, to, radius)),
    feeds: [{ name: "feed", at: [0, 0, 0], from: [0], into: [4] }],
    loads: [],
  };

  // Grover 1946 (from memory): a square of thin wire, no current inside the metal: (2 mu0 s/pi)(ln(s/a) - 0.774).
  it.each([1e4, 1e5])("is the inductance of a square at %i Hz", (frequency) => {
    const { im } = impedance(solveAntenna(loop, free, frequency));
    const inductance = 8e-7 * side * (Math.log(side / radius) - 0.774);
    expect(im / (2 * Math.PI * frequency * inductance)).toBeCloseTo(1, 2);
  });

  // A loop small for the wavelength: 20 k^4 A^2 ohm (Kraus, from memory); 320 pi^4 A^2/lambda^4.
  it("radiates as a small loop at 0.3 MHz", () => {
    const { re } = impedance(solveAntenna(loop, free, 3e5));
    const expected = 20 * ((2 * Math.PI * 3e5) / speedOfLight) ** 4 * side ** 4;
    expect(re / expected).toBeCloseTo(1, 1);
  });

  it.each([1e4, 1e6, 7e6, 15e6, 30e6])("knows its error at %i Hz", (frequency) => {
    const chosen = solveAntenna(loop, free, frequency);
    const finer = solveAntenna(loop, free, frequency, undefined, {
      refinement: timesFiner(chosen.method.refinement, 2),
    });
    const [a, b] = [impedance(chosen), impedance(finer)];
    // The estimate is of the mesh. Rounding adds its own: what charges and currents contribute to an element's number are as
    // 1 to (k times its length)^2, worst on the finer mesh, and round a closed loop the charges' part has to cancel.
    const element = (4 * side) / finer.unknowns;
    const rounding = Number.EPSILON / ((2 * Math.PI * frequency * element) / speedOfLight) ** 2;
    expect(Math.hypot(a.re - b.re, a.im - b.im)).toBeLessThan(
      Math.max(chosen.errorEstimate, rounding * Math.hypot(b.re, b.im)),
    );
    expect(chosen.goalMet).toBe(true);
  });
});
