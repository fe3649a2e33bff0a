import { describe, expect, it } from "vitest";
import { magnitude } from "../numerics/complex";
import { outerConductorImpedance } from "./outerConductor";
import { roundConductorImpedance } from "./roundConductor";
import { skinDepth, surfaceResistance } from "./solidWire";
import { joinShields, tubeImpedances } from "./tubeImpedances";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
const [radius, wall] = [3.62e-3, 0.2e-3];

describe("impedances of a tube", () => {
  it("are its direct-current resistance, all three, when the skin is deep", () => {
    const direct = tubeImpedances(radius, wall, copper, 0).transfer.re;
    expect(direct * Math.PI * (3.82e-3 ** 2 - 3.62e-3 ** 2) * 58e6).toBeCloseTo(1, 12);
    const slow = tubeImpedances(radius, wall, copper, 2 * Math.PI * 10);
    for (const z of [slow.inside, slow.transfer, slow.outside]) expect(z.re / direct).toBeCloseTo(1, 6);
  });

  it("let a thick wall's transfer fall as exp(-t/delta): 2 sqrt(2) Rs exp(-t/delta)/(2 pi sqrt(a b))", () => {
    const omega = 2e6 * Math.PI * 20;
    const depth = skinDepth(copper.conductivity, 1, omega);
    const known =
      (2 * Math.SQRT2 * surfaceResistance(copper.conductivity, 1, omega) * Math.exp(-wall / depth)) /
      (2 * Math.PI * Math.sqrt(radius * (radius + wall)));
    // Source: thick-wall limit of Schelkunoff's transfer impedance; the next term is (3/8)(1/ga - 1/gb), below 0.1 % here.
    expect(Math.abs(magnitude(tubeImpedances(radius, wall, copper, omega).transfer) / known - 1)).toBeLessThan(1e-3);
  });

  it("agree with the tube seen from inside and from outside, worked out another way", () => {
    const omega = 2e6 * Math.PI;
    const found = tubeImpedances(radius, wall, copper, omega);
    const outer = { innerRadius: radius, wall, metal: copper, resistanceFactor: 1 };
    const round = {
      form: "tube" as const,
      layers: [{ metal: copper, outerRadius: radius + wall }],
      holeRadius: radius,
      effectiveRadiusRatio: 1,
      resistanceFactor: 1,
    };
    expect(found.inside.re / outerConductorImpedance(outer, omega).re).toBeCloseTo(1, 10);
    expect(found.outside.re / roundConductorImpedance(round, omega).re).toBeCloseTo(1, 10);
    expect(found.outside.im / roundConductorImpedance(round, omega).im).toBeCloseTo(1, 10);
  });

  it("do not see a boundary between two tubes of one metal", () => {
    for (const omega of [0, 1e4, 1e6, 1e8, 1e10]) {
      const whole = tubeImpedances(radius, wall, copper, omega);
      const joined = joinShields(
        tubeImpedances(radius, 0.3 * wall, copper, omega),
        tubeImpedances(radius + 0.3 * wall, 0.7 * wall, copper, omega),
      );
      for (const name of ["inside", "transfer", "outside"] as const) {
        const scale = magnitude(whole[name]);
        expect(Math.abs(joined[name].re - whole[name].re)).toBeLessThan(1e-8 * scale);
        expect(Math.abs(joined[name].im - whole[name].im)).toBeLessThan(1e-8 * scale);
      }
    }
  });

  it("let nothing through an endless wall", () => {
    expect(magnitude(tubeImpedances(radius, Number.POSITIVE_INFINITY, copper, 1e6).transfer)).toBeLessThan(1e-17);
  });
});
