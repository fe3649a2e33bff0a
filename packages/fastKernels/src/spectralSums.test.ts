import { type Kernels, referenceKernels } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { fastKernels } from "./fastKernels";

type Spectrum = Parameters<Kernels["sumSpectrum"]>[0];

const scattered = (count: number, seed: number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => Math.sin(seed + 7919 * i));
const plane = (count: number, seed: number) => ({ re: scattered(count, seed), im: scattered(count, seed + 0.5) });

/** Nodes as a soil has them, with weights that look random. */
function spectrum(waves: number, evanescent: number, bent: boolean, steep: boolean): Spectrum {
  const count = waves + evanescent;
  const share = Float64Array.from({ length: count }, (_, n) => (n < waves ? (n + 1) / waves : (n - waves + 1) / 20));
  const zero = new Float64Array(count);
  return {
    waves,
    steep,
    radial: {
      re: share.map((x, n) => (n < waves ? x : Math.hypot(1, x))),
      im: bent ? share.map((x, n) => (n < waves ? 0.05 * Math.sin(3 * x) : 0)) : zero,
    },
    depth: {
      re: share.map((x, n) => (n < waves ? Math.sqrt(1.01 - x * x) : 0)),
      im: share.map((x, n) => (n < waves ? (bent ? -0.1 * x : 0) : -x)),
    },
    horizontal: plane(count, 1),
    scalar: plane(count, 2),
    vertical: plane(count, 3),
    cross: plane(count, 4),
  };
}

const rho = Float64Array.of(0, 0.001, 0.7, 9, 11, 24.9, 25.1, 70);
const s = Float64Array.of(0.02, 0.5, 3, 40);

describe("fast spectral sums", () => {
  it.each([
    { waves: 7, evanescent: 212, bent: false, steep: true },
    { waves: 10, evanescent: 101, bent: false, steep: false },
    { waves: 0, evanescent: 40, bent: false, steep: true },
    { waves: 30, evanescent: 33, bent: true, steep: true },
    { waves: 31, evanescent: 0, bent: true, steep: true },
  ])("are those of the readable twin: %o", ({ waves, evanescent, bent, steep }) => {
    const asked = spectrum(waves, evanescent, bent, steep);
    const [ours, theirs] = [fastKernels, referenceKernels].map((twin) => twin.sumSpectrum(asked, rho, s));
    // Both twins' complex Bessel functions are good to 1e-10 of e^{|im|} < 40 here, real ones to 1e-14.
    const each = bent ? 2 * 40 * 1e-10 : 1e-13;
    for (const kind of ["horizontal", "scalar", "vertical", "cross"] as const) {
      const size = asked[kind].re.reduce((sum, x, n) => sum + Math.hypot(x, asked[kind].im[n]!), 0);
      theirs![kind].re.forEach((re, p) => {
        expect(Math.hypot(ours![kind].re[p]! - re, ours![kind].im[p]! - theirs![kind].im[p]!)).toBeLessThan(
          each * size,
        );
      });
    }
  });
});
