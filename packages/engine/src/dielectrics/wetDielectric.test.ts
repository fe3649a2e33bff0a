import { describe, expect, it } from "vitest";
import { water as waterOfP527 } from "../ground/water";
import { complex } from "../numerics/complex";
import { relativePermittivity } from "./complexPermittivity";
import type { Dielectric } from "./dielectric";
import { depolarisation, mixture } from "./mixture";
import { soaked, waterDielectric } from "./wetDielectric";

const foam: Dielectric = { name: "foam", permittivity: 1.487, lossTangent: 0 };
const rain = { temperature: 293.15, conductivity: 5e-3 };
const at = (d: Dielectric, f: number) => relativePermittivity(d, 2 * Math.PI * f);

describe("waterDielectric", () => {
  it("is the water of P.527 below its second relaxation", () => {
    const pure = waterDielectric({ ...rain, conductivity: 0 });
    for (const f of [1e6, 1e9, 5e9]) {
      const reference = waterOfP527(f, 20, 0);
      expect(Math.abs(at(pure, f).re / reference.relativePermittivity - 1)).toBeLessThan(0.005);
      expect(Math.abs(-at(pure, f).im / reference.dielectricLoss - 1)).toBeLessThan(0.03);
    }
  });

  it("refuses ice", () => {
    expect(() => waterDielectric({ temperature: 260, conductivity: 0 })).toThrow(/ice is not water/);
  });
});

describe("soaked", () => {
  it.each(Object.entries(depolarisation))("%s: is the mixing rule at every frequency", (_, factor) => {
    for (const conductivity of [0, 5e-3, 0.5]) {
      for (const share of [0.001, 0.01, 0.2]) {
        const dirty = { ...rain, conductivity };
        const wet = soaked(foam, dirty, share, factor);
        for (const f of [1e4, 1e6, 3e7, 1e9, 2e10]) {
          const exact = mixture(complex(foam.permittivity), at(waterDielectric(dirty), f), share, factor);
          expect(at(wet, f).re / exact.re).toBeCloseTo(1, 9);
          expect(Math.abs(at(wet, f).im - exact.im)).toBeLessThan(1e-9 * Math.abs(exact.im) + 1e-13);
        }
        for (const r of wet.relaxations!) expect(r.strength).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it("is the dry dielectric without water, and water alone with all", () => {
    expect(at(soaked(foam, rain, 0, 1 / 3), 1e7).re).toBeCloseTo(1.487, 12);
    expect(at(soaked(foam, rain, 1, 1 / 3), 1e7).re).toBeCloseTo(at(waterDielectric(rain), 1e7).re, 9);
  });

  it("rises with water, more in channels than in drops", () => {
    const drops = [0.001, 0.01, 0.05].map((share) => at(soaked(foam, rain, share, depolarisation.round), 1e7).re);
    expect(drops).toEqual([...drops].sort((a, b) => a - b));
    expect(at(soaked(foam, rain, 0.01, depolarisation.along), 1e7).re).toBeGreaterThan(drops[1]!);
  });

  it("keeps the loss of its host where there is hardly any water", () => {
    const lossy = { ...foam, lossTangent: 2e-4, statedAt: 1e8 };
    const wet = at(soaked(lossy, { ...rain, conductivity: 0 }, 1e-6, 1 / 3), 1e7);
    expect(-wet.im / wet.re / 2e-4).toBeCloseTo(1, 2);
  });
});
