import type { ComplexValue, ScalarValue, Value } from "@feedpath/engine";

const unitSigns: ReadonlyMap<string, string> = new Map([
  ["ohm", "Ω"],
  ["deg", "°"],
  ["1", ""],
  ["none", ""],
]);

/** Unit as shown: "Ω" for "ohm", "°" for "deg", nothing for a plain ratio. */
export const unitSign = (unit: string): string => unitSigns.get(unit) ?? unit;

/** A number to so many significant digits, trailing zeros cut, "−" as minus; 1.0e-7 as "1 × 10^-7". */
export function numberText(value: number, significant = 3): string {
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-4 || size >= 1e7)) {
    const [mantissa, exponent] = value.toExponential(significant - 1).split("e");
    return `${numberText(Number(mantissa), significant)} × 10^${exponent!.replace("+", "").replace("-", "−")}`;
  }
  const digits = size >= 10 ** significant ? Math.ceil(Math.log10(size + 1)) : significant;
  return String(Number(value.toPrecision(digits))).replace("-", "−");
}

/** Watts with one decimal from 1 W to 1 kW, so that shown parts add up; two digits below, whole watts above. */
export function wattsText(watts: number): string {
  const size = Math.abs(watts);
  if (size >= 1000) return watts.toFixed(0).replace("-", "−");
  if (size >= 0.95 || size === 0) return String(Number(watts.toFixed(1))).replace("-", "−");
  return numberText(watts, 2);
}

/** Hertz as Hz, kHz, MHz or GHz with at most six digits. */
export function frequencyText(hertz: number): string {
  const [scale, unit] = (
    [
      [1e9, "GHz"],
      [1e6, "MHz"],
      [1e3, "kHz"],
    ] as const
  ).find(([s]) => hertz >= s) ?? [1, "Hz"];
  return `${numberText(hertz / scale, 6)} ${unit}`;
}

/** A number with its unit; the unit ° and % stand as they are usually set. */
export function quantityText(value: number, unit: string, significant = 3): string {
  if (unit === "Hz") return frequencyText(value);
  const number = unit === "W" ? wattsText(value) : numberText(value, significant);
  const sign = unitSign(unit);
  return sign === "" || sign === "°" ? `${number}${sign}` : `${number} ${sign}`;
}

/** "83.1 − j25.1 Ω". */
export function complexText(z: ComplexValue, significant = 3): string {
  const sign = z.im < 0 ? "−" : "+";
  return `${numberText(z.re, significant)} ${sign} j${numberText(Math.abs(z.im), significant)} ${unitSign(z.unit)}`.trim();
}

/** "1.8 on 50 Ω"; two decimals below 1.2, one below 10, and "infinite" where the value is null. */
export function swrText(value: number | null, reference: number | undefined): string {
  const on = reference === undefined ? "" : ` on ${numberText(reference)} Ω`;
  if (value === null) return `infinite${on}`;
  return `${value < 9.95 ? value.toFixed(value < 1.195 ? 2 : 1) : value.toFixed(0)}${on}`;
}

/** The span from low to high, or "" where the value has none or both ends are the same. */
export function spanText(value: ScalarValue): string {
  if (value.low === undefined || value.high === undefined || value.low === value.high) return "";
  return `${quantityText(value.low, "1")} to ${quantityText(value.high, value.unit)}`;
}

/** Any value of an answer as people read it; its reason where it has none. */
export function valueText(value: Value): string {
  if ("re" in value) return complexText(value);
  if (value.value === null) return value.reason ?? "does not apply";
  if (value.reference !== undefined) return swrText(value.value, value.reference);
  return quantityText(value.value, value.unit);
}
