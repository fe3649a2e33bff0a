/** Sums of spectra over wide ranges of distance and height: one spectrum an octave of each, built when first needed. */
import type { ComplexPlane, SpectralSums, Spectrum } from "../kernels/door";
import type { Reach } from "./spectralNodes";
import type { GridSampler, Sampler } from "./tablePieces";

/** Ranges no wider than this (distance over smallest sum, largest sum over smallest) are served by one spectrum. */
const plain = 40;
/** Distances this many octaves below the height sum need no octaves of their own. */
const nearOctaves = 2;
/** Nor do height sums this many octaves below the distance: there the distance alone ends the integration (spectralEnd). */
const lowOctaves = 2;

const octave = (x: number): number => Math.floor(Math.log2(x));
const plane = (length: number): ComplexPlane => ({ re: new Float64Array(length), im: new Float64Array(length) });

/** Distances and height sums that one spectrum serves, m; `nearest` and `smallestSum` may be 0, but not both. */
export interface Octaves {
  readonly nearest: number;
  readonly farthest: number;
  readonly smallestSum: number;
  readonly largestSum: number;
}

/** The octaves that distances from 2^far and height sums from 2^high share; `near`: see nearOctaves. */
function octavesOf(far: number, high: number, near: number): Octaves {
  if (far <= high - near)
    return { nearest: 0, farthest: 2 ** (high - near + 1), smallestSum: 2 ** high, largestSum: 2 ** (high + 1) };
  const isLow = high <= far - lowOctaves;
  const top = isLow ? far - lowOctaves : high;
  const smallestSum = isLow ? 0 : 2 ** high;
  return { nearest: 2 ** far, farthest: 2 ** (far + 1), smallestSum, largestSum: 2 ** (top + 1) };
}

interface Part {
  readonly octaves: Octaves;
  readonly rows: number[];
  readonly columns: number[];
}

/** Places of values by their octave. */
function byOctave(values: Float64Array): Map<number, number[]> {
  const places = new Map<number, number[]>();
  for (let p = 0; p < values.length; p++) {
    const key = octave(values[p]!);
    const list = places.get(key);
    if (list) list.push(p);
    else places.set(key, [p]);
  }
  return places;
}

/** The grid cut into parts, each of some rows and some columns. */
function partsOf(rho: Float64Array, s: Float64Array, near: number): Map<string, Part> {
  const parts = new Map<string, Part>();
  const heights = byOctave(s);
  for (const [far, rows] of byOctave(rho)) {
    for (const [high, columns] of heights) {
      const octaves = octavesOf(far, high, near);
      const key = `${octaves.farthest} ${octaves.largestSum} ${octaves.smallestSum}`;
      const part = parts.get(key);
      // Octaves that share a spectrum share all rows (near ones) or all columns (low ones), or are one.
      if (!part) parts.set(key, { octaves, rows: [...rows], columns: [...columns] });
      else if (far <= high - near) part.rows.push(...rows);
      else part.columns.push(...columns);
    }
  }
  return parts;
}

const picked = (values: Float64Array, places: readonly number[]): Float64Array => {
  const out = new Float64Array(places.length);
  for (let i = 0; i < places.length; i++) out[i] = values[places[i]!]!;
  return out;
};

/** Sums over a grid put together from parts of it, whose spectra are kept. `near`: see nearOctaves. */
export function sampleByOctaves(build: (octaves: Octaves) => Spectrum, sum: Sampler, near = nearOctaves): GridSampler {
  const kept = new Map<string, Spectrum>();
  return (rho, s) => {
    const count = rho.length * s.length;
    const sums = { horizontal: plane(count), scalar: plane(count), vertical: plane(count), cross: plane(count) };
    for (const [key, { octaves, rows, columns }] of partsOf(rho, s, near)) {
      const spectrum = kept.get(key) ?? build(octaves);
      kept.set(key, spectrum);
      putPart(sum(spectrum, picked(rho, rows), picked(s, columns)), rows, columns, s.length, sums);
    }
    return sums;
  };
}

type Places = readonly number[];

function putPart(part: SpectralSums, rows: Places, columns: Places, width: number, sums: SpectralSums): void {
  putKernel(part.horizontal, rows, columns, width, sums.horizontal);
  putKernel(part.scalar, rows, columns, width, sums.scalar);
  putKernel(part.vertical, rows, columns, width, sums.vertical);
  putKernel(part.cross, rows, columns, width, sums.cross);
}

function putKernel(part: ComplexPlane, rows: Places, columns: Places, width: number, out: ComplexPlane): void {
  for (let i = 0, from = 0; i < rows.length; i++) {
    for (let j = 0; j < columns.length; j++, from++) {
      const to = rows[i]! * width + columns[j]!;
      out.re[to] = part.re[from]!;
      out.im[to] = part.im[from]!;
    }
  }
}

/**
 * A function from places (rho, s), in m, inside the reach to the sums over spectra that `build` makes for parts of it.
 * The numbers of nodes grow with the distance in wavelengths of the soil, no longer with rho/s.
 */
export function octaveSampler(reach: Reach, build: (part: Reach) => Spectrum, sum: Sampler): GridSampler {
  if (reach.largestDistance + reach.largestSum < plain * reach.smallestSum) {
    const spectrum = build(reach);
    return (rho, s) => sum(spectrum, rho, s);
  }
  return sampleByOctaves(
    ({ nearest, farthest, smallestSum, largestSum }) =>
      build({ ...reach, smallestSum, largestSum, nearestDistance: nearest, largestDistance: farthest }),
    sum,
  );
}
