/** Fills the moment matrix with the free-space kernel e^{-jkR}/R between elements, mixed-potential form. */
import type { Orbits, PairTerms, Scatter, SplitMatrix } from "../door";
import { crossMoments } from "./crossMoments";
import { distantMoments, orderFor, remainderMoments, type Sampled, sampled } from "./pairMoments";

/** Adds the moments of one pair, `times` over, to the unknowns on its four ends; `cross` are those of the cross kernel, or null. */
function scatterPair(
  terms: PairTerms,
  e: number,
  f: number,
  same: boolean,
  times: number,
  m: Float64Array,
  cross: Float64Array | null,
  matrix: SplitMatrix,
): void {
  const { tests, sources, scatter, factors, vectorFactor } = terms;
  const levels =
    tests.direction[3 * e]! * sources.direction[3 * f]! + tests.direction[3 * e + 1]! * sources.direction[3 * f + 1]!;
  const uprights = tests.direction[3 * e + 2]! * sources.direction[3 * f + 2]!;
  const vectorRe = vectorFactor * (factors.level.re * levels + factors.upright.re * uprights);
  const vectorIm = vectorFactor * (factors.level.im * levels + factors.upright.im * uprights);
  const scalar = terms.scalarFactor / (tests.length[e]! * sources.length[f]!);
  const sumRe = scalar * (m[0]! + m[1]! + m[2]! + m[3]!);
  const sumIm = scalar * (m[4]! + m[5]! + m[6]! + m[7]!);
  const chargeRe = factors.charge.re * sumRe - factors.charge.im * sumIm;
  const chargeIm = factors.charge.re * sumIm + factors.charge.im * sumRe;
  const crossRe = cross && factors.cross ? vectorFactor * factors.cross.re : 0;
  const crossIm = cross && factors.cross ? vectorFactor * factors.cross.im : 0;
  for (let pair = 0; pair < 4; pair++) {
    const i = pair >> 1;
    const j = pair & 1;
    const slopes = i === j ? 1 : -1;
    let re = -(vectorRe * m[4 + pair]! + vectorIm * m[pair]! - slopes * chargeIm);
    let im = vectorRe * m[pair]! - vectorIm * m[4 + pair]! - slopes * chargeRe;
    if (cross) {
      re -= crossRe * cross[4 + pair]! + crossIm * cross[pair]!;
      im += crossRe * cross[pair]! - crossIm * cross[4 + pair]!;
    }
    addToUnknowns(scatter, [2 * e + i, 2 * f + j], same, [times * re, times * im], matrix);
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

/**
 * How many times the pair e, f >= e counts for itself and its images: not at all but for the first test among them with the
 * sources whose images begin no earlier. Pairs within one orbit are met from both sides.
 */
function timesOf(orbits: Orbits | undefined, e: number, f: number): number {
  if (!orbits) return 1;
  if (orbits.first[e] !== e || orbits.first[f]! < e) return 0;
  return orbits.first[f] === e && f !== e ? orbits.size[e]! / 2 : orbits.size[e]!;
}

/** Moments of a pair, whose static part stands at `place` of the near ones (-1: not near), into `m`. */
function momentsOf(
  { near, wavenumber: k }: PairTerms,
  tests: Sampled,
  e: number,
  sources: Sampled,
  f: number,
  place: number,
  m: Float64Array,
): void {
  if (place < 0) {
    distantMoments(tests, e, sources, f, orderFor(tests, e, sources, f), k, m);
    return;
  }
  remainderMoments(tests.elements, e, sources.elements, f, k, m);
  for (let i = 0; i < 4; i++) m[i]! += near.moments[4 * place + i]!;
}

/** See Kernels.addPairTerms. */
export function addPairTerms(terms: PairTerms, matrix: SplitMatrix): void {
  const { near, wavenumber: k, factors, orbits } = terms;
  const tests = sampled(terms.tests);
  const sources = terms.sources === terms.tests ? tests : sampled(terms.sources);
  const m = new Float64Array(8);
  const cross = new Float64Array(8);
  for (let e = 0; e < terms.tests.count; e++) {
    if (orbits && orbits.first[e] !== e) continue;
    let next = near.rowStart[e]!;
    const end = near.rowStart[e + 1]!;
    for (let f = e; f < terms.sources.count; f++) {
      const close = next < end && near.column[next] === f;
      const place = close ? next++ : -1;
      const times = timesOf(orbits, e, f);
      if (times === 0) continue;
      const crosses = factors.cross !== null && crossMoments(terms.tests, e, terms.sources, f, k, close, cross);
      momentsOf(terms, tests, e, sources, f, place, m);
      scatterPair(terms, e, f, e === f, times, m, crosses ? cross : null, matrix);
    }
  }
}
