/** Reads reflected kernels from a table that tables.ts of the host has laid out. Definition: the readable twin's tableLookUp. */
import { lookUpRows } from "./kept";
import { cosine, sinCos, sine } from "./sinCos";

/** re and im of the kernels of the last look-up, in order G_xx, K, G_zz, T/rho. */
export let g0: v128 = f64x2.splat(0);
export let g1: v128 = f64x2.splat(0);
export let g2: v128 = f64x2.splat(0);
export let g3: v128 = f64x2.splat(0);

/** Places of numbers in a table of 16 bytes and in its bands of 64 bytes each. */
const wavenumberAt: usize = 0;
const kernelsAt: usize = 8;
const bandCountAt: usize = 12;
const firstBand: usize = 16;
const bandBytes: usize = 64;
const fromAt: usize = 0;
const toAt: usize = 8;
const rangeAt: usize = 16;
const sumsAt: usize = 24;
const sumCountAt: usize = 28;
const edgesAt: usize = 32;
const piecesAt: usize = 36;
const termsInUAt: usize = 40;
const termsInSAt: usize = 44;
const coefficientsAt: usize = 48;

const uRow: usize = lookUpRows;
const sRow: usize = lookUpRows + 512;

/** The band and height sum whose row in s was made last; its column, or -1 for polynomials. */
let lastBand: usize = 0;
let lastSum: f64 = 0;
let column: i32 = -1;

/** To be called before the first look-up of an operation: another one may have had other tables at the same place. */
export function forgetLookUps(): void {
  lastBand = 0;
}

function chebyshevRow(x: f64, count: i32, row: usize): void {
  const inside = min(1.0, max(-1.0, x));
  let before: f64 = 1;
  let here = inside;
  store<f64>(row, 1);
  for (let k = 1; k < count; k++) {
    store<f64>(row + usize(8 * k), here);
    const next = 2 * inside * here - before;
    before = here;
    here = next;
  }
}

function makeSumRow(band: usize, s: f64): void {
  lastBand = band;
  lastSum = s;
  column = -1;
  const sums = usize(load<u32>(band + sumsAt));
  const from = load<f64>(band + fromAt);
  if (sums === 0) {
    const x = (2 * Math.log(s / from)) / Math.log(load<f64>(band + toAt) / from) - 1;
    chebyshevRow(x, load<i32>(band + termsInSAt), sRow);
    return;
  }
  const count = load<i32>(band + sumCountAt);
  column = 0;
  let least = abs(load<f64>(sums) - s);
  for (let c = 1; c < count; c++) {
    const distance = abs(load<f64>(sums + usize(8 * c)) - s);
    if (distance < least) {
      least = distance;
      column = c;
    }
  }
}

/** Adds up terms of the first two kernels, which follow each other at `at`, then all `step` bytes. */
function addTwo(at: usize, step: usize, row: usize, count: i32): void {
  let a = f64x2.splat(0);
  let b = a;
  let from = at;
  for (let i = 0; i < count; i++) {
    const weight = v128.load64_splat(row + usize(8 * i));
    a = f64x2.add(a, f64x2.mul(weight, v128.load(from)));
    b = f64x2.add(b, f64x2.mul(weight, v128.load(from, 16)));
    from += step;
  }
  g0 = a;
  g1 = b;
}

function addFour(at: usize, step: usize, row: usize, count: i32): void {
  let a = f64x2.splat(0);
  let b = a;
  let c = a;
  let d = a;
  let from = at;
  for (let i = 0; i < count; i++) {
    const weight = v128.load64_splat(row + usize(8 * i));
    a = f64x2.add(a, f64x2.mul(weight, v128.load(from)));
    b = f64x2.add(b, f64x2.mul(weight, v128.load(from, 16)));
    c = f64x2.add(c, f64x2.mul(weight, v128.load(from, 32)));
    d = f64x2.add(d, f64x2.mul(weight, v128.load(from, 48)));
    from += step;
  }
  g0 = a;
  g1 = b;
  g2 = c;
  g3 = d;
}

/** Terms in s for each term in u, `step` bytes from term to term in s. */
function addAll(at: usize, step: usize, termsInU: i32, termsInS: i32, kernels: i32): void {
  let a = f64x2.splat(0);
  let b = a;
  let c = a;
  let d = a;
  let from = at;
  for (let i = 0; i < termsInU; i++) {
    const weight = v128.load64_splat(uRow + usize(8 * i));
    if (kernels === 4) addFour(from, step, sRow, termsInS);
    else addTwo(from, step, sRow, termsInS);
    a = f64x2.add(a, f64x2.mul(weight, g0));
    b = f64x2.add(b, f64x2.mul(weight, g1));
    c = f64x2.add(c, f64x2.mul(weight, g2));
    d = f64x2.add(d, f64x2.mul(weight, g3));
    from += step * usize(termsInS);
  }
  g0 = a;
  g1 = b;
  g2 = c;
  g3 = d;
}

function rotated(g: v128, c: v128, q: v128): v128 {
  return f64x2.add(f64x2.mul(g, c), f64x2.mul(v128.shuffle<f64>(g, g, 1, 0), q));
}

/** Writes `g0` .. `g3` at distance rho and height sum s (m); with `kernels` 2 the first two only. */
export function lookUp(table: usize, rho: f64, s: f64, kernels: i32): void {
  let band = table + firstBand;
  const bands = load<i32>(table + bandCountAt);
  for (let b = 1; b < bands; b++) {
    const next = table + firstBand + usize(b) * bandBytes;
    if (load<f64>(next + fromAt) > s * (1 + 1e-9)) break;
    band = next;
  }
  if (band !== lastBand || s !== lastSum) makeSumRow(band, s);
  const ratio = rho / load<f64>(band + fromAt);
  const u = min(0.5 * Math.log(1 + ratio * ratio), load<f64>(band + rangeAt));
  let edge = usize(load<u32>(band + edgesAt)) + 8;
  let piece = 0;
  const lastPiece = load<i32>(band + piecesAt) - 1;
  while (piece < lastPiece && u > load<f64>(edge)) {
    piece++;
    edge += 8;
  }
  const left = load<f64>(edge - 8);
  const termsInU = load<i32>(band + termsInUAt);
  const termsInS = load<i32>(band + termsInSAt);
  chebyshevRow((2 * (u - left)) / (load<f64>(edge) - left) - 1, termsInU, uRow);
  const step = usize(16 * load<i32>(table + kernelsAt));
  const at = usize(load<u32>(band + coefficientsAt)) + step * usize(piece * termsInU * termsInS);
  if (column < 0) addAll(at, step, termsInU, termsInS, kernels);
  else if (kernels === 4) addFour(at + step * usize(column), step * usize(termsInS), uRow, termsInU);
  else addTwo(at + step * usize(column), step * usize(termsInS), uRow, termsInU);
  const r = Math.sqrt(rho * rho + s * s);
  const size = 1 / (4 * Math.PI * r);
  sinCos(f64x2.splat(load<f64>(table + wavenumberAt) * r));
  const c = f64x2.mul(cosine, f64x2.splat(size));
  const q = f64x2.mul(sine, f64x2(size, -size));
  g0 = rotated(g0, c, q);
  g1 = rotated(g1, c, q);
  if (kernels === 2) return;
  g2 = rotated(g2, c, q);
  g3 = f64x2.mul(rotated(g3, c, q), f64x2.splat(1 / r));
}
