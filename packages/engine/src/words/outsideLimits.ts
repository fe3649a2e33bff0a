/** Cautions of `outside`, and what it does not tell. English. */
import { significantNumber } from "../quantity/format";
import { amperes, type OutsideFacts } from "./outside";

/** Rms volts from which a touch is told as such: our mark. */
const noticed = 10;

export function outsideCautions(f: OutsideFacts): string[] {
  const volts =
    f.endVolts !== null && f.endVolts >= noticed
      ? `${significantNumber(f.endVolts * Math.SQRT2, 2)} V peak stand at the transmitter: touching case, microphone or plugs while sending can burn. `
      : "";
  return [
    `${volts}Do not touch the line's shield, plugs or a choke while sending: up to ${amperes(f.largest.current)} flow on the outside of this line.`,
    "A choke that takes power grows hot: let it cool before you touch it, keep it off what can burn, and out of a wall.",
    "Never take off a safety earth to stop current on the line. Work on the mains earth is for licensed electricians.",
  ];
}

export function outsideNotCovered(f: OutsideFacts): string[] {
  return [
    "What the line radiates and what the antenna radiates cannot be told apart: both make one field. Told instead is what changes when the line is kept quiet.",
    f.endVolts === null
      ? "Volts between the transmitter's case and the soil."
      : f.earthed === null
        ? "Volts at the transmitter hold for a bare wire straight down; mains leads, other cables and a hand change them."
        : "Volts at the transmitter are those across its earth alone; the lead to it adds its own, and mains leads and other cables are not in the model.",
    "Whether a computer, a microphone or a neighbour's set is disturbed: that hangs on their own cables. Ferrite on those helps where the line is quiet already.",
    "A choke's own stray capacitance to its surroundings, and how its ohms change when it warms.",
  ];
}
