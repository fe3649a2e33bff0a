/** Ranges of height sums that share one set of polynomials. See kernelTable. */
import type { Reach } from "./spectralNodes";

/** Largest over smallest height sum of a band. */
const widest = 4;
/** So many height sums of a band, or fewer, get columns of their own instead of polynomials. */
const mostColumns = 8;

/** Height sums from `from` to `to` in m; `sums`: those that occur, null where they are many. */
export interface SumRange {
  readonly from: number;
  readonly to: number;
  readonly sums: Float64Array | null;
}

/** Bands of height sums that are known: as few as their width allows, each no wider than what occurs in it. */
function bandsOfSums(sums: Float64Array): SumRange[] {
  const bands: SumRange[] = [];
  for (let first = 0; first < sums.length; ) {
    let last = first;
    while (last + 1 < sums.length && sums[last + 1]! <= widest * sums[first]!) last++;
    const inBand = sums.slice(first, last + 1);
    bands.push({ from: sums[first]!, to: sums[last]!, sums: inBand.length <= mostColumns ? inBand : null });
    first = last + 1;
  }
  return bands;
}

/** Bands of all height sums of a reach. */
export function bandsOf({ smallestSum, largestSum, sums }: Reach): SumRange[] {
  if (sums) return bandsOfSums(sums);
  const ratio = largestSum / smallestSum;
  if (ratio < 1 + 1e-9) return [{ from: smallestSum, to: largestSum, sums: Float64Array.of(smallestSum) }];
  const count = Math.ceil(Math.log(ratio) / Math.log(widest) - 1e-9);
  const edge = (i: number): number => smallestSum * ratio ** (i / count);
  return Array.from({ length: count }, (_, i) => ({ from: edge(i), to: edge(i + 1), sums: null }));
}
