/** Sums a sampled Sommerfeld spectrum at all pairs of a distance and a height sum. */
import { besselJComplex } from "../../numerics/besselComplex";
import { besselJ0J1, besselJ1OverX } from "../../numerics/besselJ";
import type { ComplexPlane, SpectralSums, Spectrum } from "../door";

/** Evanescent nodes that have decayed to e^-20 (1 + rho/s) = 2e-9 of it are left out. */
const forgotten = 20;

const plane = (length: number): ComplexPlane => ({ re: new Float64Array(length), im: new Float64Array(length) });

const four = new Float64Array(4);

/** Bessel functions at one distance: J0(x), and J1(x)/x. */
function besselRow({ radial, waves, steep }: Spectrum, rho: number): readonly [ComplexPlane, ComplexPlane] {
  const [j0, j1] = [plane(radial.re.length), plane(radial.re.length)];
  for (let n = 0; n < radial.re.length; n++) {
    const x = radial.re[n]! * rho;
    if (n < waves && radial.im[n] !== 0) {
      besselJComplex(x, radial.im[n]! * rho, four);
      j0.im[n] = four[1]!;
      j1.re[n] = four[2]!;
      j1.im[n] = four[3]!;
    } else {
      besselJ0J1(x, four);
      if (steep) j1.re[n] = besselJ1OverX(x, four[1]!);
    }
    j0.re[n] = four[0]!;
  }
  return [j0, j1];
}

/** Depth factors e^{-j depth s} of the nodes that matter at one height sum, with distances up to `farthest`. */
function depthRow({ depth, waves }: Spectrum, s: number, farthest: number): ComplexPlane {
  const kept = forgotten + Math.log1p(farthest / s);
  let count = waves;
  while (count < depth.im.length && -depth.im[count]! * s <= kept) count++;
  const row = plane(count);
  for (let n = 0; n < count; n++) {
    const size = Math.exp(depth.im[n]! * s);
    row.re[n] = size * Math.cos(depth.re[n]! * s);
    row.im[n] = -size * Math.sin(depth.re[n]! * s);
  }
  return row;
}

const weighted = (weights: ComplexPlane, row: ComplexPlane): ComplexPlane => ({
  re: row.re.map((re, n) => weights.re[n]! * re - weights.im[n]! * row.im[n]!),
  im: row.re.map((re, n) => weights.re[n]! * row.im[n]! + weights.im[n]! * re),
});

/** Writes the sum of products into place p of `sum`. */
function addUp(factors: ComplexPlane, bessel: ComplexPlane, sum: ComplexPlane, p: number): void {
  let re = 0;
  let im = 0;
  for (let n = 0; n < factors.re.length; n++) {
    re += factors.re[n]! * bessel.re[n]! - factors.im[n]! * bessel.im[n]!;
    im += factors.re[n]! * bessel.im[n]! + factors.im[n]! * bessel.re[n]!;
  }
  sum.re[p] = re;
  sum.im[p] = im;
}

/** See Kernels.sumSpectrum. `rho` >= 0 and `s` > 0 in metres. */
export function sumSpectrum(spectrum: Spectrum, rho: Float64Array, s: Float64Array): SpectralSums {
  const count = rho.length * s.length;
  const sums = { horizontal: plane(count), scalar: plane(count), vertical: plane(count), cross: plane(count) };
  const rows = Array.from(rho, (distance) => besselRow(spectrum, distance));
  const farthest = rho.reduce((a, b) => Math.max(a, b), 0);
  const kinds = spectrum.steep
    ? (["horizontal", "scalar", "vertical", "cross"] as const)
    : (["horizontal", "scalar"] as const);
  s.forEach((sum, j) => {
    const depths = depthRow(spectrum, sum, farthest);
    for (const kind of kinds) {
      const factors = weighted(spectrum[kind], depths);
      rows.forEach(([j0, j1], i) => {
        addUp(factors, kind === "cross" ? j1 : j0, sums[kind], i * s.length + j);
      });
    }
  });
  return sums;
}
