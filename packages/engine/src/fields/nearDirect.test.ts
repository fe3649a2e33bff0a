import { describe, expect, it } from "vitest";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { vacuumImpedance } from "../numerics/vacuum";
import { addElementField, type CurrentElement } from "./nearDirect";

const k = 0.15;
const radius = 0.005;
const rule = gaussLegendre(12);
const ringCount = 40;
const pieces = 150;

/** Plain sums of E = -j k eta I u g - j (eta/k) I' grad g and H = I grad g x u over many places of a tube. */
function bruteForce(
  { start, direction: u, length, current, slope }: CurrentElement,
  point: readonly number[],
): Float64Array {
  const out = new Float64Array(12);
  // The wire lies along x: the ring is in y and z.
  for (let ring = 0; ring < ringCount; ring++) {
    const angle = (2 * Math.PI * (ring + 0.5)) / ringCount;
    for (let n = 0; n < pieces * rule.points.length; n++) {
      const half = length / pieces / 2;
      const s = half * (2 * Math.floor(n / rule.points.length) + 1 + rule.points[n % rule.points.length]!);
      const weight = (half * rule.weights[n % rule.points.length]!) / ringCount / (4 * Math.PI);
      const d = [
        point[0]! - start[0] - s,
        point[1]! - start[1] - radius * Math.cos(angle),
        point[2]! - start[2] - radius * Math.sin(angle),
      ];
      const r = Math.hypot(d[0]!, d[1]!, d[2]!);
      const [gr, gi] = [(weight * Math.cos(k * r)) / r, (-weight * Math.sin(k * r)) / r];
      const [hr, hi] = [(-gr + k * r * gi) / (r * r), (-gi - k * r * gr) / (r * r)];
      const [cr, ci] = [current[0] + slope[0] * s, current[1] + slope[1] * s];
      const turn = [0, d[2]!, -d[1]!];
      for (let c = 0; c < 3; c++) {
        const [vr, vi] = [u[c]! * (cr * gr - ci * gi), u[c]! * (cr * gi + ci * gr)];
        const [qr, qi] = [d[c]! * (slope[0] * hr - slope[1] * hi), d[c]! * (slope[0] * hi + slope[1] * hr)];
        out[2 * c]! += vacuumImpedance * (k * vi + qi / k);
        out[2 * c + 1]! -= vacuumImpedance * (k * vr + qr / k);
        out[6 + 2 * c]! += turn[c]! * (cr * hr - ci * hi);
        out[7 + 2 * c]! += turn[c]! * (cr * hi + ci * hr);
      }
    }
  }
  return out;
}

describe("field of an element", () => {
  const element: CurrentElement = {
    start: [-0.4, 0.1, 3],
    direction: [1, 0, 0],
    length: 1.1,
    radius,
    current: [1, -0.4],
    slope: [-0.7, 0.3],
  };
  // From 2 radii beside the wire and its ends to far away.
  const places = [
    [0.2, 0.1 + 2 * radius, 3],
    [0.2, 0.1, 3 - 10 * radius],
    [0.7 + 3 * radius, 0.1 + 0.5 * radius, 3],
    [-0.4, 0.1 + 7 * radius, 3 + 7 * radius],
    [0.3, 0.6, 3.4],
    [-8, 4, 9],
    [0.2, 90, -40],
  ];
  it.each(places)("is the plain sum over its tube at %d, %d, %d", (...point) => {
    const out = new Float64Array(12);
    addElementField(element, point, k, out);
    const exact = bruteForce(element, point);
    for (const part of [0, 6]) {
      const size = Math.hypot(...exact.subarray(part, part + 6));
      const apart = Math.hypot(...out.subarray(part, part + 6).map((x, i) => x - exact[part + i]!));
      expect(apart / size).toBeLessThan(1e-5);
    }
  });
});
