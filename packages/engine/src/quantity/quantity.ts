/** A value that knows how well it is known. Everything in SI units (see docs/conventions.md). */

/** Where a value comes from: stated or measured by the owner, from the catalogue, not known, or filled in by the reader. */
export type Basis = "stated" | "measured" | "catalogue" | "unknown" | "assumed";

export interface Quantity {
  readonly value: number;
  /** low <= value <= high; all three equal when no uncertainty is stated. */
  readonly low: number;
  readonly high: number;
  readonly basis: Basis;
  /** Quantities that carry the same word here move together, low with low and high with high ("soil"). */
  readonly tied?: string;
}

export const exactly = (value: number, basis: Basis = "stated"): Quantity => ({
  value,
  low: value,
  high: value,
  basis,
});

/** Known within ± bound; the bound is taken as two standard deviations. */
export const within = (value: number, bound: number, basis: Basis = "stated"): Quantity => ({
  value,
  low: value - bound,
  high: value + bound,
  basis,
});

/** Known only between two ends: nominal is the middle, or the geometric middle when they differ more than threefold. */
export function between(low: number, high: number, basis: Basis = "stated"): Quantity {
  const value = low > 0 && high > 3 * low ? Math.sqrt(low * high) : (low + high) / 2;
  return { value, low, high, basis };
}

export const isUncertain = (q: Quantity): boolean => q.low < q.value || q.high > q.value;

/** True for a Quantity inside a larger plain object: what the walk over uncertain inputs looks for. */
export function isQuantity(thing: unknown): thing is Quantity {
  return (
    typeof thing === "object" &&
    thing !== null &&
    "value" in thing &&
    "low" in thing &&
    "high" in thing &&
    "basis" in thing
  );
}

/** A value by frequency: one constant, or points interpolated on logarithmic scales. */
export type Spectrum =
  | { readonly kind: "constant"; readonly quantity: Quantity }
  | {
      readonly kind: "points";
      readonly points: readonly { readonly frequency: number; readonly quantity: Quantity }[];
    };
