/** Current moments of a solution's sample points. */
import type { AntennaSolution } from "./antennaSolution";

/** A m at each point for 1 V at each port in turn, port after port; re and im side by side. */
export function portMoments({ model: { points, currents } }: AntennaSolution): Float64Array {
  const { first, point, current, count } = points;
  const out = new Float64Array(2 * count * currents.count);
  for (let port = 0; port < currents.count; port++) {
    const to = 2 * port * count;
    for (let n = 0; n < currents.length; n++) {
      const re = currents.re[port * currents.length + n]!;
      const im = currents.im[port * currents.length + n]!;
      for (let a = first[n]!; a < first[n + 1]!; a++) {
        const at = to + 2 * point[a]!;
        out[at]! += current[a]! * re;
        out[at + 1]! += current[a]! * im;
      }
    }
  }
  return out;
}
