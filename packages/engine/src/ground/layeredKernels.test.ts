import { describe, expect, it } from "vitest";
import { sumSpectrum } from "../kernels/reference/spectralSums";
import { add, type Complex, complex, exponential, multiply, scale, subtract, zero } from "../numerics/complex";
import { definition, wavenumber } from "./layeredDefinition.fixture";
import { layeredSampler } from "./layeredSampler";
import { layeredMedium, layeredReflection, type SoilLayer } from "./layeredSoil";
import { reflection } from "./reflection";
import { complexPermittivity, type SoilNumbers } from "./soilMedium";
import { buildSpectrum } from "./spectrum";

const sand: SoilNumbers = { relativePermittivity: 3, conductivity: 1e-4 };
const sea: SoilNumbers = { relativePermittivity: 70, conductivity: 5 };
const ice: SoilNumbers = { relativePermittivity: 3.2, conductivity: 1e-5 };
const wet: SoilNumbers = { relativePermittivity: 30, conductivity: 1e-2 };
const average: SoilNumbers = { relativePermittivity: 13, conductivity: 5e-3 };

const over = (top: SoilNumbers, thickness: number, bottom: SoilNumbers): SoilLayer[] => [
  { ...top, thickness },
  { ...bottom, thickness: null },
];

/** The four kernels at one place, T with its rho. */
function sampled(sample: ReturnType<typeof layeredSampler>, rho: number, s: number): Complex[] {
  const sums = sample(Float64Array.of(rho), Float64Array.of(s));
  return [sums.horizontal, sums.scalar, sums.vertical, sums.cross].map((plane, kind) =>
    complex(plane.re[0]! * (kind === 3 ? rho : 1), plane.im[0]! * (kind === 3 ? rho : 1)),
  );
}

/** Largest difference over the free-space kernel at the same distance. */
const apart = (a: readonly Complex[], b: readonly Complex[], rho: number, s: number): number =>
  Math.max(...a.map((x, i) => Math.hypot(x.re - b[i]!.re, x.im - b[i]!.im))) * 4 * Math.PI * Math.hypot(rho, s);

describe("reflection at layers", () => {
  it("is that of a half-space when all layers are alike, to 1e-9", () => {
    const f = 7.1e6;
    const k = wavenumber(f);
    const medium = layeredMedium([{ ...average, thickness: 0.7 }, ...over(average, 2.3, average)], f);
    for (const kz of [complex(0.9 * k), complex(0.2 * k), complex(0, -0.3 * k), complex(0, -40 * k)]) {
      const one = layeredReflection(kz, medium);
      const other = reflection(kz, k, complexPermittivity(average, f));
      expect(Math.hypot(one.tm.re - other.tm.re, one.tm.im - other.tm.im)).toBeLessThan(1e-9);
      expect(Math.hypot(one.te.re - other.te.re, one.te.im - other.te.im)).toBeLessThan(1e-9);
    }
  });

  it("tells of a layer above the lowest without thickness", () => {
    expect(() =>
      layeredMedium(
        [
          { ...sand, thickness: null },
          { ...sea, thickness: null },
        ],
        7e6,
      ),
    ).toThrow(/layer 1/);
  });
});

