/**
 * J0 and J1 of a complex argument near the real axis, without allocation. Must not know any physics.
 * Power series up to |z| = 12 (Abramowitz and Stegun 1964, 9.1.10), Hankel's series beyond (9.2.5 to 9.2.10).
 */

const seriesRadius = 12;
const mostTerms = 60;

/**
 * Writes re, im of J0(z) and re, im of J1(z)/z, z = re + j im with re >= 0. Absolute error below 1e-10 of the envelope
 * e^|im| / sqrt(1 + |z|) for |im| up to 40; e^|im| overflows beyond 700.
 */
export function besselJComplex(re: number, im: number, out: Float64Array): void {
  if (re * re + im * im <= seriesRadius * seriesRadius) writeSeries(re, im, out);
  else writeHankel(re, im, out);
}

function writeSeries(re: number, im: number, out: Float64Array): void {
  const qr = (im * im - re * re) / 4;
  const qi = (-re * im) / 2;
  let [tr, ti] = [1, 0];
  let [ar, ai, br, bi] = [1, 0, 1, 0];
  for (let k = 1; k < mostTerms; k++) {
    const c = 1 / (k * k);
    const next = (tr * qr - ti * qi) * c;
    ti = (tr * qi + ti * qr) * c;
    tr = next;
    ar += tr;
    ai += ti;
    br += tr / (k + 1);
    bi += ti / (k + 1);
    if (Math.abs(tr) + Math.abs(ti) < 1e-18) break;
  }
  out[0] = ar;
  out[1] = ai;
  out[2] = br / 2;
  out[3] = bi / 2;
}

const sums = new Float64Array(4);

/** P and Q of Hankel's series for order 0 or 1 (`square` = 4 n^2), up to the smallest term. */
function hankelSums(re: number, im: number, square: number): void {
  const size = re * re + im * im;
  const [ir, ii] = [re / size, -im / size];
  let [tr, ti] = [1, 0];
  let last = 1;
  sums[0] = 1;
  sums[1] = sums[2] = sums[3] = 0;
  for (let k = 1; k < mostTerms; k++) {
    const c = (square - (2 * k - 1) ** 2) / (8 * k);
    const next = (tr * ir - ti * ii) * c;
    ti = (tr * ii + ti * ir) * c;
    tr = next;
    const magnitude = Math.abs(tr) + Math.abs(ti);
    if (magnitude >= last) break;
    last = magnitude;
    // k = 1: Q, 2: -P, 3: -Q, 4: P, and so on.
    const sign = k % 4 === 0 || k % 4 === 1 ? 1 : -1;
    const place = k % 2 === 0 ? 0 : 2;
    sums[place]! += sign * tr;
    sums[place + 1]! += sign * ti;
    if (magnitude < 1e-17) break;
  }
}

function writeHankel(re: number, im: number, out: Float64Array): void {
  const size = Math.sqrt(re * re + im * im);
  const half = -Math.atan2(im, re) / 2;
  const amplitude = Math.sqrt(2 / (Math.PI * size));
  const [fr, fi] = [amplitude * Math.cos(half), amplitude * Math.sin(half)];
  const [up, down] = [Math.exp(im) / 2, Math.exp(-im) / 2];
  for (let order = 0; order < 2; order++) {
    const chi = re - ((2 * order + 1) * Math.PI) / 4;
    hankelSums(re, im, 4 * order);
    const [c, s] = [Math.cos(chi), Math.sin(chi)];
    const [cosRe, cosIm] = [c * (up + down), -s * (up - down)];
    const [sinRe, sinIm] = [s * (up + down), c * (up - down)];
    const sr = sums[0]! * cosRe - sums[1]! * cosIm - sums[2]! * sinRe + sums[3]! * sinIm;
    const si = sums[0]! * cosIm + sums[1]! * cosRe - sums[2]! * sinIm - sums[3]! * sinRe;
    out[2 * order] = fr * sr - fi * si;
    out[2 * order + 1] = fr * si + fi * sr;
  }
  const [r1, i1] = [out[2]!, out[3]!];
  out[2] = (r1 * re + i1 * im) / (size * size);
  out[3] = (i1 * re - r1 * im) / (size * size);
}
