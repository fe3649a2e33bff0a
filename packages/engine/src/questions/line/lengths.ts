/** What the set sees against the length of a line that is not of its impedance, and the lengths at which it sees the antenna. */
import { inputImpedance } from "../../lines/alongLine";
import { lineConstants } from "../../lines/lineConstants";
import type { LineEntry } from "../../lines/lineModel";
import { swr } from "../../lines/reflection";
import type { Complex } from "../../numerics/complex";
import { complex } from "../../numerics/complex";
import { speedOfLight } from "../../numerics/vacuum";
import type { Band } from "../../station/station";
import { type Bench, bandRow } from "./bandRow";
import { newLine } from "./swapped";

export interface LengthPoint {
  /** m */
  readonly length: number;
  readonly seen: Complex;
  readonly swr: number;
  /** W into the antenna, from the transmitter, and dB that the mismatch adds. */
  readonly watts: number;
  readonly delivered: number;
  readonly added: number;
}

export interface HalfWave {
  readonly band: Band;
  readonly multiple: number;
  /** m: with the velocity as it is taken, and at the ends of what is known of it. */
  readonly length: number;
  readonly low: number;
  readonly high: number;
  readonly swr: number;
  readonly watts: number;
}

export interface LengthStudy {
  readonly entry: LineEntry;
  readonly band: Band;
  /** m of half a wave on this line. */
  readonly halfWave: number;
  readonly points: readonly LengthPoint[];
  readonly halfWaves: readonly HalfWave[];
  /** SWR at the set with the station's antenna, and with the rated load in its place, lowest and highest over half a wave. */
  readonly range: { readonly low: number; readonly high: number };
  readonly rangeOnRated: { readonly low: number; readonly high: number };
}

/** m of half a wave on a line at a frequency in Hz. */
const halfWaveOn = (entry: LineEntry, frequency: number): number =>
  (lineConstants(entry.model, frequency).velocityFactor * speedOfLight) / frequency / 2;

/** Shares of a half-wave before and behind the present length that are looked at, and steps for each half-wave. */
const before = 0.25;
const behind = 1;
const stepsOfHalfWave = 48;

export function studyLengths(bench: Bench, entry: LineEntry, band: Band, bands: readonly Band[]): LengthStudy | null {
  const frequency = band.frequency.value;
  const half = halfWaveOn(entry, frequency);
  const now = bench.replaced.part.length.value;
  const from = Math.max(now - before * half, 0.02 * half);
  const count = Math.round(((now - from) / half + behind) * stepsOfHalfWave);
  const points = Array.from({ length: count + 1 }, (_, i) => from + (i * half) / stepsOfHalfWave).flatMap((length) =>
    pointAt(bench, entry, band, length),
  );
  if (points.length < count + 1) return null;
  const whole = points.slice(-stepsOfHalfWave).map((p) => p.swr);
  return {
    entry,
    band,
    halfWave: half,
    points,
    halfWaves: bands.flatMap((one) => nearestHalfWaves(bench, entry, one)),
    range: { low: Math.min(...whole), high: Math.max(...whole) },
    rangeOnRated: rangeOnRated(bench, entry, frequency),
  };
}

function pointAt(bench: Bench, entry: LineEntry, band: Band, length: number): LengthPoint[] {
  const { part } = bench.replaced;
  const same = entry === part.line;
  const line = same ? { ...part, length: { ...part.length, value: length } } : newLine(part, entry, length);
  const row = bandRow(bench, band, [line]);
  return row
    ? [{ length, seen: row.seen, swr: row.swrSeen, watts: row.watts, delivered: row.delivered, added: row.added }]
    : [];
}

/** The last multiple of half a wave that is shorter than the line is now, and the first that is not. */
function nearestHalfWaves(bench: Bench, entry: LineEntry, band: Band): HalfWave[] {
  const frequency = band.frequency.value;
  const half = halfWaveOn(entry, frequency);
  const above = Math.ceil(bench.replaced.part.length.value / half - 1e-6);
  const spread = velocitySpread(entry);
  return [above - 1, above].flatMap((multiple) => {
    if (multiple < 1) return [];
    const length = multiple * half;
    return pointAt(bench, entry, band, length).map(({ swr: seen, watts }) => ({
      band,
      multiple,
      length,
      low: length * spread.low,
      high: length * spread.high,
      swr: seen,
      watts,
    }));
  });
}

/** Ends of the velocity factor over its value, where a data sheet bounds it. */
function velocitySpread({ model }: LineEntry): { readonly low: number; readonly high: number } {
  if (model.kind !== "data sheet") return { low: 1, high: 1 };
  const { value, low, high } = model.velocityFactor;
  return { low: low / value, high: high / value };
}

/** With the rated load at its end: the line's loss as in the station, its length moved over half a wave. */
function rangeOnRated({ station, replaced }: Bench, entry: LineEntry, frequency: number): LengthStudy["range"] {
  const constants = lineConstants(entry.model, frequency);
  const rated = station.transmitter.designedFor.value;
  const half = halfWaveOn(entry, frequency);
  const all = Array.from({ length: stepsOfHalfWave }, (_, i) => {
    const length = replaced.part.length.value + (i * half) / stepsOfHalfWave;
    return swr(inputImpedance(constants, length, complex(rated)), rated);
  });
  return { low: Math.min(...all), high: Math.max(...all) };
}