describe("reflected kernels over layers", () => {
  it("are the same to 1e-9 for one layer and for the same soil in three", () => {
    const f = 7.1e6;
    const alike = layeredSampler(layeredMedium([{ ...average, thickness: 0.7 }, ...over(average, 2.3, average)], f));
    const single = layeredSampler(layeredMedium([{ ...average, thickness: null }], f));
    for (const [rho, s] of [
      [0, 0.5],
      [3, 4],
      [30, 3],
    ] as const)
      expect(apart(sampled(alike, rho, s), sampled(single, rho, s), rho, s)).toBeLessThan(1e-9);
  });

  // The half-space route states 1e-6 as its error.
  it("go over into those of one soil: layers alike, a thick top, a top of no thickness", () => {
    const f = 7.1e6;
    const k = wavenumber(f);
    const cases = [
      { layers: over(average, 1.3, average), soil: average },
      { layers: over(wet, 200, sand), soil: wet },
      { layers: over(sand, 1e-8, average), soil: average },
    ];
    for (const { layers, soil } of cases) {
      const reach = { smallestSum: 3, largestSum: 20, largestDistance: 30, steep: true };
      const half = buildSpectrum(k, complexPermittivity(soil, f), reach);
      const sample = layeredSampler(layeredMedium(layers, f));
      for (const [rho, s] of [
        [0.3, 3],
        [9, 4],
        [30, 3],
        [12, 20],
      ] as const) {
        const sums = sumSpectrum(half, Float64Array.of(rho), Float64Array.of(s));
        const one = [sums.horizontal, sums.scalar, sums.vertical, sums.cross].map((plane, kind) =>
          complex(plane.re[0]! * (kind === 3 ? rho : 1), plane.im[0]! * (kind === 3 ? rho : 1)),
        );
        expect(apart(sampled(sample, rho, s), one, rho, s), `rho ${rho}, s ${s}`).toBeLessThan(1e-6);
      }
    }
  });

  const pairs = [
    { name: "dry sand over sea water", layers: over(sand, 2, sea) },
    { name: "ice over wet ground", layers: over(ice, 4, wet) },
    { name: "thin turf over sand", layers: over(wet, 0.3, sand) },
  ];
  it.each(pairs)(
    "agree with adaptive quadrature of the definition to 1e-6 of the free-space kernel: $name",
    ({ layers }) => {
      for (const f of [1.8e6, 7.1e6, 28.5e6]) {
        const sample = layeredSampler(layeredMedium(layers, f));
        for (let i = 0; i < 6; i++) {
          const rho = 25 * ((i * 0.754877666 + 0.03) % 1);
          const s = 2 + 10 * ((i * 0.569840291 + 0.1) % 1);
          const exact = definition(f, layers, rho, s);
          expect(apart(sampled(sample, rho, s), exact, rho, s), `${f} Hz, rho ${rho}, s ${s}`).toBeLessThan(1e-6);
        }
      }
    },
  );

  it("do not move when the panels are doubled, near the soil and far along it", () => {
    const layers = [{ ...sand, thickness: 1.5 }, ...over(average, 4, sea)];
    for (const f of [1.8e6, 14.2e6]) {
      const medium = layeredMedium(layers, f);
      const [once, twice] = [layeredSampler(medium), layeredSampler(medium, { density: 2 })];
      for (let i = 0; i < 25; i++) {
        const rho = 120 * ((i * 0.754877666) % 1) ** 3;
        const s = 0.2 + 30 * ((i * 0.569840291) % 1) ** 2;
        expect(apart(sampled(once, rho, s), sampled(twice, rho, s), rho, s), `rho ${rho}, s ${s}`).toBeLessThan(1e-6);
      }
    }
  });

  it("agree with doubled panels and with the definition for wires on the soil", () => {
    const layers = over(wet, 0.3, sand);
    const medium = layeredMedium(layers, 7.1e6);
    const [once, twice] = [layeredSampler(medium), layeredSampler(medium, { density: 2 })];
    for (const [rho, s] of [
      [0.02, 0.01],
      [0.3, 0.01],
      [3, 0.01],
      [19, 0.012],
      [8, 0.3],
    ] as const)
      expect(apart(sampled(once, rho, s), sampled(twice, rho, s), rho, s), `rho ${rho}, s ${s}`).toBeLessThan(1e-6);
    // Farther and lower the quadrature of the definition takes too long for a test.
    for (const [rho, s] of [
      [0.3, 0.05],
      [1.5, 0.1],
    ] as const) {
      const exact = definition(7.1e6, layers, rho, s);
      expect(apart(sampled(once, rho, s), exact, rho, s), `rho ${rho}, s ${s}`).toBeLessThan(1e-6);
    }
  });

  it("lose exactly the kernels of images when constants are taken out", () => {
    const f = 14.2e6;
    const k = wavenumber(f);
    const medium = layeredMedium(over(sand, 1, wet), f);
    const takenOut = { scalar: complex(-0.5, 0.1), vertical: complex(1, -0.2), cross: complex(-0.5, 0.1) };
    const [whole, rest] = [layeredSampler(medium), layeredSampler(medium, { takenOut })];
    for (const [rho, s] of [
      [0.4, 1],
      [7, 2.5],
    ] as const) {
      const r = Math.hypot(rho, s);
      const g = scale(exponential(complex(0, -k * r)), 1 / (4 * Math.PI * r));
      const t = scale(
        subtract(exponential(complex(0, -k * s)), scale(exponential(complex(0, -k * r)), s / r)),
        1 / (4 * Math.PI * rho),
      );
      const images = [zero, multiply(takenOut.scalar, g), multiply(takenOut.vertical, g), multiply(takenOut.cross, t)];
      const sum = sampled(rest, rho, s).map((x, i) => add(x, images[i]!));
      expect(apart(sum, sampled(whole, rho, s), rho, s)).toBeLessThan(1e-7);
    }
  });
});
