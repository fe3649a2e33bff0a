/** What gets out of a line: through the shield of a coaxial one, off the ends of an open pair. */
import type { BuiltLine, CoaxialLine } from "../../lines/lineModel";
import { radiationLoss } from "../../lines/radiationLoss";
import { shieldCoupling } from "../../lines/shieldCoupling";
import { magnitude } from "../../numerics/complex";

export interface ShieldLeak {
  /** Ohm/m, magnitude. */
  readonly transferImpedance: number;
  /** dB: power inside over the most that a line of any length gives to either end outside. */
  readonly screening: number;
  /** The same by the other model of a braid's holes; equal where there is no braid. */
  readonly otherScreening: number;
  /** dB over the length asked for, at the outside's end near the source. */
  readonly nearEnd: number;
}

/** dB beyond which nothing is measured: a closed tube. Our rule. */
const closed = 180;

/** Null where a braid is not known in detail, or where a closed wall lets nothing through that could be measured. `length` in m. */
export function shieldLeak(line: BuiltLine | null, frequency: number, length: number): ShieldLeak | null {
  if (line?.kind !== "coaxial") return null;
  const [one, other] = [
    coupling(line, frequency, length, "Tyni 1976"),
    coupling(line, frequency, length, "Vance 1975"),
  ];
  if (one === null || other === null || !(one.screeningAttenuation < closed)) return null;
  return {
    transferImpedance: magnitude(one.transferImpedance),
    screening: one.screeningAttenuation,
    otherScreening: other.screeningAttenuation,
    nearEnd: one.nearEnd,
  };
}

const coupling = (line: CoaxialLine, frequency: number, length: number, model: "Tyni 1976" | "Vance 1975") =>
  shieldCoupling(line, frequency, length, undefined, model);

/** Share of the power carried that an open pair sends by itself; null for anything else. */
export const pairSends = (line: BuiltLine | null, frequency: number, length: number): number | null =>
  line?.kind === "parallel-wire" ? radiationLoss(line, frequency, length).share : null;
