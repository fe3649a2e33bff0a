/** Every part of a path as a two-port at one frequency. The one place that knows what each kind of part does. */
import { type LineConstants, lineConstants, matchedLoss } from "../lines/lineConstants";
import type { LineEntry } from "../lines/lineModel";
import { higherModeNotes } from "../lines/te11";
import { complex } from "../numerics/complex";
import type { Quantity } from "../quantity/quantity";
import type { FilterPart, LinePart, Part, StubPart } from "../station/path";
import type { MeasuredNetwork } from "../station/station";
import { greatestLineLoss, lineTwoPort, stubTwoPort } from "./lineTwoPort";
import { acrossTwoPort, seriesTwoPort } from "./lumpedTwoPort";
import { type MeasuredResult, measuredTwoPort } from "./measuredTwoPort";
import { balunTwoPort, transformerTwoPort } from "./transformerTwoPort";
import { matchedAttenuator, shuntAdmittance, type TwoPort, through } from "./twoPort";

/** A two-port with what a reader must know of it, or the reason why there is none. */
export type PartResult = MeasuredResult;

export interface PartSurroundings {
  /** Touchstone data by file name. */
  readonly measured: Readonly<Record<string, MeasuredNetwork | null>>;
  /** Resistance (ohm) on which losses stated in dB alone hold: the transmitter's rated load. */
  readonly reference: number;
}

const plain = (twoPort: TwoPort, notes: readonly string[] = []): PartResult => ({ kind: "two-port", twoPort, notes });

/** One stated number cannot say how much of a loss lies in series and how much across: told wherever there is a loss. */
const splitNote = (loss: Quantity): readonly string[] =>
  loss.value > 0
    ? ["its loss is taken half in series and half across, which is exact only into its rated resistance"]
    : [];

/** True for a tuner that does something: in line and not set to bypass. Until tuners are solved its two-port is a plain through. */
export const isTunerAtWork = (part: Part): boolean =>
  part.kind === "tuner" && part.state === "in line" && part.set !== "bypassed";

/**
 * The part between the wires (differential mode) at `frequency` (Hz). Chokes and bonds pass everything here: they act on the
 * outside of the line. The `length` of line wound into a choke is not in its two-port; whoever joins the path adds it as line.
 * Throws RangeError for values that describe no real part (a spacing below the diameter, a negative loss).
 */
export function partTwoPort(part: Part, frequency: number, around: PartSurroundings): PartResult {
  if (part.state === "bypassed") return plain(through);
  const omega = 2 * Math.PI * frequency;
  switch (part.kind) {
    case "line":
      return linePart(part, frequency);
    case "stub":
      return stubPart(part, frequency);
    case "connector":
      return plain(matchedAttenuator(part.count * part.loss.value, around.reference));
    case "filter":
      return filterPart(part, frequency, around);
    case "arrestor":
      return plain(shuntAdmittance(complex(0, omega * part.capacitance.value)));
    case "balun":
      return plain(balunTwoPort(part), splitNote(part.loss));
    case "transformer":
      return plain(transformerTwoPort(part, omega), splitNote(part.loss));
    case "series":
      return plain(seriesTwoPort(part.component, omega));
    case "across":
      return plain(acrossTwoPort(part.component, omega));
    case "two-port":
      return fromFile(part.file, frequency, around);
    case "meter":
    case "bond":
    case "choke":
    case "tuner":
      return plain(through);
  }
}

/** Constants of the line in a part: its excess loss and temperature included. */
const linePartConstants = (part: LinePart, frequency: number): LineConstants =>
  lineConstants(part.line.model, frequency, {
    excessDecibelsPerMetre: part.excessLoss.value,
    temperature: part.temperature?.value ?? null,
  });

function linePart(part: LinePart, frequency: number): PartResult {
  const constants = linePartConstants(part, frequency);
  if (matchedLoss(constants, part.length.value) > greatestLineLoss) {
    return { kind: "not computed", reason: `the line "${part.name}" takes more than ${greatestLineLoss} dB` };
  }
  return plain(lineTwoPort(constants, part.length.value), [...constants.notes, ...modeNotes(part.line, frequency)]);
}

/** A data sheet does not know where a second mode begins; the build beside it does. A line that is its build tells by itself. */
const modeNotes = ({ model, build }: LineEntry, frequency: number): readonly string[] =>
  model.kind === "data sheet" && build?.kind === "coaxial" ? higherModeNotes(build, frequency) : [];

function stubPart(part: StubPart, frequency: number): PartResult {
  if (!(part.length.value > 0)) {
    return { kind: "not computed", reason: `the stub "${part.name}" has a length of ${part.length.value} m` };
  }
  const constants = lineConstants(part.line.model, frequency);
  return plain(stubTwoPort(constants, part.length.value, part.farEnd), constants.notes);
}

function filterPart(part: FilterPart, frequency: number, around: PartSurroundings): PartResult {
  if (part.file !== null) return fromFile(part.file, frequency, around);
  if (part.loss === null) {
    return { kind: "not computed", reason: `the filter "${part.name}" states neither a loss nor a file` };
  }
  return plain(matchedAttenuator(part.loss.value, around.reference));
}

function fromFile(file: string, frequency: number, around: PartSurroundings): PartResult {
  const network = around.measured[file];
  if (!network) return { kind: "not computed", reason: `the file "${file}" could not be read` };
  return measuredTwoPort(network, frequency);
}
