/** A decimal comma inside brackets splits a value in two ("{ length: 20,1 m }"): found here and mended as one value. */
import type { Fault } from "../units/fault";

type Range = readonly [number, number];

export interface CommaSlip {
  readonly range: Range;
  readonly fault: Fault;
}

const slip = (text: string, from: Range, to: Range): CommaSlip | null => {
  const between = text.slice(from[1], to[0]);
  const first = text.slice(...from);
  const second = text.slice(...to);
  if (between !== "," || !/\d$/.test(first) || !/^\d/.test(second) || second.length > 40 || first.length > 40)
    return null;
  const mend = `${first}.${second}`;
  const message = `"${first},${second}" has a decimal comma. Write the point: ${mend}.`;
  return { range: [from[0], to[1]], fault: { message, expected: "a decimal point", nearest: mend, mend } };
};

/** Items of a list that are the rest of the number before them, by their index. */
export function joinedByComma(text: string, ranges: readonly (Range | null)[]): ReadonlyMap<number, CommaSlip> {
  const slips = new Map<number, CommaSlip>();
  ranges.forEach((range, index) => {
    const before = ranges[index - 1];
    const found = before && range ? slip(text, before, range) : null;
    if (found) slips.set(index, found);
  });
  return slips;
}

/** Keys without a value that are the rest of the value before them, by their index. */
export function commaPairs(
  text: string,
  pairs: readonly { readonly key: unknown; readonly value: unknown }[],
  rangeOf: (node: unknown) => Range | null,
): ReadonlyMap<number, CommaSlip> {
  const slips = new Map<number, CommaSlip>();
  pairs.forEach((pair, index) => {
    const before = rangeOf(pairs[index - 1]?.value);
    const key = rangeOf(pair.key);
    if (!before || !key || (rangeOf(pair.value)?.[0] ?? key[1]) > key[1] + 1) return;
    const found = slip(text, before, key);
    if (found) slips.set(index, found);
  });
  return slips;
}
