/** Lengths of line as two-ports: in the path, or as a stub across it. */
import { type LineConstants, matchedLoss } from "../lines/lineConstants";
import { type Complex, divide, hyperbolicCosine, hyperbolicSine, multiply, scale } from "../numerics/complex";
import { shuntAdmittance, type TwoPort } from "./twoPort";

/** Beyond this matched loss (dB) nothing is left to compute with: its square comes near the range of double precision. */
export const greatestLineLoss = 2000;

/** `length` metres of line, exact. Refuses a length whose matched loss is beyond 2000 dB. */
export function lineTwoPort(constants: LineConstants, length: number): TwoPort {
  if (!(length >= 0 && matchedLoss(constants, length) <= greatestLineLoss)) {
    throw new RangeError(
      `line of ${length} m: expected 0 m or more and a loss of at most ${greatestLineLoss} dB, found ${matchedLoss(constants, length)} dB`,
    );
  }
  const theta = scale(constants.gamma, length);
  const [c, s] = [hyperbolicCosine(theta), hyperbolicSine(theta)];
  return { a: c, b: multiply(constants.z0, s), c: divide(s, constants.z0), d: c };
}

/** Admittance (S) of a line whose far end is open or shorted; a shorted stub of no length is refused, it is a short circuit. */
export function stubAdmittance(constants: LineConstants, length: number, farEnd: "open" | "shorted"): Complex {
  if (!(length > 0)) throw new RangeError(`stub of ${length} m: expected a length above 0 m`);
  // Beyond a few hundred dB the far end is not seen any more.
  const seen = Math.min(length, 400 / matchedLoss(constants, 1));
  const { a, b, c } = lineTwoPort(constants, seen);
  return farEnd === "open" ? divide(c, a) : divide(a, b);
}

/** A stub across the line. */
export const stubTwoPort = (constants: LineConstants, length: number, farEnd: "open" | "shorted"): TwoPort =>
  shuntAdmittance(stubAdmittance(constants, length, farEnd));
