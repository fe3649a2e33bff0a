import { describe, expect, it } from "vitest";
import { sumSpectrum } from "../kernels/reference/spectralSums";
import { add, type Complex, complex, divide, exponential, multiply, scale, subtract, zero } from "../numerics/complex";
import { adaptive, bessel } from "./adaptiveQuadrature.fixture";
import { buildKernelTable } from "./kernelTable";
import { octaveSampler } from "./octaveSampler";
import { complexPermittivity, decayingRoot } from "./soilMedium";
import { buildSpectrum } from "./spectrum";

/** Of the integrals, absolute: some digits beyond what is asked of the tables. */
const goal = { error: 1e-11, leastHalvings: 0, mostHalvings: 24 };

/**
 * The kernels straight from their definition: textbook reflection coefficients, variable kr = k sin t, then k cosh t.
 * Order G_xx, K, G_zz, T.
 */
function bruteForce(k: number, eps: Complex, rho: number, s: number): Complex[] {
  const integrand = (kr: number, kz: Complex, jacobian: Complex): Complex[] => {
    const k1 = decayingRoot(subtract(scale(eps, k * k), complex(kr * kr)));
    const te = divide(subtract(kz, k1), add(kz, k1));
    const tm = divide(subtract(k1, multiply(eps, kz)), add(k1, multiply(eps, kz)));
    const kz2 = multiply(kz, kz);
    const scalar = scale(subtract(scale(te, k * k), multiply(kz2, tm)), 1 / (kr * kr));
    const inner = add(multiply(subtract(complex(kr * kr), kz2), tm), multiply(kz2, te));
    const vertical = scale(inner, -1 / (kr * kr));
    const wave = multiply(exponential(multiply(complex(0, -s), kz)), jacobian);
    const forJ0 = scale(wave, bessel(0, kr * rho) / (4 * Math.PI));
    const cross = multiply(multiply(subtract(tm, te), divide(kz, complex(kr))), complex(0, 1));
    return [
      ...[te, scalar, vertical].map((f) => multiply(f, forJ0)),
      multiply(cross, scale(wave, bessel(1, kr * rho) / (4 * Math.PI))),
    ];
  };
  const minusJ = complex(0, -1);
  // kr dkr / (j kz) = -j kr dt on both stretches up to the factor the second variable brings.
  const below = (t: number) => integrand(k * Math.sin(t), complex(k * Math.cos(t)), scale(minusJ, k * Math.sin(t)));
  const above = (t: number) => integrand(k * Math.cosh(t), complex(0, -k * Math.sinh(t)), complex(k * Math.cosh(t)));
  const end = Math.asinh(26 / (k * s));
  const parts = [
    adaptive(below, 0, Math.PI / 2, goal),
    adaptive(above, 0, end / 2, goal),
    adaptive(above, end / 2, end, goal),
  ];
  return [0, 1, 2, 3].map((n) => parts.reduce((sum, p) => add(sum, p[n]!), zero));
}

describe("reflected kernels", () => {
  const soils = [
    { name: "average", relativePermittivity: 13, conductivity: 0.005 },
    { name: "poor", relativePermittivity: 5, conductivity: 0.001 },
    { name: "sea", relativePermittivity: 80, conductivity: 5 },
    { name: "nearly lossless", relativePermittivity: 4, conductivity: 1e-5 },
  ];
  const frequencies = [3.6e6, 28.5e6];
  it.each(soils)(
    "agree with adaptive quadrature of the definition to 1e-6 of the free-space kernel: $name soil",
    (soil) => {
      for (const frequency of frequencies) {
        const k = (2 * Math.PI * frequency) / 299792458;
        const eps = complexPermittivity(soil, frequency);
        const reach = { smallestSum: 3, largestSum: 30, largestDistance: 25, steep: true };
        const table = buildKernelTable(
          k,
          reach,
          octaveSampler(reach, (part) => buildSpectrum(k, eps, part), sumSpectrum),
        );
        const out = new Float64Array(8);
        const places = [
          [0, 3],
          [0.731, 3.19],
          [11.3, 4.07],
          [24.9, 3.02],
          [17.7, 26.4],
        ] as const;
        for (const [rho, s] of places) {
          const free = 1 / (4 * Math.PI * Math.hypot(rho, s));
          const exact = bruteForce(k, eps, rho, s);
          table.lookUp(rho, s, out);
          for (let kind = 0; kind < 4; kind++) {
            const factor = kind === 3 ? rho : 1;
            const error = Math.hypot(
              out[2 * kind]! * factor - exact[kind]!.re,
              out[2 * kind + 1]! * factor - exact[kind]!.im,
            );
            expect(error / free, `${kind} at ${rho}, ${s}, ${frequency}`).toBeLessThan(1e-6);
          }
        }
      }
    },
  );

  it("hold to the same accuracy for wires five centimetres up", () => {
    const frequency = 14.2e6;
    const k = (2 * Math.PI * frequency) / 299792458;
    const eps = complexPermittivity(soils[0]!, frequency);
    const reach = { smallestSum: 0.1, largestSum: 0.1, largestDistance: 6, steep: true };
    const table = buildKernelTable(
      k,
      reach,
      octaveSampler(reach, (part) => buildSpectrum(k, eps, part), sumSpectrum),
    );
    const out = new Float64Array(8);
    for (const rho of [0, 0.037, 0.41, 2.3]) {
      const exact = bruteForce(k, eps, rho, 0.1);
      table.lookUp(rho, 0.1, out);
      for (let kind = 0; kind < 4; kind++) {
        const factor = kind === 3 ? rho : 1;
        const error = Math.hypot(
          out[2 * kind]! * factor - exact[kind]!.re,
          out[2 * kind + 1]! * factor - exact[kind]!.im,
        );
        expect(error * 4 * Math.PI * Math.hypot(rho, 0.1), `${kind} at ${rho}`).toBeLessThan(1e-6);
      }
    }
  });
});
