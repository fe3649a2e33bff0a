import { describe, expect, it } from "vitest";
import { besselJ0J1, besselJ1OverX } from "./besselJ";

const pair = new Float64Array(2);
function both(x: number): [number, number] {
  besselJ0J1(x, pair);
  return [pair[0]!, pair[1]!];
}

/** Oracle: ascending series (DLMF 10.2.2), good to 1e-13 for x <= 8. */
function series(order: number, x: number): number {
  let term = order === 0 ? 1 : x / 2;
  let sum = term;
  for (let k = 1; k < 60; k++) {
    term *= -(x * x) / 4 / (k * (k + order));
    sum += term;
  }
  return sum;
}

/** Oracle: trapezoid rule on the integral representation (DLMF 10.9.2), enough points for x < 600. */
function integral(order: number, x: number): number {
  const count = 2000;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const t = (2 * Math.PI * i) / count;
    sum += Math.cos(order * t - x * Math.sin(t));
  }
  return sum / count;
}

describe("J0 and J1", () => {
  it("agree with the ascending series and the integral", () => {
    for (let x = 0; x < 8; x += 0.0731) {
      expect(Math.abs(both(x)[0] - series(0, x))).toBeLessThan(1e-13);
      expect(Math.abs(both(x)[1] - series(1, x))).toBeLessThan(1e-13);
    }
    for (let x = 0.1; x < 500; x *= 1.07) {
      expect(Math.abs(both(x)[0] - integral(0, x))).toBeLessThan(1e-14);
      expect(Math.abs(both(x)[1] - integral(1, x))).toBeLessThan(1e-14);
    }
  });
  it("divides J1 by x without loss at small x", () => {
    expect(besselJ1OverX(0, 0)).toBe(0.5);
    for (const x of [1e-9, 0.01, 0.2, 0.2499, 0.2501, 3])
      expect(Math.abs(besselJ1OverX(x, both(x)[1]) - series(1, x) / x)).toBeLessThan(1.6e-14);
  });
});
