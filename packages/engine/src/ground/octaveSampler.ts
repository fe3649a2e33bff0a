/** Sums of spectra over wide ranges of distance and height: one spectrum an octave of each, built when first needed. */
import type { ComplexPlane, Spectrum } from "../kernels/door";
import type { Reach } from "./spectrum";
import type { PlaceSampler, Sampler } from "./tablePieces";

/** Distances below this share of the height sum need no octaves of their own. */
const nearest = 0.5;
/** Ranges no wider than this (distance over smallest sum, largest sum over smallest) are served by one spectrum. */
const plain = 40;

const octave = (x: number): number => Math.floor(Math.log2(x));
const plane = (length: number): ComplexPlane => ({ re: new Float64Array(length), im: new Float64Array(length) });

/**
 * A function from places (rho, s), in m, inside the reach to the sums over spectra that `build` makes for parts of it.
 * The numbers of nodes grow with the distance in wavelengths of the soil, no longer with rho/s.
 */
export function octaveSampler(reach: Reach, build: (part: Reach) => Spectrum, sum: Sampler): PlaceSampler {
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
  return (rho, s) => {
    const cells = new Map<string, { spectrum: Spectrum; places: number[] }>();
    rho.forEach((distance, p) => {
      const high = octave(s[p]!);
      const far = Math.max(octave(distance), octave(nearest * 2 ** high) - 1);
      const cell = cells.get(`${far} ${high}`) ?? { spectrum: spectrumOf(far, high), places: [] };
      cell.places.push(p);
      cells.set(`${far} ${high}`, cell);
    });
    const sums = {
      horizontal: plane(rho.length),
      scalar: plane(rho.length),
      vertical: plane(rho.length),
      cross: plane(rho.length),
    };
    for (const { spectrum, places } of cells.values()) {
      const part = sum(
        spectrum,
        Float64Array.from(places, (p) => rho[p]!),
        Float64Array.from(places, (p) => s[p]!),
      );
      for (const kind of ["horizontal", "scalar", "vertical", "cross"] as const) {
        places.forEach((p, i) => {
          sums[kind].re[p] = part[kind].re[i]!;
          sums[kind].im[p] = part[kind].im[i]!;
        });
      }
    }
    return sums;
  };
}
