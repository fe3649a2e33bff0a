/** Numbers for people: three figures, a true minus, a space that does not break before the unit. */
import type { Value } from "@feedpath/engine";

const threeFigures = new Intl.NumberFormat("en", { maximumSignificantDigits: 3, useGrouping: false });

export const sayNumber = (value: number): string => threeFigures.format(value).replace("-", "\u2212");

const units: Readonly<Record<string, string>> = { ohm: "\u03a9", deg: "\u00b0", "1": "", none: "", "": "" };

/** Watts with one decimal below 1 kW, as on the sheet; else three figures. */
const sayIn = (value: number, unit: string): string =>
  unit === "W" && Math.abs(value) < 1000 ? value.toFixed(1).replace("-", "\u2212") : sayNumber(value);

/** Unit as it stands behind a number, with its space; angles have none. */
function sayUnit(unit: string): string {
  const shown = units[unit] ?? unit;
  return shown === "" || shown === "\u00b0" ? shown : `\u00a0${shown}`;
}

/** A number with its unit; frequencies in MHz. */
export function sayQuantity(value: number, unit: string): string {
  if (unit === "Hz") return sayFrequency(value);
  return sayIn(value, unit) + sayUnit(unit);
}

/** Hz to "7.1 MHz", to the last kilohertz that was given. */
export const sayFrequency = (hertz: number): string =>
  `${new Intl.NumberFormat("en", { maximumFractionDigits: 6, useGrouping: false }).format(hertz / 1e6)}\u00a0MHz`;

export function sayComplex(re: number, im: number, unit: string): string {
  return `${sayNumber(re)} ${im < 0 ? "\u2212" : "+"}\u00a0j${sayNumber(Math.abs(im))}${sayUnit(unit)}`;
}

/** A value of an answer, or its reason where it has none. */
export function sayValue(value: Value): string {
  if ("re" in value) return sayComplex(value.re, value.im, value.unit);
  return value.value === null ? (value.reason ?? "does not apply") : sayQuantity(value.value, value.unit);
}

/** "58 to 78 W" where a value carries its ends, else null. */
export function saySpan(value: Value): string | null {
  if ("re" in value || value.low === undefined || value.high === undefined || value.low === value.high) return null;
  const ends = [sayQuantity(value.low, value.unit), sayQuantity(value.high, value.unit)] as const;
  return ends[0] === ends[1] ? null : `${sayIn(value.low, value.unit)} to ${ends[1]}`;
}

/** "radiatedPower" as words: "radiated power". */
export const sayName = (name: string): string =>
  name
    .replace(/([a-z])([A-Z])/g, (_, before: string, after: string) => `${before} ${after.toLowerCase()}`)
    .replace("swr", "SWR");
