/** Current moments of a solution's sample points. */
import { type Complex, complex } from "../numerics/complex";
import type { AntennaSolution } from "./antennaSolution";

/** A m at each point for 1 V at each port in turn, port after port. */
export function portMoments({ model: { points, currents } }: AntennaSolution): Complex[] {
  const { first, point, current, count } = points;
  const re = new Float64Array(count * currents.count);
  const im = new Float64Array(count * currents.count);
  for (let port = 0; port < currents.count; port++) {
    for (let n = 0; n < currents.length; n++) {
      const at = port * currents.length + n;
      for (let a = first[n]!; a < first[n + 1]!; a++) {
        re[port * count + point[a]!]! += current[a]! * currents.re[at]!;
        im[port * count + point[a]!]! += current[a]! * currents.im[at]!;
      }
    }
  }
  return Array.from(re, (x, i) => complex(x, im[i]!));
}
