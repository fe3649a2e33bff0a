/** Lines between the feeds of an antenna, and stubs across them, as one admittance matrix in parallel with the antenna's. */
import { lineConstants } from "../lines/lineConstants";
import { lineTwoPort, stubAdmittance } from "../networks/lineTwoPort";
import { add, type Complex, divide, negate, reciprocal, zero } from "../numerics/complex";
import type { Joined } from "../station/antennaDescription";

/**
 * Siemens between the named feeds at `frequency` (Hz): add it to the antenna's own admittance and leave the feeds that no
 * path reaches open. What the lines take at voltages V is Re(V* Y V). Exact, with loss. A line's first conductor lies on
 * the `from` side of both feeds, its second one on the `into` side; crossed, it is the other way round at its far end.
 * Throws RangeError for a feed that is none of the names.
 */
export function joinedAdmittance(joined: readonly Joined[], feeds: readonly string[], frequency: number): Complex[][] {
  const matrix = feeds.map(() => feeds.map(() => zero));
  const put = (row: number, column: number, y: Complex): void => {
    matrix[row]![column] = add(matrix[row]![column]!, y);
  };
  for (const { line, length, from, farEnd } of joined) {
    const near = portOf(feeds, from);
    const constants = lineConstants(line.model, frequency);
    if (typeof farEnd === "string") {
      put(near, near, stubAdmittance(constants, length.value, farEnd));
      continue;
    }
    const far = portOf(feeds, farEnd.feed);
    const { a, b } = lineTwoPort(constants, length.value);
    const own = divide(a, b);
    const mutual = farEnd.crossed ? reciprocal(b) : negate(reciprocal(b));
    put(near, near, own);
    put(far, far, own);
    put(near, far, mutual);
    put(far, near, mutual);
  }
  return matrix;
}

function portOf(feeds: readonly string[], name: string): number {
  const port = feeds.indexOf(name);
  if (port < 0) throw new RangeError(`joined lines: no feed is called "${name}"; the feeds are ${feeds.join(", ")}`);
  return port;
}
