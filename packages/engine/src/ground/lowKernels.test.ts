import { describe, expect, it } from "vitest";
import { sumSpectrum } from "../kernels/reference/spectralSums";
import { modifiedBessel } from "../numerics/besselModified";
import { add, type Complex, complex, divide, exponential, multiply, scale, subtract, zero } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { buildKernelTable } from "./kernelTable";
import { octaveSampler } from "./octaveSampler";
import { quasiStaticImages } from "./quasiStaticImages";
import { complexPermittivity, decayingRoot } from "./soilMedium";
import { buildSpectrum } from "./spectrum";

const rule = gaussLegendre(20);
const j = complex(0, 1);
const times = (...factors: Complex[]): Complex => factors.reduce(multiply);

/** Textbook spectra times e^{-j kz s} kr/(4 pi j kz) at a complex horizontal wavenumber: G_xx, K, G_zz, then that of T. */
function spectra(kr: Complex, kz: Complex, k: number, eps: Complex, s: number): Complex[] {
  const kr2 = multiply(kr, kr);
  const k1 = decayingRoot(subtract(scale(eps, k * k), kr2));
  const te = divide(subtract(kz, k1), add(kz, k1));
  const tm = divide(subtract(k1, multiply(eps, kz)), add(k1, multiply(eps, kz)));
  const kz2 = multiply(kz, kz);
  const scalar = divide(subtract(scale(te, k * k), multiply(kz2, tm)), kr2);
  const vertical = divide(add(multiply(subtract(kr2, kz2), tm), multiply(kz2, te)), scale(kr2, -1));
  const wave = scale(exponential(times(j, kz, complex(-s))), 1 / (4 * Math.PI));
  const forJ0 = divide(multiply(kr, wave), multiply(j, kz));
  return [multiply(te, forJ0), multiply(scalar, forJ0), multiply(vertical, forJ0), multiply(subtract(tm, te), wave)];
}

/** J_0 and J_1 by the trapezoid rule on the integral representation (DLMF 10.9.2). */
function bessel(x: number): readonly [number, number] {
  const count = 40 + 2 * Math.ceil(x);
  let [j0, j1] = [0, 0];
  for (let i = 0; i < count; i++) {
    const t = (2 * Math.PI * i) / count;
    j0 += Math.cos(x * Math.sin(t));
    j1 += Math.cos(t - x * Math.sin(t));
  }
  return [j0 / count, j1 / count];
}

/** Gauss panels of an integrand over a range, halved until narrower than 0.7 of their distance to `place` and `widest`. */
function integrate(
  f: (x: number) => Complex[],
  [from, to]: readonly [number, number],
  place: number,
  widest: (x: number) => number,
): Complex[] {
  const distance = Math.max(0, from - place, place - to);
  const width = to - from;
  const middle = (from + to) / 2;
  if (width > Math.min(widest(to), Math.max(0.7 * distance, 1e-7))) {
    const halves = [integrate(f, [from, middle], place, widest), integrate(f, [middle, to], place, widest)];
    return halves[0]!.map((x, n) => add(x, halves[1]![n]!));
  }
  let sum: Complex[] = [zero, zero, zero, zero];
  rule.points.forEach((x, i) => {
    const values = f(middle + (width / 2) * x);
    sum = sum.map((v, n) => add(v, scale(values[n]!, (width / 2) * rule.weights[i]!)));
  });
  return sum;
}

/**
 * The kernels from their definition by another way than the program's: over kr = k sin t, then k cosh t to past all
 * wavenumbers; from there, where distance is large against height, the Bessel function's two Hankel functions apart along
 * vertical lines, where each falls exponentially; else on to e^-34. Panels of 20 points close in on the branch points.
 * Order G_xx, K, G_zz, T.
 */
function definition(k: number, eps: Complex, rho: number, s: number): Complex[] {
  const withBessel = (kr: number, kz: Complex): Complex[] => {
    const [j0, j1] = bessel(kr * rho);
    const jacobian = Math.hypot(kz.re, kz.im);
    return spectra(complex(kr), kz, k, eps, s).map((f, n) => scale(f, jacobian * (n === 3 ? j1 : j0)));
  };
  const index = decayingRoot(eps);
  const wavenumber = k * Math.hypot(index.re, index.im);
  const whole = rho < 3 * s;
  const end = whole ? 3 * wavenumber + 34 / s : Math.max(3 * wavenumber, 25 / rho);
  const branch = Math.acosh(Math.max(1.1, index.re));
  const above = (t: number) => withBessel(k * Math.cosh(t), complex(0, -k * Math.sinh(t)));
  const step = (t: number): number => Math.min(1, 6 / (k * Math.cosh(t) * (rho + s) + 1e-9));
  const parts = [
    integrate((t) => withBessel(k * Math.sin(t), complex(k * Math.cos(t))), [0, Math.PI / 2], Math.PI / 2, step),
    integrate(above, [0, branch / 2], 0, step),
    integrate(above, [branch / 2, branch], branch, step),
    integrate(above, [branch, Math.acosh(end / k)], branch, step),
    ...(whole ? [] : [hankelLine(k, eps, rho, s, end)]),
  ];
  return [0, 1, 2, 3].map((n) => parts.reduce((sum, part) => add(sum, part[n]!), zero));
}

