/** Parameters as typed on the page, read in the units people write, held to each parameter's range. */
import type { ParameterDefinition, Parameters, ParameterValue, Question } from "@feedpath/engine";
import { parseQuantity, parseSpan } from "@feedpath/station-file";
import type { ParameterProblem, TypedParameters } from "./messages";

/** Kinds of quantity of the station file for those of parameters. */
const quantityKinds = {
  none: "number",
  length: "length",
  lengthSpan: "length",
  frequency: "frequency",
  frequencySpan: "frequency",
  angle: "angle",
  impedance: "impedance",
  temperature: "temperature",
  time: "time",
  power: "power",
  decibels: "decibels",
} as const;

type Reading = { readonly value: ParameterValue } | { readonly message: string };

/** SI values of what was typed; empty fields are left out. `bands` are the names the file has. */
export function readParameters(
  { parameters: definitions }: Pick<Question, "parameters">,
  bands: readonly string[],
  typed: TypedParameters,
): { readonly parameters: Parameters; readonly problems: readonly ParameterProblem[] } {
  const parameters: Record<string, ParameterValue> = {};
  const problems: ParameterProblem[] = [];
  for (const definition of definitions) {
    const text = typed[definition.name]?.trim() ?? "";
    if (text === "") continue;
    const read = readParameter(definition, text);
    if ("message" in read) problems.push({ name: definition.name, message: read.message });
    else parameters[definition.name] = read.value;
  }
  // A band of the station looked at before is no mistake of the person: the first band is taken, and the field shows it.
  if (typed.band && bands.includes(typed.band)) parameters.band = typed.band;
  return { parameters, problems };
}

function readParameter(definition: ParameterDefinition, text: string): Reading {
  const { dimension, words, least, most } = definition;
  if (dimension === "word")
    return words.includes(text) ? { value: text } : { message: `"${text}" is not one of ${words.join(", ")}.` };
  if (dimension === "name" || words.includes(text)) return { value: text };
  const rule = { least, most };
  const span = dimension === "lengthSpan" || dimension === "frequencySpan";
  const read = span
    ? parseSpan(text, quantityKinds[dimension], rule)
    : parseQuantity(text, quantityKinds[dimension], rule);
  if (!read.ok) return { message: read.fault.message };
  if ("from" in read.value) return { value: read.value };
  const { value, low, high } = read.value;
  return low === high
    ? { value }
    : { message: `"${text}" is a range; here stands one value. Ranges belong in the file.` };
}
