import { describe, expect, it } from "vitest";
import { besselJComplex } from "./besselComplex";
import { complex, multiply } from "./complex";

/** J_n(z) by the trapezoid rule on its integral over a full period (DLMF 10.9.2), which converges geometrically. */
function integral(n: number, re: number, im: number): { re: number; im: number } {
  const count = 160 + 2 * Math.ceil(re + im);
  let sum = complex(0);
  for (let i = 0; i < count; i++) {
    const t = (2 * Math.PI * i) / count;
    // cos(n t - z sin t)
    const [a, b] = [n * t - re * Math.sin(t), -im * Math.sin(t)];
    sum = complex(sum.re + Math.cos(a) * Math.cosh(b), sum.im - Math.sin(a) * Math.sinh(b));
  }
  return complex(sum.re / count, sum.im / count);
}

describe("Bessel functions J of a complex argument", () => {
  it("agree with their integral over a period to 1e-10 of the envelope", () => {
    const out = new Float64Array(4);
    for (let i = 0; i < 400; i++) {
      const [re, im] = [60 * ((i * 0.754877666) % 1) ** 2, 12 * ((i * 0.569840291) % 1)];
      besselJComplex(re, im, out);
      const j1 = multiply(complex(re, im), complex(out[2], out[3]));
      const envelope = Math.exp(im) / Math.sqrt(1 + Math.hypot(re, im));
      const [e0, e1] = [integral(0, re, im), integral(1, re, im)];
      const where = `z = ${re} + j ${im}`;
      expect(Math.hypot(out[0]! - e0.re, out[1]! - e0.im) / envelope, where).toBeLessThan(1e-10);
      expect(Math.hypot(j1.re - e1.re, j1.im - e1.im) / envelope, where).toBeLessThan(1e-10);
    }
  });

  it("has J1(z)/z = 1/2 at 0", () => {
    const out = new Float64Array(4);
    besselJComplex(0, 0, out);
    expect([...out]).toEqual([1, 0, 0.5, 0]);
  });
});
