/**
 * J0(z) and J1(z)/z of two complex numbers near the real axis at once, Re z >= 0. Power series up to |z| = 12 (Abramowitz
 * and Stegun 1964, 9.1.10), Hankel's series beyond (9.2.5 to 9.2.10). Absolute error below 1e-10 of the envelope
 * e^|im| / sqrt(1 + |z|) for |im| up to 40.
 */
import { exponential } from "./exponential";
import { cosine, sinCos, sine } from "./sinCos";

/** Results of the last call: real and imaginary parts. */
export let c0: v128 = f64x2.splat(0);
export let d0: v128 = f64x2.splat(0);
export let c1: v128 = f64x2.splat(0);
export let d1: v128 = f64x2.splat(0);

const seriesRadius: f64 = 12;
const mostTerms: i32 = 60;
/** Hankel's series falls until its 24th term at least. */
const hankelTerms: i32 = 22;

function bySeries(re: v128, im: v128): void {
  const qr = f64x2.mul(f64x2.splat(0.25), f64x2.sub(f64x2.mul(im, im), f64x2.mul(re, re)));
  const qi = f64x2.mul(f64x2.splat(-0.5), f64x2.mul(re, im));
  let tr = f64x2.splat(1);
  let ti = f64x2.splat(0);
  let ar = tr;
  let ai = ti;
  let br = tr;
  let bi = ti;
  for (let k = 1; k < mostTerms; k++) {
    const c = f64x2.splat(1 / (f64(k) * f64(k)));
    const next = f64x2.mul(f64x2.sub(f64x2.mul(tr, qr), f64x2.mul(ti, qi)), c);
    ti = f64x2.mul(f64x2.add(f64x2.mul(tr, qi), f64x2.mul(ti, qr)), c);
    tr = next;
    ar = f64x2.add(ar, tr);
    ai = f64x2.add(ai, ti);
    const d = f64x2.splat(1 / f64(k + 1));
    br = f64x2.add(br, f64x2.mul(tr, d));
    bi = f64x2.add(bi, f64x2.mul(ti, d));
    const size = f64x2.add(f64x2.abs(tr), f64x2.abs(ti));
    if (i64x2.all_true(f64x2.lt(size, f64x2.splat(1e-18)))) break;
  }
  c0 = ar;
  d0 = ai;
  c1 = f64x2.mul(br, f64x2.splat(0.5));
  d1 = f64x2.mul(bi, f64x2.splat(0.5));
}

/** P and Q of Hankel's series. */
let pr: v128 = f64x2.splat(0);
let pi: v128 = f64x2.splat(0);
let qr: v128 = f64x2.splat(0);
let qi: v128 = f64x2.splat(0);

/** For 1/z and order 0 or 1, `square` = 4 n^2. */
function hankelSums(ir: v128, ii: v128, square: f64): void {
  let tr = f64x2.splat(1);
  let ti = f64x2.splat(0);
  pr = tr;
  pi = ti;
  qr = ti;
  qi = ti;
  for (let k = 1; k < hankelTerms; k++) {
    const odd = f64(2 * k - 1);
    // Signs go + - - + from k = 1 on: Q, -P, -Q, P.
    const c = f64x2.splat((square - odd * odd) / f64(8 * k));
    const next = f64x2.mul(f64x2.sub(f64x2.mul(tr, ir), f64x2.mul(ti, ii)), c);
    ti = f64x2.mul(f64x2.add(f64x2.mul(tr, ii), f64x2.mul(ti, ir)), c);
    tr = next;
    const sign = f64x2.splat((k & 3) === 0 || (k & 3) === 1 ? 1 : -1);
    if (k & 1) {
      qr = f64x2.add(qr, f64x2.mul(sign, tr));
      qi = f64x2.add(qi, f64x2.mul(sign, ti));
    } else {
      pr = f64x2.add(pr, f64x2.mul(sign, tr));
      pi = f64x2.add(pi, f64x2.mul(sign, ti));
    }
    const size = f64x2.add(f64x2.abs(tr), f64x2.abs(ti));
    if (i64x2.all_true(f64x2.lt(size, f64x2.splat(1e-17)))) break;
  }
}

