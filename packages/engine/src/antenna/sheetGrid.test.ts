import { describe, expect, it } from "vitest";
import { strongestDirection } from "../fields/strongestDirection";
import { magnitude, one, reciprocal, subtract } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import { exactly } from "../quantity/quantity";
import { place, plainStation } from "../testing/plainStation";
import { driveAntenna } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Structure } from "../wires/structure";
import { sheetGrid } from "./sheetGrid";

const frequency = 50e6;
const wave = speedOfLight / frequency;

const bandOf = (top: number) => [
  { name: "", frequency: exactly(frequency), sweep: { from: frequency, to: top }, set: {} },
];

/** A half-wave dipole a quarter wave over a level sheet, gridded as a station with this highest frequency would. */
function overSheet(side: number, top: number): Structure {
  const h = (side * wave) / 2;
  const station = plainStation({ bands: bandOf(top), ground: { kind: "free space" } });
  const corners = [place(-h, -h, 0), place(h, -h, 0), place(h, h, 0), place(-h, h, 0)];
  const grid = sheetGrid(station, { kind: "sheet", name: "roof", corners });
  if ("cannot" in grid) throw new Error(grid.cannot);
  const leg = (name: string, end: number) => ({
    name,
    from: [0, 0, wave / 4] as const,
    to: [0, end, wave / 4] as const,
    radius: 1e-3,
    conductivity: Number.POSITIVE_INFINITY,
    permeability: 1,
    insulation: null,
  });
  return {
    wires: [leg("first leg", -0.24 * wave), leg("second leg", 0.24 * wave), ...grid.wires],
    feeds: [{ name: "feed", at: [0, 0, wave / 4], from: [0], into: [1] }],
    loads: [],
  };
}

const impedance = (structure: Structure, soil: "free space" | "perfect" = "free space") =>
  reciprocal(solveAntenna(structure, { kind: soil }, frequency).admittance[0]![0]!);

describe("a sheet as a grid", () => {
  it("converges: half as fine a grid changes the antenna little, and less than the sheet itself does", () => {
    const fine = impedance(overSheet(0.8, frequency));
    const coarse = impedance(overSheet(0.8, frequency * 0.6));
    const without = impedance({ ...overSheet(0.8, frequency), wires: overSheet(0.8, frequency).wires.slice(0, 2) });
    const step = magnitude(subtract(fine, coarse));
    expect(step).toBeLessThan(0.1 * magnitude(subtract(fine, without)));
  });

  it("grows into the plane of image theory", () => {
    const sheet = overSheet(0.9, frequency);
    const mirrored: Structure = { ...sheet, wires: sheet.wires.slice(0, 2) };
    const plane = impedance(mirrored, "perfect");
    const near = (z: { re: number; im: number }) => magnitude(subtract(z, plane));
    const free = impedance(mirrored);
    expect(near(impedance(sheet))).toBeLessThan(0.35 * near(free));
    const driven = driveAntenna(solveAntenna(sheet, { kind: "free space" }, frequency), [one]);
    const best = strongestDirection(driven);
    // Straight away from the sheet; a plane of no end would give 3 dB over a dipole more than its 7.4 dBi at most.
    expect(best.elevation).toBeGreaterThan(1.3);
    expect(10 * Math.log10(best.gain)).toBeGreaterThan(6);
  });

  it("is refused where it would be too large or has too many corners", () => {
    const station = plainStation({ bands: bandOf(430e6) });
    const corners = [place(0, 0, 3), place(9, 0, 3), place(9, 6, 5), place(0, 6, 5)];
    expect(sheetGrid(station, { kind: "sheet", name: "roof", corners })).toHaveProperty("cannot");
    const five = [...corners, place(-2, 3, 4)];
    expect(sheetGrid(station, { kind: "sheet", name: "roof", corners: five })).toHaveProperty("cannot");
  });
});
