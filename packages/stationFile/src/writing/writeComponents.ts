/** Components, spectra and values that may be missing, as texts. */
import type { Adjustable, ChokePart, Lumped, Quantity } from "@feedpath/engine";
import type { DimensionName } from "../units/dimensions";
import { formatAmount, formatQuantity, formatSpan } from "../units/formatQuantity";
import { type Branch, type Leaf, present, type Writing } from "./writing";

/** A value, or nothing. */
export const optional = (quantity: Quantity | null, dimension: DimensionName): Leaf =>
  quantity ? formatQuantity(quantity, dimension) : undefined;

/** One value, or values by frequency. */
export function writeSpectrum(value: ChokePart["resistance"], dimension: DimensionName): Leaf {
  if (value.kind === "constant") return formatQuantity(value.quantity, dimension);
  return Object.fromEntries(
    value.points.map(({ frequency, quantity }) => [
      formatAmount(frequency, "frequency"),
      formatQuantity(quantity, dimension),
    ]),
  );
}

export function writeAdjustable(
  writing: Writing,
  part: Adjustable | null,
  dimension: DimensionName,
  place: string,
): Leaf {
  if (!part) return undefined;
  return present({
    range: formatSpan(part.from, part.to, dimension),
    Q: writing.given(`${place}.q`, formatQuantity(part.q, "number")),
  });
}

export function writeLumped(writing: Writing, part: Lumped, place: string): Branch {
  return present({
    coil: optional(part.coil, "inductance"),
    capacitor: optional(part.capacitor, "capacitance"),
    resistor: optional(part.resistor, "impedance"),
    Q: part.resistor ? undefined : writing.given(`${place}.q`, formatQuantity(part.q, "number")),
  });
}
