/** Lines and networks between the feeds of an antenna, or across them, as one admittance matrix in parallel with the antenna's. */
import { lineConstants } from "../lines/lineConstants";
import { lineTwoPort, stubAdmittance } from "../networks/lineTwoPort";
import { add, type Complex, divide, negate, reciprocal, zero } from "../numerics/complex";
import type { Joined } from "../station/antennaDescription";
import { lumpedImpedance } from "./lumpedImpedance";

/**
 * Siemens between the named feeds at `frequency` (Hz): add it to the antenna's own admittance and leave the feeds that no
 * path reaches open. What lines and networks take at voltages V is Re(V* Y V). Exact, with loss. The first conductor lies
 * on the `from` side of both feeds, the second one on the `into` side; crossed, it is the other way round at the far end.
 * Throws RangeError for a feed that is none of the names.
 */
export function joinedAdmittance(joined: readonly Joined[], feeds: readonly string[], frequency: number): Complex[][] {
  const matrix = feeds.map(() => feeds.map(() => zero));
  const put = (row: number, column: number, y: Complex): void => {
    matrix[row]![column] = add(matrix[row]![column]!, y);
  };
  for (const one of joined) {
    const near = portOf(feeds, one.from);
    const { own, mutual } = admittances(one, frequency);
    put(near, near, own);
    if (typeof one.farEnd === "string") continue;
    const far = portOf(feeds, one.farEnd.feed);
    const between = one.farEnd.crossed ? negate(mutual) : mutual;
    put(far, far, own);
    put(near, far, between);
    put(far, near, between);
  }
  return matrix;
}

/** Siemens at either end, and from one end to the other where it is not crossed. */
function admittances(one: Joined, frequency: number): { readonly own: Complex; readonly mutual: Complex } {
  if ("component" in one) {
    const across = one.farEnd === "across";
    const own = reciprocal(lumpedImpedance(one.component, 2 * Math.PI * frequency, across));
    return { own, mutual: negate(own) };
  }
  const constants = lineConstants(one.line.model, frequency);
  if (typeof one.farEnd === "string")
    return { own: stubAdmittance(constants, one.length.value, one.farEnd), mutual: zero };
  const { a, b } = lineTwoPort(constants, one.length.value);
  return { own: divide(a, b), mutual: negate(reciprocal(b)) };
}

function portOf(feeds: readonly string[], name: string): number {
  const port = feeds.indexOf(name);
  if (port < 0) throw new RangeError(`joined lines: no feed is called "${name}"; the feeds are ${feeds.join(", ")}`);
  return port;
}
