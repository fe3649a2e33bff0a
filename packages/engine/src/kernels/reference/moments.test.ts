import { describe, expect, it } from "vitest";
import { gaussLegendre } from "../../numerics/gaussLegendre";
import type { Elements } from "../door";
import { coaxialMoments } from "./coaxialMoments";
import { skewMoments } from "./skewMoments";

/** Composite Gauss rule with panels halving towards both ends: the brute force the closed forms are held against. */
function graded(f: (x: number) => number, from: number, to: number, halvings = 24): number {
  const rule = gaussLegendre(10);
  const half = (to - from) / 2;
  let sum = 0;
  for (const [end, direction] of [
    [from, 1],
    [to, -1],
  ] as const) {
    for (let k = 0; k <= halvings; k++) {
      const outer = half * 0.5 ** k;
      const inner = k === halvings ? 0 : outer / 2;
      rule.points.forEach((x, i) => {
        const at = inner + ((outer - inner) * (1 + x)) / 2;
        sum += ((outer - inner) / 2) * rule.weights[i]! * f(end + direction * at);
      });
    }
  }
  return sum;
}

/** Azimuth mean by brute force of the inner integral over x, itself in closed form for one azimuth (asinh). */
function bruteCoaxial(l: number, t0: number, t1: number, a: number, b: number, pick: (s: number, t: number) => number) {
  return (
    graded(
      (angle) => {
        const d = Math.sqrt((b - a) ** 2 + 4 * a * b * Math.sin(angle / 2) ** 2);
        return graded(
          (s) => {
            // Linear in t, hence exact from the value at t0 and the slope.
            const p0 = pick(s, t0);
            const slope = (pick(s, t1) - p0) / (t1 - t0);
            const whole = Math.asinh((t1 - s) / d) - Math.asinh((t0 - s) / d);
            const first = Math.hypot(t1 - s, d) - Math.hypot(t0 - s, d) + s * whole;
            return p0 * whole + slope * (first - t0 * whole);
          },
          0,
          l,
          16,
        );
      },
      0,
      Math.PI,
    ) / Math.PI
  );
}

describe("coaxial static moments", () => {
  const out = new Float64Array(4);
  const cases = [
    { name: "self", l: 0.1, t0: 0, t1: 0.1, a: 0.01, b: 0.01 },
    { name: "neighbour", l: 0.1, t0: 0.1, t1: 0.35, a: 0.01, b: 0.01 },
    { name: "short beside long", l: 0.0025, t0: 0.0025, t1: 1, a: 0.01, b: 0.01 },
    { name: "step in radius", l: 0.1, t0: 0.1, t1: 0.3, a: 0.005, b: 0.01 },
    { name: "apart", l: 0.1, t0: 0.25, t1: 0.3, a: 0.002, b: 0.002 },
  ];
  it.each(cases)("equal brute-force quadrature: $name", ({ l, t0, t1, a, b }) => {
    coaxialMoments(l, t0, t1, a, b, out);
    const m = t1 - t0;
    const ramps = [(s: number) => 1 - s / l, (s: number) => s / l];
    const sources = [(t: number) => 1 - (t - t0) / m, (t: number) => (t - t0) / m];
    for (let i = 0; i < 4; i++) {
      const brute = bruteCoaxial(l, t0, t1, a, b, (s, t) => ramps[i >> 1]!(s) * sources[i & 1]!(t));
      expect(Math.abs(out[i]! / brute - 1)).toBeLessThan(2e-7);
    }
  });
  it("exchange the ramps of a source that runs the other way", () => {
    const back = new Float64Array(4);
    coaxialMoments(0.1, 0.1, 0.35, 0.01, 0.01, out);
    coaxialMoments(0.1, 0.35, 0.1, 0.01, 0.01, back);
    expect([...back]).toEqual([out[1], out[0], out[3], out[2]]);
  });
});

describe("skew static moments", () => {
  const pair = (start: number[], direction: number[], length: number): Elements => ({
    count: 2,
    start: Float64Array.from([0, 0, 0, ...start]),
    direction: Float64Array.from([1, 0, 0, ...direction]),
    length: Float64Array.from([1, length]),
    radius: Float64Array.from([0.001, 0.001]),
  });
  const cases = [
    { name: "corner", elements: pair([1, 0, 0], [0, 1, 0], 0.7) },
    { name: "acute corner", elements: pair([1, 0, 0], [-Math.cos(0.5), Math.sin(0.5), 0], 0.7) },
    { name: "parallel, close", elements: pair([0.2, 0.05, 0], [1, 0, 0], 1.1) },
    { name: "antiparallel", elements: pair([1, 0.05, 0], [-1, 0, 0], 1) },
    { name: "passing over", elements: pair([0.4, -0.5, 0.03], [0, 1, 0], 1) },
  ];
  it.each(cases)("are symmetric under exchange of test and source: $name", ({ elements }) => {
    const forward = new Float64Array(4);
    const back = new Float64Array(4);
    skewMoments(elements, 0, elements, 1, forward);
    skewMoments(elements, 1, elements, 0, back);
    const swapped = [back[0]!, back[2]!, back[1]!, back[3]!];
    const size = Math.max(...forward);
    // The outer integral runs over the other element: agreement proves both quadratures.
    for (let i = 0; i < 4; i++) expect(Math.abs(forward[i]! - swapped[i]!) / size).toBeLessThan(3e-4);
  });
});
