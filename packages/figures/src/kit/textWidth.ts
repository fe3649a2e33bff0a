/**
 * Width of a line of text, estimated: a pure function cannot measure. The advances are rounded up from what
 * common system faces have (in em); the estimate errs towards too wide, so that what fits here fits on the screen.
 */
const narrow = new Set([..."ijl.,:;'|! \u00a0·()[]ftrI-"]);
const wide = new Set([..."mwMW%@Ω"]);

function advance(character: string): number {
  if (narrow.has(character)) return 0.36;
  if (wide.has(character)) return 0.87;
  if (/\d/.test(character)) return 0.58;
  if (/[A-Z]/.test(character)) return 0.66;
  if (/[a-z]/.test(character)) return 0.57;
  return 0.62;
}

/** Width in px of `text` at `size` px; bold text is wider. */
export function textWidth(text: string, size: number, weight: 400 | 600 | 700 = 400): number {
  let sum = 0;
  for (const character of text) sum += advance(character);
  return sum * size * (weight === 400 ? 1 : 1.05);
}

/** Words broken into lines no wider than `width` px, as far as single words allow. */
export function wrapText(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