/** Integral over kr from `start` on: H^(2)/2 down, H^(1)/2 up. H0^(2)(z) = (2j/pi) K0(jz), H1^(2)(z) = -(2/pi) K1(jz). */
function hankelLine(k: number, eps: Complex, rho: number, s: number, start: number): Complex[] {
  const lines = ([-1, 1] as const).map((side) =>
    integrate(
      (t) => {
        const kr = complex(start, side * t);
        const argument = scale(multiply(complex(0, -side), kr), rho);
        const { k0, k1 } = modifiedBessel(argument);
        const fall = exponential(scale(argument, -1));
        const h0 = times(complex(0, (-side * 2) / Math.PI), k0, fall);
        const h1 = times(complex(-2 / Math.PI), k1, fall);
        const kz = decayingRoot(subtract(complex(k * k), multiply(kr, kr)));
        return spectra(kr, kz, k, eps, s).map((f, n) => times(f, n === 3 ? h1 : h0, complex(0, side / 2)));
      },
      [0, 36 / rho],
      -1 / rho,
      () => 6 / rho,
    ),
  );
  return lines[0]!.map((x, n) => add(x, lines[1]![n]!));
}

/** Quasi-static images of K, G_zz and T: what the tables leave out. */
function images(k: number, eps: Complex, rho: number, s: number): Complex[] {
  const { scalar, vertical, cross } = quasiStaticImages(eps);
  const r = Math.hypot(rho, s);
  const wave = scale(exponential(complex(0, -k * r)), 1 / (4 * Math.PI * r));
  const upright = scale(exponential(complex(0, -k * s)), 1 / (4 * Math.PI));
  const coupled = rho === 0 ? zero : scale(subtract(upright, scale(wave, s)), 1 / rho);
  return [zero, multiply(scalar, wave), multiply(vertical, wave), multiply(cross, coupled)];
}

/** Numbers between 0 and 1 that look random (Park and Miller 1988). */
function* scattered(): Generator<number, never> {
  for (let state = 20; ; ) {
    state = (state * 48271) % 2147483647;
    yield state / 2147483647;
  }
}

describe("reflected kernels of wires close to the soil", () => {
  const soils = [
    { name: "poor", relativePermittivity: 3, conductivity: 1e-4 },
    { name: "average", relativePermittivity: 13, conductivity: 5e-3 },
    { name: "nearly lossless", relativePermittivity: 4, conductivity: 1e-6 },
    { name: "sea", relativePermittivity: 80, conductivity: 5 },
  ];
  const numbers = scattered();
  const between = (low: number, high: number): number => low * (high / low) ** numbers.next().value;
  it.each(soils)("are exact to 1e-6 of the free-space kernel with their images: $name", (soil) => {
    for (const frequency of [1.8e6, 7.1e6, 28.5e6]) {
      const k = (2 * Math.PI * frequency) / 299792458;
      const eps = complexPermittivity(soil, frequency);
      const reach = { smallestSum: 0.002, largestSum: 0.1, largestDistance: 20, steep: true, lessImages: true };
      const sample = octaveSampler(reach, (part) => buildSpectrum(k, eps, part), sumSpectrum);
      const table = buildKernelTable(k, reach, sample);
      expect(table.unresolved).toBeLessThan(4e-7);
      const out = new Float64Array(8);
      const random = [1, 2].map(() => [between(1e-3, 20), between(0.002, 0.1)] as const);
      for (const [rho, s] of [[0, 0.002], [20, 0.002], [0.004, 0.002], ...random] as const) {
        const exact = definition(k, eps, rho, s);
        const apart = images(k, eps, rho, s);
        table.lookUp(rho, s, out);
        exact.forEach((value, kind) => {
          const factor = kind === 3 ? rho : 1;
          const ours = add(complex(out[2 * kind]! * factor, out[2 * kind + 1]! * factor), apart[kind]!);
          const error = Math.hypot(ours.re - value.re, ours.im - value.im) * 4 * Math.PI * Math.hypot(rho, s);
          expect(error, `${kind} at ${rho}, ${s}, ${frequency}`).toBeLessThan(1e-6);
        });
      }
    }
  });
});
