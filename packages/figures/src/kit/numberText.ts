/** Numbers as the pictures write them: a true minus, one decimal where it tells something, a space that does not break. */
const space = "\u00a0";
const minus = "−";

/** Number with `decimals` decimals, no negative zero. */
export function fixedText(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text.replace("-", minus);
}

/** As `fixedText`, trailing zeros dropped: "12", "20.1". */
export const plainText = (value: number, decimals: number): string =>
  decimals > 0 ? fixedText(value, decimals).replace(/\.?0+$/, "") : fixedText(value, 0);

/** Number with `figures` significant figures. */
export function significantText(value: number, figures: number): string {
  if (value === 0) return "0";
  return plainText(value, Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(value)))));
}

export const withUnit = (number: string, unit: string): string => `${number}${space}${unit}`;

/** Watts with one decimal, whole from 1000 W up; milliwatts where one decimal would hide the value. */
export function wattsText(watts: number): string {
  const size = Math.abs(watts);
  if (size >= 5e-4 && size < 0.095) return withUnit(significantText(watts * 1000, 2), "mW");
  return withUnit(size >= 99.95 ? plainText(watts, size < 1000 ? 1 : 0) : fixedText(watts, 1), "W");
}

/** Watts as somebody stated them: "100 W", "5 W", "2.5 W". */
export const givenWattsText = (watts: number): string =>
  Math.abs(watts) < 0.95 ? wattsText(watts) : withUnit(plainText(watts, 1), "W");

/** Watts as whole numbers from 10 W up, for titles. */
export const wholeWattsText = (watts: number): string =>
  withUnit(plainText(watts, Math.abs(watts) < 9.95 ? 1 : 0), "W");

/** SWR: one decimal, whole from 10 up; null is infinite. */
export const swrText = (swr: number | null): string =>
  swr === null ? "infinite" : swr >= 9.95 ? fixedText(swr, 0) : fixedText(swr, 1);

/** "76.5 − j23.4 Ω". */
export function impedanceText(re: number, im: number, decimals: number): string {
  const sign = im < 0 ? minus : "+";
  return withUnit(`${fixedText(re, decimals)} ${sign} j${fixedText(Math.abs(im), decimals)}`, "Ω");
}

/** Volts to three figures, whole below 1 kV. */
export const voltsText = (volts: number): string =>
  volts >= 1000
    ? withUnit(significantText(volts / 1000, 2), "kV")
    : withUnit(plainText(volts, volts < 10 ? 1 : 0), "V");

/** Metres with at most one decimal, centimetres below one tenth. */
export const metresText = (metres: number): string =>
  Math.abs(metres) < 0.095 && metres !== 0
    ? withUnit(plainText(metres * 100, 0), "cm")
    : withUnit(plainText(metres, 1), "m");
