/** Capacitance of a pair whose insulation is known by its shape. */
import { add, type Complex, divide, multiply, scale, zero } from "../numerics/complex";
import { sleevedPairCapacitance } from "./crossSection/sleevedPair";
import { webbedCapacitance } from "./crossSection/webbedCapacitance";
import { fieldRadius } from "./crowdedWire";
import type { PairInsulation, ParallelWireLine } from "./lineModel";

/**
 * Capacitance over eps0 with the insulation's relative permittivity `own` and that `around` it, complex. Windows count as empty
 * lengths between filled ones.
 */
export function insulatedCapacitance(
  line: ParallelWireLine,
  insulation: PairInsulation,
  own: Complex,
  around: Complex,
): Complex {
  const ratio = divide(own, around);
  const { outerRadius } = insulation;
  const sleeved = { radius: fieldRadius(line.wire), outerRadius, spacing: line.spacing.value };
  if (insulation.form === "sleeves") return multiply(around, sleevedPairCapacitance(sleeved, ratio));
  const { filled, thickness } = insulation;
  if (!(filled >= 0 && filled <= 1)) {
    throw new RangeError(`pair with a web: ${filled} of its length filled; expected a share of 0 to 1`);
  }
  const empty = filled < 1 ? scale(sleevedPairCapacitance(sleeved, ratio), 1 - filled) : zero;
  const full = filled > 0 ? scale(webOf(line, { ...sleeved, thickness })(ratio), filled) : zero;
  return multiply(around, add(empty, full));
}

/** A line never changes, and its web is solved once. */
const webs = new WeakMap<ParallelWireLine, (ratio: Complex) => Complex>();

function webOf(line: ParallelWireLine, pair: Parameters<typeof webbedCapacitance>[0]): (ratio: Complex) => Complex {
  const known = webs.get(line) ?? webbedCapacitance(pair);
  webs.set(line, known);
  return known;
}
