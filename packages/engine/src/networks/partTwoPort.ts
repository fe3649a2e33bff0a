/** Every part of a path as a two-port at one frequency. The one place that knows what each kind of part does. */
import { type LineConstants, type LineOptions, lineConstants } from "../lines/lineConstants";
import { complex } from "../numerics/complex";
import type { FilterPart, LinePart, Part, PathEnd, StubPart } from "../station/path";
import type { MeasuredNetwork } from "../station/station";
import { attenuator } from "./attenuator";
import { lineTwoPort, stubTwoPort } from "./lineTwoPort";
import { acrossTwoPort, seriesTwoPort } from "./lumpedTwoPort";
import { measuredNotes, measuredTwoPort } from "./measuredTwoPort";
import { balunTwoPort, transformerTwoPort } from "./transformerTwoPort";
import { type Refused, shuntAdmittance, type TwoPort, through } from "./twoPort";

export interface PartSurroundings {
  /** Touchstone data by file name. */
  readonly measured: Readonly<Record<string, MeasuredNetwork | null>>;
  /** Resistance (ohm) on which losses stated in dB alone hold: the transmitter's rated load. */
  readonly reference: number;
}

/** True for a tuner that does something: in line and not set to bypass. Until tuners are solved its two-port is a plain through. */
export const isTunerAtWork = (part: Part): boolean =>
  part.kind === "tuner" && part.state === "in line" && part.set !== "bypassed";

/**
 * The part between the wires (differential mode) at `frequency` (Hz). Chokes and bonds pass everything here: they act on the
 * outside of the line. The `length` of line wound into a choke is not in its two-port; whoever joins the path adds it as line.
 * Throws RangeError for values that describe no real part (a spacing below the diameter, a negative loss).
 */
export function partTwoPort(part: Part, frequency: number, around: PartSurroundings): TwoPort | Refused {
  if (part.state === "bypassed") return through;
  const omega = 2 * Math.PI * frequency;
  switch (part.kind) {
    case "line":
      return linePart(part, frequency);
    case "stub":
      return stubPart(part, frequency);
    case "connector":
      return attenuator(part.count * part.loss.value, around.reference);
    case "filter":
      return filterPart(part, frequency, around);
    case "arrestor":
      return shuntAdmittance(complex(0, omega * part.capacitance.value));
    case "balun":
      return balunTwoPort(part);
    case "transformer":
      return transformerTwoPort(part, omega);
    case "series":
      return seriesTwoPort(part.component, omega);
    case "across":
      return acrossTwoPort(part.component, omega);
    case "two-port":
      return fromFile(part.file, frequency, around);
    case "meter":
    case "bond":
    case "choke":
    case "tuner":
      return through;
  }
}

/** Constants of the line in a part: its excess loss and temperature included. Null for parts without line. */
export function partLineConstants(part: Part, frequency: number): LineConstants | null {
  if (part.kind === "stub") return lineConstants(part.line.model, frequency);
  if (part.kind !== "line") return null;
  return lineConstants(part.line.model, frequency, lineOptions(part));
}

const lineOptions = (part: LinePart): LineOptions => ({
  excessDecibelsPerMetre: part.excessLoss.value,
  temperature: part.temperature?.value ?? null,
});

function linePart(part: LinePart, frequency: number): TwoPort {
  const constants = lineConstants(part.line.model, frequency, lineOptions(part));
  return lineTwoPort(constants, part.length.value);
}

function stubPart(part: StubPart, frequency: number): TwoPort | Refused {
  if (!(part.length.value > 0))
    return { refused: `has a length of ${part.length.value} m, and a stub needs one above 0 m` };
  return stubTwoPort(lineConstants(part.line.model, frequency), part.length.value, part.farEnd);
}

function filterPart(part: FilterPart, frequency: number, around: PartSurroundings): TwoPort | Refused {
  if (part.file !== null) return fromFile(part.file, frequency, around);
  if (part.loss === null) return { refused: "states neither a loss nor a file" };
  return attenuator(part.loss.value, around.reference);
}

function fromFile(file: string, frequency: number, around: PartSurroundings): TwoPort | Refused {
  const network = around.measured[file];
  if (!network) return { refused: `names the file ${file}, which could not be read` };
  return measuredTwoPort(network, frequency);
}

/** Sentences on where the numbers of a part are weaker than they look at `frequency` (Hz). */
export function partNotes(part: Part, frequency: number, around: PartSurroundings): readonly string[] {
  if (part.state === "bypassed") return [];
  const constants = partLineConstants(part, frequency);
  if (constants) return constants.notes;
  const file = part.kind === "two-port" || part.kind === "filter" ? part.file : null;
  const network = file === null ? null : around.measured[file];
  return network ? measuredNotes(network, frequency) : [];
}

/** Loss of a switch or a band splitter through the branch in use, as a section matched to `reference` (ohm). A tee has none. */
export const endTwoPort = (end: PathEnd, reference: number): TwoPort =>
  end.kind === "switch" || end.kind === "band splitter" ? attenuator(end.loss.value, reference) : through;
