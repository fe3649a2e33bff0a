import type { ParameterDefinition, ParameterValue, Problem } from "@feedpath/engine";
import { nearestWord, parseQuantity, parseSpan } from "@feedpath/station-file";
import { commandProblem, type Mistake } from "../tell/commandProblem";
import { exampleValue, optionName } from "./optionName";

type Reading = { readonly value: ParameterValue } | { readonly problem: Problem };

const fault = (mistake: Mistake): Reading => ({ problem: commandProblem(mistake) });

function readWord(definition: ParameterDefinition, written: string): Reading {
  if (definition.words.includes(written)) return { value: written };
  const words = definition.words.map((word) => `"${word}"`).join(", ");
  return fault({
    place: optionName(definition),
    found: written,
    expected: `one of ${words}`,
    message: `${optionName(definition)}: "${written}" is not one of ${words}.`,
    nearest: nearestWord(written, definition.words),
  });
}

/** Dimension names of the station file for those of parameters. */
const written = {
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

/** Reads what stands after an option, in the units people write, into SI units, held to the parameter's range. */
export function readParameter(definition: ParameterDefinition, text: string): Reading {
  const { dimension } = definition;
  if (dimension === "word") return readWord(definition, text);
  if (dimension === "name" || definition.words.includes(text)) return { value: text };
  const rule = { least: definition.least, most: definition.most };
  const isSpan = dimension === "lengthSpan" || dimension === "frequencySpan";
  const read = isSpan ? parseSpan(text, written[dimension], rule) : parseQuantity(text, written[dimension], rule);
  if (!read.ok) {
    const { message, expected, mend, nearest } = read.fault;
    const place = optionName(definition);
    const example = `For example: ${place} ${exampleValue(definition)}`;
    const words = definition.words.length > 0 ? ` Or one of: ${definition.words.join(", ")}.` : "";
    const said = `${place} "${text}": ${message} ${example}${words}`;
    return fault({ place, found: text, expected, message: said, nearest: mend ?? nearest });
  }
  if ("from" in read.value) return { value: read.value };
  const { value, low, high } = read.value;
  if (low === high) return { value };
  return fault({
    place: optionName(definition),
    found: text,
    expected: "one value",
    message: `${optionName(definition)}: "${text}" is a range. A question is asked with one value; ranges belong in the station file.`,
  });
}
