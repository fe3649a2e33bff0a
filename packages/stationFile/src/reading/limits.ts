/** Caps held before anything is parsed: a station file may come from a stranger. */
import type { Fault } from "../units/fault";

export const limits = {
  /** UTF-16 units of the whole text. */
  characters: 128 * 1024,
  lines: 5_000,
  /** Flow brackets open at once, and columns of indentation (a block level needs at least one). */
  depth: 40,
  indentation: 200,
  /** Keys, values, list items in the file together; entries of one list or map. */
  nodes: 20_000,
  entries: 500,
  /** Problems told at once. */
  problems: 100,
  /** Characters of a value with a unit, of a name, of a note. */
  value: 120,
  name: 80,
  note: 20_000,
} as const;

export interface Offence {
  readonly offset: number;
  readonly length: number;
  readonly fault: Fault;
}

const offence = (offset: number, length: number, message: string, expected: string): Offence => ({
  offset,
  length,
  fault: { message, expected, nearest: null, mend: null },
});

/** First thing that forbids parsing at all, or null: size, characters that are no text, nesting. */
export function forbidding(text: string): Offence | null {
  if (text.length > limits.characters) {
    const message = `The file has ${text.length} characters; at most ${limits.characters} are read. A station needs a few hundred.`;
    return offence(0, 0, message, `at most ${limits.characters} characters`);
  }
  return foreignCharacter(text) ?? tooManyLines(text) ?? directive(text) ?? tooDeep(text);
}

function tooManyLines(text: string): Offence | null {
  let lines = 1;
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) {
    lines++;
    if (lines > limits.lines) {
      return offence(
        at,
        0,
        `The file has more than ${limits.lines} lines. A station needs a few dozen.`,
        "fewer lines",
      );
    }
  }
  return null;
}

function directive(text: string): Offence | null {
  const match = /^%.*/m.exec(text);
  if (!match) return null;
  return offence(
    match.index,
    match[0].length,
    "YAML directives (%) are not read. Leave the line out.",
    "the station alone",
  );
}

function foreignCharacter(text: string): Offence | null {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for.
  const match = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ufffd]/.exec(text);
  if (!match) return null;
  const code = (match[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
  const how =
    match[0] === "\ufffd"
      ? "The file is not UTF-8 text: a character here could not be decoded. Save it as UTF-8."
      : `The file holds a control character (U+${code}) here. A station file is plain UTF-8 text.`;
  return offence(match.index, 1, how, "plain UTF-8 text");
}

/** Upper estimate of nesting without parsing: brackets in quotes count too, so that the scan cannot be fooled. */
function tooDeep(text: string): Offence | null {
  let open = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 0x5b || code === 0x7b) open++;
    else if ((code === 0x5d || code === 0x7d) && open > 0) open--;
    if (open > limits.depth) {
      return offence(at, 1, `Brackets are nested more than ${limits.depth} deep here.`, "fewer nested brackets");
    }
  }
  const indent = /^[ \t\-?:]{200}/m.exec(text);
  if (!indent) return null;
  return offence(
    indent.index,
    1,
    `This line is indented by more than ${limits.indentation} columns.`,
    "less indentation",
  );
}
