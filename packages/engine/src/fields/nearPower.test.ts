import { describe, expect, it } from "vitest";
import type { Complex } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { type NearField, nearFieldSampler } from "./nearField";
import { drive, layered, sloping, soils } from "./nearField.fixture";

describe("near field", () => {
  it.each([...soils, layered])("carries the power of the feed out of a closed box: %j", (soil) => {
    const driven = drive(sloping, soil);
    const sampler = nearFieldSampler(driven);
    const low = [-5, -13, 1];
    const high = [6, 12, 15];
    const face = gaussLegendre(8);
    let flux = 0;
    for (let axis = 0; axis < 3; axis++) {
      const [p, q] = [(axis + 1) % 3, (axis + 2) % 3];
      for (const side of [low, high]) {
        face.points.forEach((x, i) => {
          face.points.forEach((y, n) => {
            const at: [number, number, number] = [0, 0, 0];
            at[axis] = side[axis]!;
            at[p] = low[p]! + ((high[p]! - low[p]!) * (1 + x)) / 2;
            at[q] = low[q]! + ((high[q]! - low[q]!) * (1 + y)) / 2;
            const area = (face.weights[i]! * face.weights[n]! * (high[p]! - low[p]!) * (high[q]! - low[q]!)) / 4;
            flux += area * (side === high ? 1 : -1) * outward(sampler(at), axis);
          });
        });
      }
    }
    expect(Math.abs(flux / driven.powerIn - 1)).toBeLessThan(1e-3);
  });

  /** Real part of E x H* along an axis. */
  function outward({ e, h }: NearField, axis: number): number {
    const [p, q] = [(axis + 1) % 3, (axis + 2) % 3];
    const product = (a: Complex, b: Complex): number => a.re * b.re + a.im * b.im;
    return product(e[p]!, h[q]!) - product(e[q]!, h[p]!);
  }
});
