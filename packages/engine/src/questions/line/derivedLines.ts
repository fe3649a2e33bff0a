/** Lines that no catalogue holds, from one that it holds: of another impedance, or two equal ones side by side. */
import type { Side } from "../../chain/resolve";
import { decibelsPerNeper, lineConstants } from "../../lines/lineConstants";
import type { LineEntry } from "../../lines/lineModel";
import { exactly } from "../../quantity/quantity";

interface Derived {
  /** Hz at which loss and velocity are those of the entry; near it they follow its conductors. */
  readonly frequency: number;
  /** Ohm. */
  readonly impedance: number;
  readonly side: Side;
  readonly designation: string;
}

/** dB/m, of a line of perfect conductors in air: a line by its data sheet has some loss, here none that shows. */
const leastLoss = 1e-9;

/** A line with the loss and the velocity of `entry`, and another impedance. */
export function derivedLine(entry: LineEntry, { frequency, impedance, side, designation }: Derived): LineEntry {
  const { velocityFactor, gamma } = lineConstants(entry.model, frequency);
  return {
    designation,
    model: {
      kind: "data sheet",
      side,
      impedance: exactly(impedance, "assumed"),
      velocityFactor: exactly(velocityFactor, "assumed"),
      loss: [{ frequency, decibelsPerMetre: exactly(Math.max(gamma.re * decibelsPerNeper, leastLoss), "assumed") }],
    },
    build: null,
    sources: [],
  };
}

/** Two equal coaxial lines, their shields joined at both ends, the two inner conductors as the pair: Z0 doubles, loss stays. */
export const sideBySide = (entry: LineEntry, impedance: number, frequency: number): LineEntry =>
  derivedLine(entry, {
    frequency,
    impedance: 2 * impedance,
    side: "balanced",
    designation: `two ${entry.designation} side by side`,
  });
