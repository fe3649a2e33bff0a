/** Fills the moment matrix with the free-space kernel e^{-jkR}/R between elements, mixed-potential form. */
import type { PairTerms, Scatter, SplitMatrix } from "../door";
import { distantMoments, orderFor, remainderMoments, sampled } from "./pairMoments";

/** Adds the moments of one pair to the unknowns on its four ends. */
function scatterPair(
  terms: PairTerms,
  e: number,
  f: number,
  same: boolean,
  m: Float64Array,
  matrix: SplitMatrix,
): void {
  const { tests, sources, scatter } = terms;
  const cosine =
    tests.direction[3 * e]! * sources.direction[3 * f]! +
    tests.direction[3 * e + 1]! * sources.direction[3 * f + 1]! +
    tests.direction[3 * e + 2]! * sources.direction[3 * f + 2]!;
  const vector = terms.sign * terms.vectorFactor * cosine;
  const scalar = (terms.sign * terms.scalarFactor) / (tests.length[e]! * sources.length[f]!);
  const chargeRe = scalar * (m[0]! + m[1]! + m[2]! + m[3]!);
  const chargeIm = scalar * (m[4]! + m[5]! + m[6]! + m[7]!);
  for (let pair = 0; pair < 4; pair++) {
    const i = pair >> 1;
    const j = pair & 1;
    const slopes = i === j ? 1 : -1;
    const re = -(vector * m[4 + pair]! - slopes * chargeIm);
    const im = vector * m[pair]! - slopes * chargeRe;
    addToUnknowns(scatter, [2 * e + i, 2 * f + j], same, [re, im], matrix);
  }
}

/** Adds one number to every pair of unknowns on two element ends, upper triangle. */
function addToUnknowns(
  scatter: Scatter,
  [testEnd, sourceEnd]: readonly [number, number],
  same: boolean,
  [re, im]: readonly [number, number],
  matrix: SplitMatrix,
): void {
  const n = matrix.size;
  for (let a = scatter.first[testEnd]!; a < scatter.first[testEnd + 1]!; a++) {
    const row = scatter.unknown[a]!;
    for (let b = scatter.first[sourceEnd]!; b < scatter.first[sourceEnd + 1]!; b++) {
      const column = scatter.unknown[b]!;
      if (same && row > column) continue;
      const twice = !same && row === column ? 2 : 1;
      const weight = twice * scatter.sign[a]! * scatter.sign[b]!;
      const index = row < column ? row * n + column : column * n + row;
      matrix.re[index]! += weight * re;
      matrix.im[index]! += weight * im;
    }
  }
}

/** See Kernels.addPairTerms. */
export function addPairTerms(terms: PairTerms, matrix: SplitMatrix): void {
  const { near, wavenumber: k } = terms;
  const tests = sampled(terms.tests);
  const sources = terms.sources === terms.tests ? tests : sampled(terms.sources);
  const m = new Float64Array(8);
  for (let e = 0; e < terms.tests.count; e++) {
    let next = near.rowStart[e]!;
    const end = near.rowStart[e + 1]!;
    for (let f = e; f < terms.sources.count; f++) {
      if (next < end && near.column[next] === f) {
        remainderMoments(terms.tests, e, terms.sources, f, k, m);
        for (let i = 0; i < 4; i++) m[i]! += near.moments[4 * next + i]!;
        next++;
      } else {
        distantMoments(tests, e, sources, f, orderFor(tests, e, sources, f), k, m);
      }
      scatterPair(terms, e, f, e === f, m, matrix);
    }
  }
}