function byHankel(re: v128, im: v128): void {
  const square = f64x2.add(f64x2.mul(re, re), f64x2.mul(im, im));
  const size = f64x2.sqrt(square);
  const ir = f64x2.div(re, square);
  const ii = f64x2.neg(f64x2.div(im, square));
  // sqrt(2/(pi z)) by the square root of z in the right half-plane.
  const rootRe = f64x2.sqrt(f64x2.mul(f64x2.splat(0.5), f64x2.add(size, re)));
  const rootIm = f64x2.div(im, f64x2.add(rootRe, rootRe));
  const amplitude = f64x2.div(f64x2.splat(Math.sqrt(2 / Math.PI)), size);
  const fr = f64x2.mul(amplitude, rootRe);
  const fi = f64x2.neg(f64x2.mul(amplitude, rootIm));
  const up = f64x2.mul(f64x2.splat(0.5), exponential(im));
  const down = f64x2.div(f64x2.splat(0.25), up);
  const cosh = f64x2.add(up, down);
  const sinh = f64x2.sub(up, down);
  sinCos(f64x2.sub(re, f64x2.splat(Math.PI / 4)));
  const cosRe = f64x2.mul(cosine, cosh);
  const cosIm = f64x2.neg(f64x2.mul(sine, sinh));
  const sinRe = f64x2.mul(sine, cosh);
  const sinIm = f64x2.mul(cosine, sinh);
  hankelSums(ir, ii, 0);
  let sr = f64x2.sub(
    f64x2.sub(f64x2.mul(pr, cosRe), f64x2.mul(pi, cosIm)),
    f64x2.sub(f64x2.mul(qr, sinRe), f64x2.mul(qi, sinIm)),
  );
  let si = f64x2.sub(
    f64x2.add(f64x2.mul(pr, cosIm), f64x2.mul(pi, cosRe)),
    f64x2.add(f64x2.mul(qr, sinIm), f64x2.mul(qi, sinRe)),
  );
  c0 = f64x2.sub(f64x2.mul(fr, sr), f64x2.mul(fi, si));
  d0 = f64x2.add(f64x2.mul(fr, si), f64x2.mul(fi, sr));
  hankelSums(ir, ii, 4);
  // A quarter turn less: its cosine is the sine here, its sine minus the cosine.
  sr = f64x2.add(
    f64x2.sub(f64x2.mul(pr, sinRe), f64x2.mul(pi, sinIm)),
    f64x2.sub(f64x2.mul(qr, cosRe), f64x2.mul(qi, cosIm)),
  );
  si = f64x2.add(
    f64x2.add(f64x2.mul(pr, sinIm), f64x2.mul(pi, sinRe)),
    f64x2.add(f64x2.mul(qr, cosIm), f64x2.mul(qi, cosRe)),
  );
  const r1 = f64x2.sub(f64x2.mul(fr, sr), f64x2.mul(fi, si));
  const i1 = f64x2.add(f64x2.mul(fr, si), f64x2.mul(fi, sr));
  c1 = f64x2.sub(f64x2.mul(r1, ir), f64x2.mul(i1, ii));
  d1 = f64x2.add(f64x2.mul(r1, ii), f64x2.mul(i1, ir));
}

/** Writes `c0` + j `d0` = J0(z) and `c1` + j `d1` = J1(z)/z of both lanes. */
export function besselComplex(re: v128, im: v128): void {
  const square = f64x2.add(f64x2.mul(re, re), f64x2.mul(im, im));
  const far = f64x2.gt(square, f64x2.splat(seriesRadius * seriesRadius));
  if (!v128.any_true(far)) {
    bySeries(re, im);
    return;
  }
  byHankel(v128.bitselect(re, f64x2.splat(seriesRadius), far), v128.bitselect(im, f64x2.splat(0), far));
  if (i64x2.all_true(far)) return;
  const h0 = c0;
  const g0 = d0;
  const h1 = c1;
  const g1 = d1;
  bySeries(v128.bitselect(f64x2.splat(0), re, far), v128.bitselect(f64x2.splat(0), im, far));
  c0 = v128.bitselect(h0, c0, far);
  d0 = v128.bitselect(g0, d0, far);
  c1 = v128.bitselect(h1, c1, far);
  d1 = v128.bitselect(g1, d1, far);
}
