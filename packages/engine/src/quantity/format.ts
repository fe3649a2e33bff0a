/** Numbers as people read them: a few figures, a decimal point, the unit after a space. One place for all surfaces. */

const prefixes: readonly { readonly factor: number; readonly symbol: string }[] = [
  { factor: 1e9, symbol: "G" },
  { factor: 1e6, symbol: "M" },
  { factor: 1e3, symbol: "k" },
  { factor: 1, symbol: "" },
  { factor: 1e-3, symbol: "m" },
  { factor: 1e-6, symbol: "µ" },
  { factor: 1e-9, symbol: "n" },
  { factor: 1e-12, symbol: "p" },
];

const minus = "−";
const signed = (text: string): string => text.replace("-", minus);

/** Number with at most `decimals` decimals, trailing zeros dropped, a true minus sign. */
export function plainNumber(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  const short = decimals > 0 ? text.replace(/\.?0+$/, "") : text;
  return signed(short === "-0" ? "0" : short);
}

/** Number with exactly `decimals` decimals. */
export const fixedNumber = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  return signed(/^-0(\.0*)?$/.test(text) ? text.slice(1) : text);
};

/** Number with `figures` significant figures, never in exponent form. */
export function significantNumber(value: number, figures: number): string {
  if (value === 0) return "0";
  const decimals = Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(value))));
  return plainNumber(value, Math.min(decimals, 12));
}

/** "7.1 MHz", "3.2 µH", "28 m": value in SI with the prefix that leaves 1 to 999. */
export function withPrefix(value: number, unit: string, figures = 4): string {
  const size = Math.abs(value);
  const chosen = prefixes.find((p) => size >= p.factor * 0.9995) ?? prefixes[prefixes.length - 1]!;
  const prefix = size === 0 ? { factor: 1, symbol: "" } : chosen;
  return `${significantNumber(value / prefix.factor, figures)} ${prefix.symbol}${unit}`;
}

/** Watts: one decimal below 1000 W, whole above; `whole` rounds to whole watts where at least 10 W, and from 100 kW on to three figures. */
export const watts = (value: number): string =>
  value >= 1000
    ? `${plainNumber(value, 0)} W`
    : value < 0.05 && value > 0
      ? `${significantNumber(value, 1)} W`
      : `${fixedNumber(value, 1)} W`;
export const wholeWatts = (value: number): string =>
  value >= 99_950
    ? withPrefix(value, "W", 3)
    : value >= 9.95
      ? `${plainNumber(value, 0)} W`
      : value >= 0.95
        ? `${plainNumber(value, 1)} W`
        : `${significantNumber(value, 2)} W`;

export const decibels = (value: number): string => `${fixedNumber(value, Math.abs(value) < 0.095 ? 2 : 1)} dB`;

/** SWR as it is read from a meter: two decimals below 1.2, one below 10, whole above, and no digits where they mean nothing. */
export const swrText = (value: number | null): string =>
  value === null || !Number.isFinite(value)
    ? "without end"
    : value < 1.195
      ? fixedNumber(value, 2)
      : value < 9.95
        ? fixedNumber(value, 1)
        : value < 9999.5
          ? plainNumber(value, 0)
          : "over 10000";

/** "83.1 − j25.1 Ω". */
export const ohms = (z: { readonly re: number; readonly im: number }, decimals = 1): string =>
  `${fixedNumber(z.re, decimals)} ${z.im < 0 ? minus : "+"} j${fixedNumber(Math.abs(z.im), decimals)} Ω`;

export const megahertz = (hertz: number, decimals = 3): string => `${plainNumber(hertz / 1e6, decimals)} MHz`;
export const metres = (value: number): string => `${plainNumber(value, Math.abs(value) < 10 ? 2 : 1)} m`;
export const degrees = (radians: number): string => `${plainNumber((radians * 180) / Math.PI, 0)}°`;
