import { describe, expect, it } from "vitest";
import { airPermittivity } from "./airPermittivity";
import { lossTangentOf, relativePermittivity } from "./complexPermittivity";
import { airWithSpacers, foamed } from "./foam";
import { fitLossPoints } from "./lossPoints";
import { cableDielectric, cableDielectrics, polyethylene } from "./materials";
import { gasFractionOfVelocity } from "./mixture";

const at = (name: string, f: number) => relativePermittivity(cableDielectric(name)!, 2 * Math.PI * f);

describe("cable dielectrics", () => {
  it.each(cableDielectrics.map((d) => [d.name, d] as const))("%s: lossy, falling, sourced", (_, d) => {
    const [low, high] = [1e4, 1e10].map((f) => relativePermittivity(d, 2 * Math.PI * f));
    expect(low!.re).toBeGreaterThanOrEqual(high!.re);
    expect(high!.re).toBeGreaterThan(1);
    expect(low!.im).toBeLessThanOrEqual(0);
    if (d.lossPoints) expect(fitLossPoints(d).worstDeviation).toBeLessThan(1e-6);
    for (const source of [d.source, d.breakdownSource, d.thermalSource]) {
      expect(source).toMatch(/from memory|published|common practice|our assumption/);
    }
  });

  it("keep polyethylene's numbers over the radio bands within what is known of them", () => {
    // checks/values mat.pe: 2.26 ± 0.03, 2e-4 to 5e-4 from 1 MHz to 1 GHz.
    for (const f of [1e6, 3e7, 1e9]) {
      expect(Math.abs(at("polyethylene", f).re - 2.26)).toBeLessThan(0.005);
      expect(lossTangentOf(at("polyethylene", f))).toBeGreaterThan(2e-4);
      expect(lossTangentOf(at("polyethylene", f))).toBeLessThan(5e-4);
    }
  });
});

describe("foams and spacers", () => {
  it("give a velocity factor back, lose less than their solid, and carry less heat", () => {
    const foam = foamed(polyethylene, gasFractionOfVelocity(2.26, 0.82));
    expect(1 / Math.sqrt(foam.permittivity)).toBeCloseTo(0.82, 12);
    expect(foam.lossTangent).toBeLessThan(3e-4);
    expect(foam.lossTangent).toBeGreaterThan(1e-4);
    expect(foam.density / 920).toBeCloseTo(0.44, 1);
    expect(foam.thermalConductivity).toBeGreaterThan(0.0257);
    expect(foam.thermalConductivity).toBeLessThan(0.33);
    expect(foamed(polyethylene, 0).permittivity).toBeCloseTo(2.26, 12);
  });

  it("average discs by length, and lie below that otherwise", () => {
    const discs = airWithSpacers(polyethylene, 0.05, "discs");
    expect(discs.permittivity).toBeCloseTo(1 + 0.05 * 1.26, 9);
    expect(discs.lossTangent).toBeCloseTo((0.05 * 2.26 * 3e-4) / discs.permittivity, 12);
    const cord = airWithSpacers(polyethylene, 0.05, "cord");
    const beads = airWithSpacers(polyethylene, 0.05, "beads");
    expect(cord.permittivity).toBeLessThan(beads.permittivity);
    expect(beads.permittivity).toBeLessThan(discs.permittivity);
  });
});

describe("air", () => {
  it("is 1.00059 within 2e-5 at 0 degrees and 1 atmosphere, thinner when warm or high, denser when damp", () => {
    // CRC Handbook, from memory (checks/values mat.air).
    expect(Math.abs(airPermittivity(273.15, 101_325) - 1.00059)).toBeLessThan(2e-5);
    expect(airPermittivity(313.15, 101_325)).toBeLessThan(airPermittivity(273.15, 101_325));
    expect(airPermittivity(293.15, 70_000)).toBeLessThan(airPermittivity(293.15, 101_325));
    expect(airPermittivity(293.15, 101_325, 2_000)).toBeGreaterThan(airPermittivity(293.15, 101_325));
    expect(airPermittivity(293.15, 0)).toBe(1);
    expect(() => airPermittivity(293, 100, 200)).toThrow(/no more vapour/);
  });
});
