/** A loss known only as decibels: connectors, switches, filters, meters. */
import { complex } from "../numerics/complex";
import type { TwoPort } from "./twoPort";

/**
 * Section of `loss` dB (0 or more) that is matched to `resistance` (ohm) on both sides: series and shunt loss in equal parts,
 * like a length of line without reactance. Into any other load it takes a different share, as a real part does.
 */
export function attenuator(loss: number, resistance: number): TwoPort {
  if (!(loss >= 0 && resistance > 0)) {
    throw new RangeError(
      `loss ${loss} dB on ${resistance} ohm: expected a loss of 0 dB or more and a resistance above 0`,
    );
  }
  const nepers = (loss * Math.LN10) / 20;
  const diagonal = complex(Math.cosh(nepers));
  const sine = Math.sinh(nepers);
  return { a: diagonal, b: complex(sine * resistance), c: complex(sine / resistance), d: diagonal };
}
