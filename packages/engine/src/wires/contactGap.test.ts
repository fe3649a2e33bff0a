import { describe, expect, it } from "vitest";
import { complex, magnitude, subtract } from "../numerics/complex";
import { testFrequency, wire } from "./antennas.fixture";
import { basisImpedances } from "./portBasis";
import { solveAntenna } from "./solveAntenna";
import type { Point, Soil, Structure } from "./structure";

const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 5e-3 };
const foot: Point = [0.3, 0, 0.02];

/** A level dipole beside a thick mast that stands on an earth. */
const beside: Structure = {
  wires: [wire([0, -10, 11], [0, 0, 11]), wire([0, 0, 11], [0, 10, 11]), wire(foot, [0.3, 0, 11.7], 25e-3)],
  feeds: [{ name: "feed", at: [0, 0, 11], from: [0], into: [1] }],
  loads: [],
  contacts: [{ name: "foot", at: foot, reach: 1 }],
};

describe("the gap at a contact with the soil", () => {
  it("keeps its width on every mesh, so that its impedance has a limit", () => {
    // A gap that shrinks with the mesh has a capacitance that grows as its logarithm: equal steps without end.
    const at = (refinement: number) => {
      const { fineAdmittance, basis } = solveAntenna(beside, soil, 2 * testFrequency, undefined, { refinement });
      return basisImpedances(fineAdmittance, basis)?.[1]?.[1] ?? complex(Number.NaN);
    };
    const [coarse, middle, fine] = [1, 2, 4].map(at) as [
      ReturnType<typeof at>,
      ReturnType<typeof at>,
      ReturnType<typeof at>,
    ];
    expect(magnitude(subtract(fine, middle))).toBeLessThan(magnitude(subtract(middle, coarse)) / 2);
  });
});
