import { describe, expect, it } from "vitest";
import { metalAt, outerConductorAt, resistivityRatio, roundConductorAt } from "./metalTemperature";
import { roundConductorImpedance } from "./roundConductor";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };

describe("temperature of conductors", () => {
  it("takes copper's 0.393 % a kelvin where a metal states none, and its own where it does", () => {
    // IEC 60028: 0.00393 from 20 degrees Celsius.
    expect(resistivityRatio(303.15)).toBeCloseTo(1.0393, 12);
    expect(metalAt({ ...copper, temperatureCoefficient: 0.005 }, 313.15).conductivity).toBeCloseTo(58e6 / 1.1, 3);
    expect(metalAt({ ...copper, conductivity: Number.POSITIVE_INFINITY }, 313.15).conductivity).toBe(
      Number.POSITIVE_INFINITY,
    );
  });

  it("raises direct-current resistance by the whole and that of skin effect by the root of it", () => {
    const wire = {
      form: "solid" as const,
      layers: [{ metal: copper, outerRadius: 1e-3 }],
      holeRadius: 0,
      effectiveRadiusRatio: 1,
      resistanceFactor: 1,
    };
    const ratio = (omega: number) =>
      roundConductorImpedance(roundConductorAt(wire, 343.15), omega).re / roundConductorImpedance(wire, omega).re;
    expect(ratio(0)).toBeCloseTo(1.1965, 10);
    expect(ratio(2e12 * Math.PI)).toBeCloseTo(Math.sqrt(1.1965), 4);
  });

  it("reaches coating and foil of an outer conductor", () => {
    const warm = outerConductorAt(
      {
        innerRadius: 1e-3,
        wall: 1e-4,
        metal: copper,
        resistanceFactor: 1,
        coating: { metal: copper, thickness: 1e-6 },
        shield: { form: "foil", foil: { metal: copper, thickness: 9e-6 } },
      },
      293.15 + 1 / 0.00393,
    );
    expect(warm.metal.conductivity).toBeCloseTo(29e6, 3);
    expect(warm.coating?.metal.conductivity).toBeCloseTo(29e6, 3);
    expect(warm.shield?.form === "foil" && warm.shield.foil.metal.conductivity).toBeCloseTo(29e6, 3);
  });

  it("refuses what lies far outside the straight line", () => {
    expect(() => resistivityRatio(80)).toThrow(/expected 150 K to 600 K/);
  });
});
