/** Sums of spectra over wide ranges of distance and height: one spectrum an octave of each, built when first needed. */
import type { ComplexPlane, SpectralSums, Spectrum } from "../kernels/door";
import type { Reach } from "./spectrum";
import type { GridSampler, Sampler } from "./tablePieces";

/** Distances below this share of the height sum need no octaves of their own. */
const nearest = 0.5;
/** Ranges no wider than this (distance over smallest sum, largest sum over smallest) are served by one spectrum. */
const plain = 40;

const octave = (x: number): number => Math.floor(Math.log2(x));
const plane = (length: number): ComplexPlane => ({ re: new Float64Array(length), im: new Float64Array(length) });

/** Places of values by what they belong to. */
function sorted<Key>(values: Float64Array, keyOf: (x: number) => Key): Map<Key, number[]> {
  const places = new Map<Key, number[]>();
  values.forEach((x, p) => {
    const key = keyOf(x);
    const list = places.get(key) ?? [];
    list.push(p);
    places.set(key, list);
  });
  return places;
}

/**
 * Sums over a grid put together from parts of it: distances and height sums in the same octaves share a spectrum.
 * `farOf`: octave of a distance, given that of the height sum.
 */
export function sumByOctaves(
  rho: Float64Array,
  s: Float64Array,
  farOf: (distance: number, high: number) => number,
  sumPart: (rho: Float64Array, s: Float64Array, far: number, high: number) => SpectralSums,
): SpectralSums {
  const count = rho.length * s.length;
  const sums = { horizontal: plane(count), scalar: plane(count), vertical: plane(count), cross: plane(count) };
  for (const [high, columns] of sorted(s, octave)) {
    const partOfS = Float64Array.from(columns, (c) => s[c]!);
    for (const [far, rows] of sorted(rho, (distance) => farOf(distance, high))) {
      const partOfRho = Float64Array.from(rows, (r) => rho[r]!);
      const part = sumPart(partOfRho, partOfS, far, high);
      for (const kind of ["horizontal", "scalar", "vertical", "cross"] as const)
        putPart(part[kind], rows, columns, s.length, sums[kind]);
    }
  }
  return sums;
}

function putPart(
  part: ComplexPlane,
  rows: readonly number[],
  columns: readonly number[],
  width: number,
  out: ComplexPlane,
) {
  let from = 0;
  for (const row of rows) {
    for (const column of columns) {
      out.re[row * width + column] = part.re[from]!;
      out.im[row * width + column] = part.im[from]!;
      from += 1;
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
  const kept = new Map<string, Spectrum>();
  const spectrumOf = (far: number, high: number): Spectrum => {
    const key = `${far} ${high}`;
    const known = kept.get(key);
    if (known) return known;
    const smallestSum = 2 ** high;
    const isNear = 2 ** far < nearest * smallestSum;
    const made = build({
      ...reach,
      smallestSum,
      largestSum: 2 * smallestSum,
      nearestDistance: isNear ? 0 : 2 ** far,
      largestDistance: 2 ** (far + 1),
    });
    kept.set(key, made);
    return made;
  };
  const farOf = (distance: number, high: number): number => Math.max(octave(distance), octave(nearest * 2 ** high) - 1);
  return (rho, s) => sumByOctaves(rho, s, farOf, (r, h, far, high) => sum(spectrumOf(far, high), r, h));
}
