import { describe, expect, it } from "vitest";
import { fitRational } from "./rationalInterpolation";

/** Two functions with the poles -0.3 + 0.05j and 0.6 + 0.2j in common. */
function both(x: number): Float64Array {
  const part = (pole: readonly [number, number], factor: number): [number, number] => {
    const [a, b] = [x - pole[0], -pole[1]];
    const size = a * a + b * b;
    return [(factor * a) / size, (-factor * b) / size];
  };
  const [p, q] = [part([-0.3, 0.05], 0.1), part([0.6, 0.2], 1)];
  return Float64Array.of(p[0] + q[0], p[1] + q[1], 1 + p[0] - 2 * q[0], p[1] - 2 * q[1]);
}

const sampled = (count: number, f: (x: number) => Float64Array) =>
  Array.from({ length: count }, (_, i) => {
    const x = -Math.cos((Math.PI * (i + 0.5)) / count);
    return { x, values: f(x) };
  });

const worst = (count: number, f: (x: number) => Float64Array): number => {
  const fit = fitRational(sampled(count, f));
  let most = 0;
  for (let x = -1; x <= 1; x += 0.01) {
    const [found, truth] = [fit(x), f(x)];
    found.forEach((y, i) => {
      most = Math.max(most, Math.abs(y - truth[i]!));
    });
  }
  return most;
};

describe("rational interpolation", () => {
  it("gives functions of two poles exactly from six samples", () => {
    // Three support points hold two poles; the root of what is added to the diagonal remains.
    expect(worst(6, both)).toBeLessThan(1e-6);
  });

  it("goes through its support points", () => {
    const samples = sampled(7, both);
    const fit = fitRational(samples);
    expect(fit(samples[2]!.x)).toEqual(samples[2]!.values);
  });

  it("converges for functions of endlessly many poles in common", () => {
    const tangent = (x: number) => Float64Array.of(Math.tan(1.4 * x), 1 / Math.cos(1.4 * x));
    expect(worst(5, tangent)).toBeLessThan(worst(3, tangent));
    expect(worst(9, tangent)).toBeLessThan(1e-3);
  });

  it("is a constant from one sample", () => {
    expect(fitRational([{ x: 3, values: Float64Array.of(2, -1) }])(7)).toEqual(Float64Array.of(2, -1));
  });
});
