/** What every step of building a station shares: where problems and assumptions go. */
import { type Assumption, exactly, type LineEntry, type Quantity } from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { DimensionName } from "../units/dimensions";
import type { Fault } from "../units/fault";
import { formatAmount, formatQuantity } from "../units/formatQuantity";

export interface Build {
  readonly assumptions: Assumption[];
  /** Lines the file describes by name, in its order. */
  readonly lines: LineEntry[];
  /** Tells a problem about the key or the value at a path of the file. */
  readonly report: (path: KeyPath, at: "key" | "value", fault: Fault) => void;
}

export const fault = (
  message: string,
  expected: string,
  more: { readonly nearest?: string | null; readonly mend?: string | null } = {},
): Fault => ({ message, expected, nearest: more.nearest ?? null, mend: more.mend ?? null });

export interface Gap<T> {
  /** Path in the station, joined by dots. */
  readonly place: string;
  /** "duty of the transmitter". */
  readonly name: string;
  readonly value: T;
  /** The value in words. */
  readonly says: string;
  readonly reason: string;
}

/** The one way by which a value that the file leaves out gets into a station: it is listed with its reason. */
export function fill<T>(build: Build, written: T | undefined, gap: Gap<T>): T {
  if (written !== undefined) return written;
  build.assumptions.push({ place: gap.place, name: gap.name, value: gap.says, reason: gap.reason });
  return gap.value;
}

/** `fill` for a quantity in SI units. */
export function fillQuantity(
  build: Build,
  written: Quantity | undefined,
  dimension: DimensionName,
  gap: Omit<Gap<number>, "says">,
): Quantity {
  const value = exactly(gap.value, "assumed");
  return fill(build, written, { ...gap, value, says: formatQuantity(value, dimension) });
}

/** Lists what is taken for granted without filling a value: an unknown range, slack in a line, a feed left open. */
export const list = (build: Build, place: string, name: string, says: string, reason: string): void =>
  fill(build, undefined, { place, name, value: undefined, says, reason });

/** Lists a quantity that the file calls unknown and the catalogue knows the range of. */
export function listUnknown(
  build: Build,
  quantity: Quantity | null,
  place: string,
  name: string,
  dimension: DimensionName,
  reason: string,
): void {
  if (quantity?.basis !== "unknown") return;
  // The nominal value is a middle of the range: more than three digits of it would mean nothing.
  const [value, low, high] = [Number(quantity.value.toPrecision(3)), quantity.low, quantity.high].map((x) =>
    formatAmount(x, dimension),
  );
  list(build, place, name, `${value} (${low} to ${high})`, reason);
}
