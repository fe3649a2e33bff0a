/** The option line of a Touchstone 1.1 file: "# MHz S RI R 50", any order, any case, every item optional. */
import { faulty, type Parsed, parsed } from "../units/fault";
import { nearestWord, orList, shown } from "../units/nearest";

export type NumberFormat = "MA" | "DB" | "RI";
export type Parameter = "S" | "Y" | "Z";

export interface Options {
  /** Hz per written unit of frequency. */
  readonly scale: number;
  readonly parameter: Parameter;
  readonly format: NumberFormat;
  /** Reference resistance, ohm. */
  readonly reference: number;
}

const scales: Readonly<Record<string, number>> = { HZ: 1, KHZ: 1e3, MHZ: 1e6, GHZ: 1e9 };
const parameters: readonly string[] = ["S", "Y", "Z"];
const formats: readonly string[] = ["MA", "DB", "RI"];
const numberPattern = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d{1,4})?$/i;

/** A number of the file, or null: "NaN", "1,5" and an overflow are none. */
export function fileNumber(text: string): number | null {
  const value = numberPattern.test(text) ? Number(text) : Number.NaN;
  return Number.isFinite(value) ? value : null;
}

const known = [...Object.keys(scales), ...parameters, ...formats, "R"];

/** Reads the words after `#`. Defaults of the specification: GHz, S, MA, R 50. */
export function parseOptions(words: readonly string[]): Parsed<Options> {
  let options: Options = { scale: 1e9, parameter: "S", format: "MA", reference: 50 };
  for (let at = 0; at < words.length; at++) {
    const word = (words[at] ?? "").toUpperCase();
    const scale = Object.hasOwn(scales, word) ? scales[word] : undefined;
    if (scale !== undefined) options = { ...options, scale };
    else if (parameters.includes(word)) options = { ...options, parameter: word as Parameter };
    else if (formats.includes(word)) options = { ...options, format: word as NumberFormat };
    else if (word === "R") {
      const reference = referenceOf(words.slice(at + 1));
      if (!reference.ok) return reference;
      options = { ...options, reference: reference.value };
      at++;
    } else return unknownOption(words[at] ?? "");
  }
  return parsed(options);
}

function referenceOf(after: readonly string[]): Parsed<number> {
  const [first, second] = after;
  if (first === undefined) return faulty("R stands without its resistance.", "R 50");
  const value = fileNumber(first);
  if (value === null || value <= 0) {
    return faulty(`The reference resistance "${shown(first)}" must be a number greater than zero.`, "R 50");
  }
  if (second !== undefined && fileNumber(second) !== null) {
    return faulty("One reference resistance for each port is not read yet: the file needs one for all ports.", "R 50");
  }
  return parsed(value);
}

function unknownOption(word: string): Parsed<Options> {
  if (/^[GH]$/i.test(word)) {
    return faulty(`${word.toUpperCase()} parameters are not read: save the file with S parameters.`, "S, Y or Z");
  }
  const near = nearestWord(word, known);
  const hint = near === null ? `Expected: ${orList(known)}.` : `Nearest: ${near}.`;
  return faulty(`"${shown(word)}" is no option of a Touchstone file. ${hint}`, orList(known), {
    nearest: near,
    mend: near,
  });
}
