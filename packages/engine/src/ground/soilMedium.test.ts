import { describe, expect, it } from "vitest";
import { complex } from "../numerics/complex";
import { reflection } from "./reflection";
import { complexPermittivity, penetrationDepth } from "./soilMedium";
import { depthOfPenetration } from "./soilSurface";
import { water } from "./water";

describe("soil", () => {
  it("has the skin depth of a good conductor where conduction rules", () => {
    // sqrt(2/(w mu0 sigma)): sea water of 5 S/m at 1 MHz, 0.2251 m (arithmetic).
    const depth = penetrationDepth({ relativePermittivity: 80, conductivity: 5 }, 1e6);
    expect(Math.abs(depth / Math.sqrt(2 / (2 * Math.PI * 1e6 * 4e-7 * Math.PI * 5)) - 1)).toBeLessThan(1e-3);
  });
  it("has the depth of a low-loss dielectric where displacement rules", () => {
    // 2 sqrt(eps_r)/(eta0 sigma) (arithmetic from the expansion of the root).
    const depth = penetrationDepth({ relativePermittivity: 4, conductivity: 1e-5 }, 30e6);
    expect(Math.abs((depth * 376.7303 * 1e-5) / (2 * 2) - 1)).toBeLessThan(1e-3);
    expect(penetrationDepth({ relativePermittivity: 4, conductivity: 0 }, 30e6)).toBe(Number.POSITIVE_INFINITY);
  });
  it("in layers is as deep as the layers together attenuate to 1/e", () => {
    const sea = { relativePermittivity: 80, conductivity: 5 };
    const alone = penetrationDepth(sea, 1e6);
    const over = (thickness: number, top: typeof sea) =>
      depthOfPenetration(
        {
          kind: "layered",
          layers: [
            { ...top, thickness },
            { ...sea, thickness: null },
          ],
        },
        1e6,
      );
    expect(over(0.1, sea)).toBeCloseTo(alone, 12);
    expect(over(7, { relativePermittivity: 4, conductivity: 0 })).toBeCloseTo(7 + alone, 12);
    expect(over(10 * alone, sea)).toBeCloseTo(alone, 12);
  });

  it("is water as ITU-R P.527-4 has it, inside of its range only", () => {
    // Computed by an independent script from the Recommendation's formulas, see the ledger.
    expect(water(1e9, 20, 35).relativePermittivity).toBeCloseTo(71.4689369724776, 9);
    expect(water(1e9, 20, 0).dielectricLoss).toBeCloseTo(4.39443096319478, 9);
    expect(() => water(1e9, 60, 35)).toThrow(/60 degrees/);
  });

  it("reflects as Fresnel says", () => {
    // Normal incidence (1 - n)/(1 + n); TM vanishes at the Brewster angle tan = n (textbook optics).
    const k = 0.3;
    const normal = reflection(complex(k), k, complex(9));
    expect(normal.te.re).toBeCloseTo(-0.5, 14);
    expect(normal.tm.re).toBeCloseTo(-0.5, 14);
    const brewster = reflection(complex(k * Math.cos(Math.atan(3))), k, complex(9));
    expect(Math.abs(brewster.tm.re)).toBeLessThan(1e-14);
    const eps = complexPermittivity({ relativePermittivity: 13, conductivity: 0.005 }, 7.1e6);
    const r = reflection(complex(0.2), k, eps);
    const radialSquared = k * k - 0.04;
    expect((r.te.re - r.tm.re) / radialSquared).toBeCloseTo(r.difference.re, 12);
    expect((r.te.im - r.tm.im) / radialSquared).toBeCloseTo(r.difference.im, 12);
  });
});
