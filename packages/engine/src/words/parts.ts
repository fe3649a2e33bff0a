/** What a part of the path is, in a few words, as the file says it. English. */
import { metres, plainNumber, withPrefix } from "../quantity/format";
import type { Quantity, Spectrum } from "../quantity/quantity";
import type { Part } from "../station/path";

/** "1 kΩ to 5 kΩ", or one value. */
export function quantityText(q: Quantity, unit: string): string {
  const one = (x: number) => (unit === "m" ? metres(x) : withPrefix(x, unit, 3));
  return q.low === q.high ? one(q.value) : `${one(q.low)} to ${one(q.high)}`;
}

/** "1 kΩ to 5 kΩ"; of values by frequency, least and most of them. */
function spectrumText(s: Spectrum, unit: string): string {
  if (s.kind === "constant") return s.quantity.basis === "unknown" ? "not known" : quantityText(s.quantity, unit);
  const values = s.points.map((p) => p.quantity.value);
  const [least, most] = [Math.min(...values), Math.max(...values)].map((x) => withPrefix(x, unit, 3));
  return least === most ? `${least}` : `${least} to ${most} by frequency`;
}

const decibelText = (q: Quantity): string =>
  q.low === q.high ? `${plainNumber(q.value, 2)} dB` : `${plainNumber(q.low, 2)} to ${plainNumber(q.high, 2)} dB`;

/** The part behind an edge of the path; a switch or splitter has no part. */
export function saysOfPart(edge: {
  readonly kind: string;
  readonly name: string;
  readonly part: Part | null;
  readonly contactLoss: Quantity | null;
}): string {
  return edge.part ? saysOf(edge.part) : `${edge.kind} "${edge.name}"`;
}

function saysOf(part: Part): string {
  switch (part.kind) {
    case "line":
      return `${quantityText(part.length, "m")} of ${part.line.designation}`;
    case "stub":
      return `${quantityText(part.length, "m")} of ${part.line.designation}, ${part.farEnd}`;
    case "connector":
      return `${part.count} × ${part.series} connector`;
    case "filter":
      return part.loss ? `${part.response} filter, ${decibelText(part.loss)}` : `${part.response} filter`;
    case "choke":
      return `choke ${spectrumText(part.resistance, "Ω")}`;
    case "balun":
    case "transformer":
      return `${part.kind} ${quantityText(part.transmitterSide, "Ω")} to ${quantityText(part.antennaSide, "Ω")}`;
    case "tuner":
      return `tuner, ${part.network} network`;
    case "series":
    case "across":
      return componentText(part);
    default:
      return restOf(part);
  }
}

function componentText(part: Extract<Part, { kind: "series" | "across" }>): string {
  const { coil, capacitor, resistor } = part.component;
  const pieces = [
    coil && quantityText(coil, "H"),
    capacitor && quantityText(capacitor, "F"),
    resistor && quantityText(resistor, "Ω"),
  ];
  return `${pieces.filter((p) => p !== null).join(", ")} ${part.kind === "series" ? "in the line" : "across the line"}`;
}

function restOf(
  part: Exclude<
    Part,
    {
      kind:
        | "line"
        | "stub"
        | "connector"
        | "filter"
        | "choke"
        | "balun"
        | "transformer"
        | "tuner"
        | "series"
        | "across";
    }
  >,
): string {
  switch (part.kind) {
    case "meter":
      return "meter";
    case "arrestor":
      return part.form.endsWith("stub") ? part.form : `${part.form} arrestor`;
    case "bond":
      return `tied to ${part.earth}`;
    case "two-port":
      return part.file;
  }
}
