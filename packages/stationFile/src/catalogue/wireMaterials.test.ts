import { roundConductorImpedance, sectionOf } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { parseConductor } from "../units/conductor";
import { cladMetals, conductorMetals } from "./wireMaterials";

const read = (text: string) => {
  const conductor = parseConductor(text);
  if (!conductor.ok) throw new Error(conductor.fault.message);
  return conductor.value;
};
const copper = conductorMetals.find((m) => m.name === "copper")!;
const megahertz = (f: number) => 2e6 * Math.PI * f;

describe("clad wires of the catalogue", () => {
  it.each([40, 30, 21])("copper-clad steel %i %% conducts direct current as its class says", (percent) => {
    const section = sectionOf(read(`2 mm copper-clad steel ${percent} %`))!;
    const solid = 1 / (copper.conductivity * Math.PI * 1e-6);
    // ASTM B227: the class is the conductance over that of copper of the same size.
    expect(solid / roundConductorImpedance(section, 0).re).toBeCloseTo(percent / 100, 12);
  });

  it("all are read, each with a surface thinner than the wire", () => {
    for (const { name } of cladMetals) {
      const section = sectionOf(read(`2 mm ${name} in 0.8 mm PVC`))!;
      expect(section.layers).toHaveLength(2);
      expect(section.layers[1]!.outerRadius).toBe(1e-3);
      expect(section.layers[0]!.outerRadius).toBeGreaterThan(0);
    }
  });

  it("copper-clad steel works as copper where the copper is many skin depths, and far worse where it is less than one", () => {
    // 1 mm wire of 21 %: 31 micrometres of copper, skin depth 0.12 mm at 0.3 MHz and 6.6 micrometres at 100 MHz.
    const clad = sectionOf(read("1 mm copper-clad steel 21 %"))!;
    const solid = { ...clad, layers: [{ metal: copper, outerRadius: 5e-4 }] };
    const ratio = (f: number) =>
      roundConductorImpedance(clad, megahertz(f)).re / roundConductorImpedance(solid, megahertz(f)).re;
    expect(ratio(100)).toBeCloseTo(1, 3);
    expect(ratio(0.3)).toBeGreaterThan(2);
  });
});

describe("tubes", () => {
  it("with a wall have a hole, without one are taken as solid", () => {
    const tube = read("30 mm tube aluminium");
    expect(sectionOf(tube)).toBeNull();
    const wall = { ...tube.diameter, value: 1e-3 };
    const section = sectionOf({ ...tube, wall })!;
    const conductance = tube.conductivity * Math.PI * (0.015 ** 2 - 0.014 ** 2);
    expect(roundConductorImpedance(section, 0).re).toBeCloseTo(1 / conductance, 12);
  });
});
