/**
 * Sums a sampled Sommerfeld spectrum at all pairs of a distance and a height sum: Bessel functions once a distance, weighted
 * depth factors once a height sum, two nodes a vector. Work of the readable twin's spectralSums.
 */
import { bessel, j0, j1OverX } from "./bessel";
import { besselComplex, c0, c1, d0, d1 } from "./besselComplex";
import { exponential } from "./exponential";
import { cosine, sinCos, sine } from "./sinCos";

/** Evanescent nodes that have decayed to e^-20 (1 + rho/s) = 2e-9 of it are left out. */
const forgotten: f64 = 20;

/** Number of nodes that matter at height sum `s`. */
function countNodes(nodes: i32, waves: i32, depthIm: usize, s: f64, farthest: f64): i32 {
  const kept = forgotten + Math.log1p(farthest / s);
  let count = waves;
  while (count < nodes && -load<f64>(depthIm + 8 * usize(count)) * s <= kept) count++;
  return count;
}

/** Weighted depth factors: for each pair of nodes re, im of two or four kernels. The node past an odd count gets 0. */
function fillFactors(
  count: i32,
  kinds: i32,
  depthRe: usize,
  depthIm: usize,
  weights: usize,
  stride: usize,
  s: f64,
  factors: usize,
): void {
  const sum = f64x2.splat(s);
  let to = factors;
  for (let n = 0; n < count; n += 2) {
    const at = usize(8 * n);
    const re = v128.load(depthRe + at);
    let size = exponential(f64x2.mul(v128.load(depthIm + at), sum));
    if (n + 1 === count) size = f64x2.replace_lane(size, 1, 0);
    let wr = size;
    let wi = f64x2.splat(0);
    if (v128.any_true(f64x2.ne(re, wi))) {
      sinCos(f64x2.mul(re, sum));
      wr = f64x2.mul(size, cosine);
      wi = f64x2.neg(f64x2.mul(size, sine));
    }
    let from = weights + at;
    for (let kind = 0; kind < kinds; kind++) {
      const a = v128.load(from);
      const b = v128.load(from + stride);
      v128.store(to, f64x2.sub(f64x2.mul(a, wr), f64x2.mul(b, wi)));
      v128.store(to + 16, f64x2.add(f64x2.mul(a, wi), f64x2.mul(b, wr)));
      from += 2 * stride;
      to += 32;
    }
  }
}

/** Bessel functions at one distance: for each pair of nodes J0 and J1/x, re and im of each. */
function fillBessel(nodes: i32, radialRe: usize, radialIm: usize, rho: f64, row: usize): void {
  const distance = f64x2.splat(rho);
  let to = row;
  for (let n = 0; n < nodes; n += 2) {
    const at = usize(8 * n);
    const re = f64x2.mul(v128.load(radialRe + at), distance);
    const im = v128.load(radialIm + at);
    if (v128.any_true(f64x2.ne(im, f64x2.splat(0)))) {
      besselComplex(re, f64x2.mul(im, distance));
      v128.store(to, c0);
      v128.store(to + 16, c1);
      v128.store(to + 32, d0);
      v128.store(to + 48, d1);
    } else {
      bessel(re);
      v128.store(to, j0);
      v128.store(to + 16, j1OverX);
    }
    to += 64;
  }
}

function put(out: usize, step: usize, re: v128, im: v128): void {
  store<f64>(out, f64x2.extract_lane(re, 0) + f64x2.extract_lane(re, 1));
  store<f64>(out + step, f64x2.extract_lane(im, 0) + f64x2.extract_lane(im, 1));
}

