/** How well an antenna is to be known. */
import { type Complex, magnitude } from "../numerics/complex";

/** Goal for the estimated error of a port's impedance: the larger of both. */
export interface Accuracy {
  /** Ohm. */
  readonly ohms: number;
  /** Of the port's own impedance. */
  readonly share: number;
}

export const usualAccuracy: Accuracy = { ohms: 0.5, share: 0.005 };

/** Ohm, for a port of an impedance; between two ports the geometric mean of theirs counts. */
export const goalFor = ({ ohms, share }: Accuracy, impedance: Complex): number =>
  Math.max(ohms, share * magnitude(impedance));
