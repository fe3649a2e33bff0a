/** Places, directions and conductors as people write them. */
import { exactly, type Place, type Quantity } from "@feedpath/engine";
import { plainSymbols } from "./amount";
import { faulty, type Parsed, parsed } from "./fault";
import { nearestWord, orList, shown } from "./nearest";
import { parseQuantity } from "./parseQuantity";

const axes: Readonly<Record<string, { readonly axis: 0 | 1 | 2; readonly sign: 1 | -1 }>> = {
  east: { axis: 0, sign: 1 },
  west: { axis: 0, sign: -1 },
  north: { axis: 1, sign: 1 },
  south: { axis: 1, sign: -1 },
  up: { axis: 2, sign: 1 },
  under: { axis: 2, sign: -1 },
};
const axisNames = ["east or west", "north or south", "up or under"] as const;
const expectedPlace = "[9 m east, 2 m north, 4 m up]; any left out is 0 m";

type Length = Parsed<Quantity>;

const signed = (q: Quantity, sign: 1 | -1): Quantity =>
  sign === 1 ? q : { ...q, value: 0 - q.value, low: 0 - q.high, high: 0 - q.low };

/** "5 cm under" -> the axis and the signed quantity. */
export function parseOffset(written: string): Parsed<{ readonly axis: 0 | 1 | 2; readonly quantity: Quantity }> {
  const text = plainSymbols(written);
  const word = /[A-Za-z]+$/.exec(text)?.[0] ?? "";
  const way = Object.hasOwn(axes, word) ? axes[word] : undefined;
  if (!way) {
    const near = word.length > 2 ? nearestWord(word, Object.keys(axes)) : null;
    const hint = near === null ? `Expected: ${expectedPlace}.` : `Nearest: ${near}.`;
    return faulty(`"${shown(written)}" does not say which way. ${hint}`, expectedPlace, {
      nearest: near,
      mend: near === null ? null : `${text.slice(0, text.length - word.length)}${near}`,
    });
  }
  const length = parseQuantity(text.slice(0, text.length - word.length), "length", { least: 0 });
  return length.ok ? parsed({ axis: way.axis, quantity: signed(length.value, way.sign) }) : length;
}

const isPlain = (written: readonly string[]): boolean =>
  written.length === 3 && written.every((text) => !/(east|west|north|south|up|under)\s*$/.test(text));

/** Index of the offset of a place that is wrong by itself; -1 where only the whole is. */
export const faultyOffset = (written: readonly string[]): number =>
  written.findIndex((text) => !(isPlain(written) ? parseQuantity(text, "length") : parseOffset(text)).ok);

/** A place from its list of offsets: named ways in any order, or three plain lengths x, y, z. */
export function parsePlace(written: readonly string[]): Parsed<Place> {
  if (isPlain(written)) return plainPlace(written);
  const found: (Quantity | null)[] = [null, null, null];
  for (const text of written) {
    const offset = parseOffset(text);
    if (!offset.ok) return offset;
    const { axis, quantity } = offset.value;
    if (found[axis]) {
      return faulty(`A place says ${axisNames[axis]} once; "${shown(text)}" says it again.`, expectedPlace);
    }
    found[axis] = quantity;
  }
  if (written.length === 0) return faulty(`A place needs at least one of ${orList(Object.keys(axes))}.`, expectedPlace);
  return parsed([found[0] ?? exactly(0), found[1] ?? exactly(0), found[2] ?? exactly(0)]);
}

function plainPlace(written: readonly string[]): Parsed<Place> {
  const [x, y, z] = [0, 1, 2].map((axis) => parseQuantity(written[axis] ?? "", "length")) as [Length, Length, Length];
  if (!x.ok) return x;
  if (!y.ok) return y;
  return z.ok ? parsed([x.value, y.value, z.value]) : z;
}

const compass = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"] as const;

/** Names of the eight directions, clockwise from north. */
export const directionWords: readonly string[] = compass;

/** A direction: a compass word, or an angle clockwise from true north. Radians, 0 to below 2 pi where exact. */
export function parseDirection(written: string): Parsed<Quantity> {
  const index = compass.indexOf(written.trim() as (typeof compass)[number]);
  if (index >= 0) return parsed(exactly((index * Math.PI) / 4));
  if (/^[A-Za-z-]+$/.test(written.trim())) {
    const near = nearestWord(written.trim(), compass);
    return faulty(
      `"${shown(written)}" is no direction. ${near === null ? "Expected: north, north-east, ... or an angle such as 250 deg." : `Nearest: ${near}.`}`,
      "north, north-east, ... or an angle such as 250 deg",
      { nearest: near, mend: near },
    );
  }
  return parseQuantity(written, "angle", { least: 0, most: 2 * Math.PI });
}
