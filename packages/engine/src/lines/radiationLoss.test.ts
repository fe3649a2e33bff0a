import { describe, expect, it } from "vitest";
import { speedOfLight, vacuumImpedance } from "../numerics/vacuum";
import { exactly } from "../quantity/quantity";
import type { ParallelWireLine } from "./lineModel";
import { radiationLoss } from "./radiationLoss";

const line: ParallelWireLine = {
  kind: "parallel-wire",
  wire: {
    form: "solid",
    layers: [{ metal: { name: "copper", conductivity: 58e6, permeability: 1 }, outerRadius: 1e-3 }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  },
  spacing: exactly(0.15),
  dielectric: { name: "air", permittivity: 1, lossTangent: 0 },
};

/** Power for 1 A from the far field of elements along both wires and across both ends, summed without any approximation. */
function summed(k: number, spacing: number, length: number): number {
  const pieces = 200;
  const steps = 48;
  let power = 0;
  for (let i = 0; i < steps; i++) {
    const u = -1 + (2 * (i + 0.5)) / steps;
    const sine = Math.sqrt(1 - u * u);
    for (let a = 0; a < 12; a++) {
      const azimuth = (2 * Math.PI * (a + 0.5)) / 12;
      const side = (k * spacing * sine * Math.cos(azimuth)) / 2;
      // Along z: +1 at x = s/2 and -1 at -s/2, together 2 j sin(side).
      let [zr, zi] = [0, 0];
      for (let p = 0; p < pieces; p++) {
        const z = (length * (p + 0.5)) / pieces;
        const phase = k * z * (u - 1);
        zr += (-2 * Math.sin(side) * Math.sin(phase) * length) / pieces;
        zi += (2 * Math.sin(side) * Math.cos(phase) * length) / pieces;
      }
      // Across the ends: up at z = 0, down at the far end.
      const far = k * length * (u - 1);
      const width = side === 0 ? spacing : (spacing * Math.sin(side)) / side;
      const [xr, xi] = [width * (1 - Math.cos(far)), -width * Math.sin(far)];
      const theta = (re: number, across: number) => across * u * Math.cos(azimuth) - re * sine;
      const phi = Math.hypot(xr, xi) * Math.sin(azimuth);
      power += theta(zr, xr) ** 2 + theta(zi, xi) ** 2 + phi ** 2;
    }
  }
  const solidAngle = (4 * Math.PI) / (steps * 12);
  return ((vacuumImpedance * k * k) / (16 * Math.PI ** 2)) * power * solidAngle;
}

describe("radiationLoss", () => {
  it.each([0.7, 6, 13.3])("meets the summed far field of a pair %d m long", (length) => {
    const frequency = 14e6;
    const found = radiationLoss(line, frequency, length).resistance;
    expect(found / summed((2 * Math.PI * frequency) / speedOfLight, 0.15, length)).toBeCloseTo(1, 2);
  });

  it("is about 60 (k s)^2 for any long line, a tiny share of its power", () => {
    const k = (2 * Math.PI * 28e6) / speedOfLight;
    const { resistance, share } = radiationLoss(line, 28e6, 300);
    expect(Math.abs(resistance / (60 * (k * 0.15) ** 2) - 1)).toBeLessThan(0.005);
    expect(share).toBeLessThan(1e-3);
    expect(share).toBeGreaterThan(5e-4);
  });

  it("vanishes for a short line without losing its digits", () => {
    const at = (length: number) => radiationLoss(line, 1e6, length).resistance;
    expect(at(0.02) / at(0.01)).toBeCloseTo(4, 6);
    expect(at(0.2388) / at(0.2384)).toBeCloseTo((0.2388 / 0.2384) ** 2, 4);
    expect(() => at(0)).toThrow(/more than 0/);
  });
});