/** Sums of four kernels over nodes, the first `bent` of them with complex Bessel functions. */
function addFour(bent: i32, count: i32, row: usize, factors: usize, out: usize, step: usize): void {
  let hr = f64x2.splat(0);
  let hi = hr;
  let sr = hr;
  let si = hr;
  let vr = hr;
  let vi = hr;
  let cr = hr;
  let ci = hr;
  let b = row;
  let f = factors;
  for (let n = 0; n < count; n += 2) {
    const x = v128.load(b);
    const y = v128.load(b, 16);
    hr = f64x2.add(hr, f64x2.mul(x, v128.load(f)));
    hi = f64x2.add(hi, f64x2.mul(x, v128.load(f, 16)));
    sr = f64x2.add(sr, f64x2.mul(x, v128.load(f, 32)));
    si = f64x2.add(si, f64x2.mul(x, v128.load(f, 48)));
    vr = f64x2.add(vr, f64x2.mul(x, v128.load(f, 64)));
    vi = f64x2.add(vi, f64x2.mul(x, v128.load(f, 80)));
    cr = f64x2.add(cr, f64x2.mul(y, v128.load(f, 96)));
    ci = f64x2.add(ci, f64x2.mul(y, v128.load(f, 112)));
    if (n < bent) {
      const u = v128.load(b, 32);
      const v = v128.load(b, 48);
      hr = f64x2.sub(hr, f64x2.mul(u, v128.load(f, 16)));
      hi = f64x2.add(hi, f64x2.mul(u, v128.load(f)));
      sr = f64x2.sub(sr, f64x2.mul(u, v128.load(f, 48)));
      si = f64x2.add(si, f64x2.mul(u, v128.load(f, 32)));
      vr = f64x2.sub(vr, f64x2.mul(u, v128.load(f, 80)));
      vi = f64x2.add(vi, f64x2.mul(u, v128.load(f, 64)));
      cr = f64x2.sub(cr, f64x2.mul(v, v128.load(f, 112)));
      ci = f64x2.add(ci, f64x2.mul(v, v128.load(f, 96)));
    }
    b += 64;
    f += 128;
  }
  put(out, step, hr, hi);
  put(out + 2 * step, step, sr, si);
  put(out + 4 * step, step, vr, vi);
  put(out + 6 * step, step, cr, ci);
}

/** The same of the first two kernels alone. */
function addTwo(bent: i32, count: i32, row: usize, factors: usize, out: usize, step: usize): void {
  let hr = f64x2.splat(0);
  let hi = hr;
  let sr = hr;
  let si = hr;
  let b = row;
  let f = factors;
  for (let n = 0; n < count; n += 2) {
    const x = v128.load(b);
    hr = f64x2.add(hr, f64x2.mul(x, v128.load(f)));
    hi = f64x2.add(hi, f64x2.mul(x, v128.load(f, 16)));
    sr = f64x2.add(sr, f64x2.mul(x, v128.load(f, 32)));
    si = f64x2.add(si, f64x2.mul(x, v128.load(f, 48)));
    if (n < bent) {
      const u = v128.load(b, 32);
      hr = f64x2.sub(hr, f64x2.mul(u, v128.load(f, 16)));
      hi = f64x2.add(hi, f64x2.mul(u, v128.load(f)));
      sr = f64x2.sub(sr, f64x2.mul(u, v128.load(f, 48)));
      si = f64x2.add(si, f64x2.mul(u, v128.load(f, 32)));
    }
    b += 64;
    f += 64;
  }
  put(out, step, hr, hi);
  put(out + 2 * step, step, sr, si);
}

/**
 * `spectrum`: planes of `stride` bytes: re, im of radial and of depth, then of the weights of four kernels; padded to an even
 * number of nodes. `kinds`: 4, or 2 where only level currents are. Work: `row` 32 bytes a node; `factors` 16 `kinds` bytes a
 * node and height sum; `counts` 4 bytes a height sum. `out`: re, im of the kernels, each rho x s, s fastest.
 */
export function sumSpectrum(
  nodes: i32,
  waves: i32,
  kinds: i32,
  spectrum: usize,
  stride: usize,
  rho: usize,
  rhoCount: i32,
  s: usize,
  sCount: i32,
  row: usize,
  factors: usize,
  counts: usize,
  out: usize,
): void {
  const radialIm = spectrum + stride;
  const depthIm = spectrum + 3 * stride;
  let farthest: f64 = 0;
  for (let i = 0; i < rhoCount; i++) farthest = max(farthest, load<f64>(rho + 8 * usize(i)));
  let most = 0;
  const block = usize(2 * kinds) * stride;
  for (let j = 0; j < sCount; j++) {
    const sum = load<f64>(s + 8 * usize(j));
    const count = countNodes(nodes, waves, depthIm, sum, farthest);
    most = max(most, count);
    store<i32>(counts + 4 * usize(j), count);
    const to = factors + usize(j) * block;
    fillFactors(count, kinds, spectrum + 2 * stride, depthIm, spectrum + 4 * stride, stride, sum, to);
  }
  let bent = waves;
  while (bent > 0 && load<f64>(radialIm + 8 * usize(bent - 1)) === 0) bent--;
  const step = usize(8 * rhoCount * sCount);
  let to = out;
  for (let i = 0; i < rhoCount; i++) {
    fillBessel(most, spectrum, radialIm, load<f64>(rho + 8 * usize(i)), row);
    for (let j = 0; j < sCount; j++) {
      const count = load<i32>(counts + 4 * usize(j));
      const from = factors + usize(j) * block;
      if (kinds === 4) addFour(bent, count, row, from, to, step);
      else addTwo(bent, count, row, from, to, step);
      to += 8;
    }
  }
}
