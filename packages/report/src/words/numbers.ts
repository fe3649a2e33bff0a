/** Numbers and units of an answer as text, on top of the engine's one place for number formats. */
import {
  type ComplexValue,
  fixedNumber,
  type ScalarValue,
  significantNumber,
  swrText as swrNumber,
  type Value,
  watts,
  withPrefix,
} from "@feedpath/engine";

const unitSigns: ReadonlyMap<string, string> = new Map([
  ["ohm", "Ω"],
  ["deg", "°"],
  ["1", ""],
  ["none", ""],
]);

/** Unit as shown: "Ω" for "ohm", "°" for "deg", nothing for a plain ratio. */
export const unitSign = (unit: string): string => unitSigns.get(unit) ?? unit;

/** A number to so many significant digits, trailing zeros cut, "−" as minus; with a power of ten below 0.0001 and from 10 million. */
export function numberText(value: number, significant = 3): string {
  const size = Math.abs(value);
  if (size === 0 || (size >= 1e-4 && size < 1e7)) return significantNumber(value, significant);
  const [mantissa, exponent] = value.toExponential(significant - 1).split("e");
  return `${significantNumber(Number(mantissa), significant)} × 10^${significantNumber(Number(exponent), 3)}`;
}

/** Watts without their unit, as the engine writes them: one decimal below 1 kW, so that shown parts add up. */
export const wattsText = (value: number): string => watts(value).replace(/ W$/, "");

/** Hertz as Hz, kHz, MHz or GHz with at most six digits. */
export const frequencyText = (hertz: number): string => withPrefix(hertz, "Hz", 6);

/** A number with its unit; the unit ° and % stand as they are usually set. */
export function quantityText(value: number, unit: string, significant = 3): string {
  if (unit === "Hz") return frequencyText(value);
  const number = unit === "W" ? wattsText(value) : numberText(value, significant);
  const sign = unitSign(unit);
  return sign === "" || sign === "°" ? `${number}${sign}` : `${number} ${sign}`;
}

/** "83.1 − j25.1 Ω"; one decimal. */
export function complexText(z: ComplexValue): string {
  const sign = z.im < 0 ? "−" : "+";
  return `${fixedNumber(z.re, 1)} ${sign} j${fixedNumber(Math.abs(z.im), 1)} ${unitSign(z.unit)}`.trim();
}

/** "1.8 on 50 Ω"; "without end" where the value is null. */
export const swrText = (value: number | null, reference: number): string =>
  `${swrNumber(value)} on ${numberText(reference)} Ω`;

/** The span from low to high, or "" where the value has none or both ends read the same. */
export function spanText(value: ScalarValue): string {
  const { low, high, unit } = value;
  if (low === undefined || high === undefined) return "";
  const texts = [low, high].map((end) => (unit === "W" ? wattsText(end) : numberText(end)));
  return texts[0] === texts[1] ? "" : `${texts[0]} to ${quantityText(high, unit)}`;
}

/** Any value of an answer as people read it; its reason where it has none. */
export function valueText(value: Value): string {
  if ("re" in value) return complexText(value);
  if (value.value === null) return value.reason ?? "does not apply";
  if (value.reference !== undefined) return swrText(value.value, value.reference);
  return quantityText(value.value, value.unit);
}
