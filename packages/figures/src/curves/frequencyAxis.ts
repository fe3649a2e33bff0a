/** An axis on which every tenfold of frequency is one step, and a scale on which every tenfold of a value is. */
import { significantText, withUnit } from "../kit/numberText";

interface Tick {
  readonly value: number;
  readonly text: string;
}

/** "1 kHz", "10 MHz"; megahertz in. */
export function frequencyText(megahertz: number): string {
  const size = Math.abs(megahertz) * 1.0000001;
  if (size >= 1e3) return withUnit(significantText(megahertz / 1e3, 3), "GHz");
  if (size >= 1) return withUnit(significantText(megahertz, 3), "MHz");
  return size >= 1e-3
    ? withUnit(significantText(megahertz * 1e3, 3), "kHz")
    : withUnit(significantText(megahertz * 1e6, 3), "Hz");
}

/** Place of a frequency (MHz) on the axis. */
export const placeOf = (megahertz: number): number => Math.log10(megahertz);

/** For frequencies (MHz) in rising order; at most `most` ticks, at whole powers of ten. */
export function frequencyAxis(
  megahertz: readonly number[],
  most: number,
): { readonly values: readonly number[]; readonly ticks: readonly Tick[] } {
  const values = megahertz.map(placeOf);
  const [first, last] = [Math.ceil(values[0]! - 1e-9), Math.floor(values.at(-1)! + 1e-9)];
  const step = Math.max(1, Math.ceil((last - first + 1) / most));
  const ticks = Array.from({ length: Math.floor((last - first) / step) + 1 }, (_, i) => first + i * step);
  return { values, ticks: ticks.map((power) => ({ value: power, text: frequencyText(10 ** power) })) };
}

/** A scale by powers of ten that holds all values above zero, to the next third of a power, with ticks at whole ones. */
export function powersOfTen(values: readonly number[]): {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly Tick[];
} {
  const above = values.filter((value) => value > 0).map(Math.log10);
  const [from, to] = [Math.floor(3 * Math.min(...above)) / 3, Math.ceil(3 * Math.max(...above)) / 3];
  const first = Math.ceil(from - 1e-9);
  const ticks = Array.from({ length: Math.floor(to + 1e-9) - first + 1 }, (_, i) => first + i);
  return { from, to, ticks: ticks.map((power) => ({ value: power, text: significantText(10 ** power, 1) })) };
}
