/** Adds mixed-potential terms between elements to the matrix. Definition: the readable twin's pairTerms. */
import {
  crossIm0,
  crossIm1,
  crossIm2,
  crossIm3,
  crossMoments,
  crossRe0,
  crossRe1,
  crossRe2,
  crossRe3,
} from "./crossMoments";
import { directionOf, lengthOf, radiusOf, startOf } from "./elements";
import {
  addStatic,
  distantMoments,
  fillPoints,
  im0,
  im1,
  im2,
  im3,
  pointBytes,
  re0,
  re1,
  re2,
  re3,
  remainderMoments,
  ruleFor,
} from "./pairMoments";
import { scatter, scatterInto } from "./scatter";

/** Vector and charge factors of the pair at work. */
let vectorRe: f64 = 0;
let vectorIm: f64 = 0;
let chargeRe: f64 = 0;
let chargeIm: f64 = 0;

function scatterOne(testEnd: i32, sourceEnd: i32, same: bool, slopes: f64, re: f64, im: f64, times: f64): void {
  const sumRe = slopes * chargeIm - vectorRe * im - vectorIm * re;
  const sumIm = vectorRe * re - vectorIm * im - slopes * chargeRe;
  scatter(testEnd, sourceEnd, same, times * sumRe, times * sumIm);
}

/** The same of the cross kernel. */
let crossRe: f64 = 0;
let crossIm: f64 = 0;

function scatterCross(testEnd: i32, sourceEnd: i32, same: bool, re: f64, im: f64, times: f64): void {
  scatter(testEnd, sourceEnd, same, -times * (crossRe * im + crossIm * re), times * (crossRe * re - crossIm * im));
}

/** How many times the pair counts for itself and its images (Orbits of the door). */
function timesOf(orbits: usize, sizes: usize, e: i32, f: i32): f64 {
  if (!orbits) return 1;
  const begin = load<i32>(orbits + usize(4 * f));
  if (begin < e) return 0;
  const size = f64(load<i32>(sizes + usize(4 * e)));
  return begin === e && f !== e ? size / 2 : size;
}

/** All constants of an operation: what `pairTerms` says. */
let k: f64 = 0;
let constants: usize = 0;

function readConstants(at: usize): void {
  constants = at;
  k = load<f64>(at);
  crossRe = load<f64>(at, 72);
  crossIm = load<f64>(at, 80);
}

/** Factors of a pair with directions at `t` and `u`, whose charges' part sums to re + j im times its scalar factor. */
function setFactors(t: usize, u: usize, scalar: f64): void {
  const levels = load<f64>(t) * load<f64>(u) + load<f64>(t, 8) * load<f64>(u, 8);
  const uprights = load<f64>(t, 16) * load<f64>(u, 16);
  const vectorFactor = load<f64>(constants, 8);
  vectorRe = vectorFactor * (load<f64>(constants, 24) * levels + load<f64>(constants, 40) * uprights);
  vectorIm = vectorFactor * (load<f64>(constants, 32) * levels + load<f64>(constants, 48) * uprights);
  const factorRe = load<f64>(constants, 56);
  const factorIm = load<f64>(constants, 64);
  const sumRe = scalar * (re0 + re1 + re2 + re3);
  const sumIm = scalar * (im0 + im1 + im2 + im3);
  chargeRe = factorRe * sumRe - factorIm * sumIm;
  chargeIm = factorRe * sumIm + factorIm * sumRe;
}

function scatterMoments(e: i32, f: i32, times: f64): void {
  const same = e === f;
  scatterOne(2 * e, 2 * f, same, 1, re0, im0, times);
  scatterOne(2 * e, 2 * f + 1, same, -1, re1, im1, times);
  scatterOne(2 * e + 1, 2 * f, same, -1, re2, im2, times);
  scatterOne(2 * e + 1, 2 * f + 1, same, 1, re3, im3, times);
}

