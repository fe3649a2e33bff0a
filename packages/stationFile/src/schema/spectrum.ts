/** Values by frequency. */
import type { ChokePart, Quantity } from "@feedpath/engine";
import * as z from "zod";
import type { DimensionName } from "../units/dimensions";
import { parseQuantity, type QuantityRule } from "../units/parseQuantity";
import { textOr } from "./choice";
import { quantity } from "./values";

/** A value by frequency, as a choke has it. */
type Spectrum = ChokePart["resistance"];

/** A value by frequency: one value, or points. */
export function spectrum(dimension: DimensionName, rule: QuantityRule = {}) {
  return textOr(quantity(dimension, rule).transform(constant), points(dimension, rule));
}

const constant = (value: Quantity): Spectrum => ({ kind: "constant", quantity: value });

/** `{ 3.5 MHz: 1.2 kohm, 7 MHz: 3 kohm }`, sorted by frequency. */
export const points = (dimension: DimensionName, rule: QuantityRule = {}) =>
  z
    .record(z.string(), quantity(dimension, rule))
    .meta({
      description: "Values by frequency: { 3.5 MHz: ..., 7 MHz: ... }",
      // Keys are frequencies: so an editor tells points from { resistance, reactance }.
      propertyNames: { type: "string", pattern: "Hz *$" },
    })
    .transform((byFrequency, context): Spectrum => {
      const found = Object.entries(byFrequency).map(([key, value]) => {
        const frequency = parseQuantity(key, "frequency", { above: 0 });
        if (!frequency.ok) {
          context.addIssue({
            code: "custom",
            path: [key],
            message: frequency.fault.message,
            params: { fault: frequency.fault, at: "key" },
          });
        }
        return { frequency: frequency.ok ? frequency.value.value : 0, quantity: value };
      });
      const rising = found.sort((a, b) => a.frequency - b.frequency);
      const twice = rising.some(({ frequency }, index) => frequency === rising[index - 1]?.frequency);
      if (twice) context.addIssue({ code: "custom", message: "One frequency stands here twice." });
      if (rising.length === 0) context.addIssue({ code: "custom", message: "At least one frequency is needed here." });
      return { kind: "points", points: rising };
    });
