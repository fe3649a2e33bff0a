/** Finds the pairs of elements too close for plain quadrature and collects their static moments. */
import type { Elements, NearMoments } from "../door";
import { coaxialMoments } from "./coaxialMoments";
import { skewMoments } from "./skewMoments";

/** Closer than this many lengths of the longer element (centre to centre) ... */
const nearInLengths = 2.6;
/** ... or nearer end to end than this many radii, quadrature would miss the kernel's peak. */
const nearInRadii = 12;

function centreDistance(tests: Elements, e: number, sources: Elements, f: number): number {
  let sum = 0;
  for (let c = 0; c < 3; c++) {
    const p = tests.start[3 * e + c]! + (tests.direction[3 * e + c]! * tests.length[e]!) / 2;
    const q = sources.start[3 * f + c]! + (sources.direction[3 * f + c]! * sources.length[f]!) / 2;
    sum += (p - q) ** 2;
  }
  return Math.sqrt(sum);
}

function isNear(tests: Elements, e: number, sources: Elements, f: number): boolean {
  const [l, m] = [tests.length[e]!, sources.length[f]!];
  const distance = centreDistance(tests, e, sources, f);
  const radius = Math.max(tests.radius[e]!, sources.radius[f]!);
  return distance < nearInLengths * Math.max(l, m) || distance < nearInRadii * radius + (l + m) / 2;
}

/** Positions of the source's ends along the test's axis when both share it, else null. */
function sharedAxis(tests: Elements, e: number, sources: Elements, f: number): readonly [number, number] | null {
  let cosine = 0;
  let along = 0;
  let squared = 0;
  for (let c = 0; c < 3; c++) {
    const t = tests.direction[3 * e + c]!;
    const offset = sources.start[3 * f + c]! - tests.start[3 * e + c]!;
    cosine += t * sources.direction[3 * f + c]!;
    along += t * offset;
    squared += offset * offset;
  }
  const aside = squared - along * along;
  const radius = Math.min(tests.radius[e]!, sources.radius[f]!);
  if (1 - Math.abs(cosine) > 1e-12 || aside > (1e-3 * radius) ** 2 + 1e-14 * squared) return null;
  return [along, along + Math.sign(cosine) * sources.length[f]!];
}

/** See Kernels.nearMoments. Pairs with f >= e only: the matrix is symmetric. */
export function nearMoments(tests: Elements, sources: Elements): NearMoments {
  const rowStart = new Int32Array(tests.count + 1);
  const column: number[] = [];
  const moments: number[] = [];
  const out = new Float64Array(4);
  for (let e = 0; e < tests.count; e++) {
    for (let f = e; f < sources.count; f++) {
      if (!isNear(tests, e, sources, f)) continue;
      const axis = sharedAxis(tests, e, sources, f);
      if (axis) coaxialMoments(tests.length[e]!, axis[0], axis[1], tests.radius[e]!, sources.radius[f]!, out);
      else skewMoments(tests, e, sources, f, out);
      column.push(f);
      moments.push(out[0]!, out[1]!, out[2]!, out[3]!);
    }
    rowStart[e + 1] = column.length;
  }
  return {
    rowStart,
    column: Int32Array.from(column),
    moments: Float64Array.from(moments),
  };
}