function scatterCrossMoments(e: i32, f: i32, times: f64): void {
  const same = e === f;
  scatterCross(2 * e, 2 * f, same, crossRe0, crossIm0, times);
  scatterCross(2 * e, 2 * f + 1, same, crossRe1, crossIm1, times);
  scatterCross(2 * e + 1, 2 * f, same, crossRe2, crossIm2, times);
  scatterCross(2 * e + 1, 2 * f + 1, same, crossRe3, crossIm3, times);
}

let testPoints: usize = 0;

/** Moments of one pair, from its static ones at `near` or, where that is 0, of a distant pair; and its factors. */
function momentsOf(
  tests: usize,
  testCount: i32,
  e: i32,
  sources: usize,
  sourceCount: i32,
  f: i32,
  near: usize,
  sourcePoints: usize,
): void {
  const t = directionOf(tests, testCount, e);
  const u = directionOf(sources, sourceCount, f);
  const l = lengthOf(tests, testCount, e);
  const m = lengthOf(sources, sourceCount, f);
  const testRadius = radiusOf(tests, testCount, e);
  const sourceRadius = radiusOf(sources, sourceCount, f);
  if (near) {
    const radii = testRadius * testRadius + sourceRadius * sourceRadius;
    remainderMoments(startOf(tests, e), t, l, startOf(sources, f), u, m, radii, k);
    addStatic(near);
  } else {
    const p = testPoints + usize(e) * pointBytes;
    const q = sourcePoints + usize(f) * pointBytes;
    distantMoments(p, t, q, u, testRadius, sourceRadius, l * m, ruleFor(p, q, max(l, m)), k);
  }
  setFactors(t, u, load<f64>(constants, 16) / (l * m));
}

/** Fills the points of both; returns where those of the sources are. */
function fillAll(tests: usize, testCount: i32, sources: usize, sourceCount: i32, work: usize): usize {
  fillPoints(tests, testCount, work);
  if (tests === sources) return work;
  const at = work + usize(testCount) * pointBytes;
  fillPoints(sources, sourceCount, at);
  return at;
}

const hasCross = (): bool => crossRe !== 0 || crossIm !== 0;

/**
 * `constants`: wavenumber, vector factor, scalar factor, then re and im of the factors of level and upright parts and of
 * charges, and vector factor times those of level and upright parts together (0 without). `work`: `pointBytes` for every
 * element of both. `re`, `im`: the matrix, size x size.
 */
export function pairTerms(
  tests: usize,
  testCount: i32,
  sources: usize,
  sourceCount: i32,
  rowStart: usize,
  column: usize,
  moments: usize,
  ends: usize,
  unknowns: usize,
  signs: usize,
  orbits: usize,
  sizes: usize,
  constantsAt: usize,
  work: usize,
  size: i32,
  re: usize,
  im: usize,
): void {
  scatterInto(ends, unknowns, signs, size, re, im);
  readConstants(constantsAt);
  testPoints = work;
  const sourcePoints = fillAll(tests, testCount, sources, sourceCount, work);
  for (let e = 0; e < testCount; e++) {
    if (orbits && load<i32>(orbits + usize(4 * e)) !== e) continue;
    let next = load<i32>(rowStart + usize(4 * e));
    const end = load<i32>(rowStart + usize(4 * e), 4);
    for (let f = e; f < sourceCount; f++) {
      const close = next < end && load<i32>(column + usize(4 * next)) === f;
      if (close) next++;
      const times = timesOf(orbits, sizes, e, f);
      if (times === 0) continue;
      momentsOf(
        tests,
        testCount,
        e,
        sources,
        sourceCount,
        f,
        close ? moments + usize(32 * (next - 1)) : 0,
        sourcePoints,
      );
      scatterMoments(e, f, times);
      if (!hasCross() || !crossMoments(tests, testCount, e, sources, sourceCount, f, k, close)) continue;
      scatterCrossMoments(e, f, times);
    }
  }
}
