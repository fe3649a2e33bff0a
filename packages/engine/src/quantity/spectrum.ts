/** A quantity by frequency, read on logarithmic scales as the station file says. */
import { exactly, type Quantity, type Spectrum } from "./quantity";

export interface SpectrumReading {
  readonly quantity: Quantity;
  /** True when the frequency lies outside the given points: the nearest point's value is taken. */
  readonly outside: boolean;
}

const interpolate = (x: number, x0: number, x1: number, y0: number, y1: number): number => {
  const share = Math.log(x / x0) / Math.log(x1 / x0);
  return y0 > 0 && y1 > 0 ? y0 * (y1 / y0) ** share : y0 + (y1 - y0) * share;
};

/** Value at a frequency in Hz; log-log between points (linear where a value is not positive), constant beyond them. */
export function readSpectrum(spectrum: Spectrum, frequency: number): SpectrumReading {
  if (spectrum.kind === "constant") return { quantity: spectrum.quantity, outside: false };
  const points = [...spectrum.points].sort((a, b) => a.frequency - b.frequency);
  const first = points[0];
  const last = points[points.length - 1];
  if (!first || !last) return { quantity: exactly(0, "assumed"), outside: true };
  if (frequency <= first.frequency) return { quantity: first.quantity, outside: frequency < first.frequency * 0.99 };
  if (frequency >= last.frequency) return { quantity: last.quantity, outside: frequency > last.frequency * 1.01 };
  const above = points.findIndex((p) => p.frequency >= frequency);
  const a = points[above - 1]!;
  const b = points[above]!;
  const at = (pick: (q: Quantity) => number) =>
    interpolate(frequency, a.frequency, b.frequency, pick(a.quantity), pick(b.quantity));
  return {
    quantity: { value: at((q) => q.value), low: at((q) => q.low), high: at((q) => q.high), basis: a.quantity.basis },
    outside: false,
  };
}
