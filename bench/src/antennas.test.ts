import { solveAntenna } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { dipole, frequency, fresh, mast, refinementFor, soil, wireGrid } from "./antennas";

describe("the timed antennas", () => {
  it("can all be solved", () => {
    for (const structure of [dipole(12, fresh(10)), mast(4), wireGrid(2, 2)])
      expect(solveAntenna(structure, soil, frequency, undefined, { refinement: 0.5 }).unknowns).toBeGreaterThan(20);
  });

  it("have the unknowns that are wanted, nearly", () => {
    const refinement = refinementFor(dipole(12), 91);
    const { unknowns } = solveAntenna(dipole(12), soil, frequency, undefined, { refinement });
    expect(Math.abs(unknowns - 91)).toBeLessThan(8);
  });

  it("have every bar of a grid once", () => {
    expect(wireGrid(3, 2).wires).toHaveLength(3 * 3 + 4 * 2);
  });
});
