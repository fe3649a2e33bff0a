/** Bytes of a file to text, strictly: what is not UTF-8 is told, never guessed. */
import type { Problem } from "@feedpath/engine";
import { limits } from "./limits";
import { problemAt, sourceText } from "./sourceText";

export interface DecodedText {
  /** Empty when there is a problem. */
  readonly text: string;
  readonly problems: readonly Problem[];
}

/**
 * Decodes the bytes of a station file. UTF-16 (known by its byte order mark) and bytes that are no UTF-8 are problems;
 * so is a file too long for a station. A UTF-8 byte order mark is dropped. For hosts that read bytes; others give text.
 */
export function decodeStationBytes(bytes: Uint8Array, fileName: string): DecodedText {
  const refuse = (text: string, message: string): DecodedText => {
    const source = sourceText(fileName, text);
    const fault = { message, expected: "UTF-8 text", nearest: null, mend: null };
    return { text: "", problems: [problemAt(source, [text.length, text.length], "", fault)] };
  };
  if (bytes.length > 4 * limits.characters) {
    return refuse(
      "",
      `The file has ${bytes.length} bytes; a station file has at most ${limits.characters} characters.`,
    );
  }
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
    return refuse("", "The file is UTF-16 text. Save it as UTF-8.");
  }
  const start = first === 0xef && second === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  let text = "";
  for (let at = start; at < bytes.length; ) {
    const character = nextCharacter(bytes, at);
    if (!character) return refuse(text, `Byte ${at + 1} is not UTF-8. Save the file as UTF-8.`);
    text += String.fromCodePoint(character.code);
    at += character.length;
  }
  return { text, problems: [] };
}

/** Lead bytes by their count of following bytes: mask of the value, least code point (shorter forms are not allowed). */
const forms = [
  { from: 0x00, to: 0x7f, mask: 0x7f, more: 0, least: 0 },
  { from: 0xc2, to: 0xdf, mask: 0x1f, more: 1, least: 0x80 },
  { from: 0xe0, to: 0xef, mask: 0x0f, more: 2, least: 0x800 },
  { from: 0xf0, to: 0xf4, mask: 0x07, more: 3, least: 0x10000 },
] as const;

/** One character at an offset, or null where the bytes are no UTF-8 (RFC 3629). */
function nextCharacter(bytes: Uint8Array, at: number): { readonly code: number; readonly length: number } | null {
  const lead = bytes[at] ?? 0;
  const form = forms.find(({ from, to }) => lead >= from && lead <= to);
  if (!form) return null;
  let code = lead & form.mask;
  for (let next = 1; next <= form.more; next++) {
    const byte = bytes[at + next] ?? 0;
    if ((byte & 0xc0) !== 0x80) return null;
    code = (code << 6) | (byte & 0x3f);
  }
  const surrogate = code >= 0xd800 && code <= 0xdfff;
  return code < form.least || code > 0x10ffff || surrogate ? null : { code, length: form.more + 1 };
}
