/** Moments of the kernel that couples level and upright currents by quasi-static images. Definition: the readable twin's crossMoments. */
import { directionOf, lengthOf, startOf } from "./elements";
import { gradedEdges } from "./gradedEdges";
import { panelEdges, panelPointBytes, panelPoints } from "./kept";
import { cosine, sinCos, sine } from "./sinCos";

const rounding: f64 = 1e-12;
const finestShare: f64 = 0.7;
const touching: f64 = 1e-4;

/** Gauss-Legendre rule of four points: points, then weights. */
const rule = memory.data<f64>([
  -0.8611363115940526, -0.33998104358485626, 0.33998104358485626, 0.8611363115940526, 0.34785484513745385,
  0.6521451548625461, 0.6521451548625461, 0.34785484513745385,
]);

/** Moments of the last pair, as in pairMoments. */
export let crossRe0: f64 = 0;
export let crossRe1: f64 = 0;
export let crossRe2: f64 = 0;
export let crossRe3: f64 = 0;
export let crossIm0: f64 = 0;
export let crossIm1: f64 = 0;
export let crossIm2: f64 = 0;
export let crossIm3: f64 = 0;

/** The pair at work: test's start less the source's own, sum of heights; directions; t_z u_h - u_z t_h. */
let x: f64 = 0;
let y: f64 = 0;
let sum: f64 = 0;
let tx: f64 = 0;
let ty: f64 = 0;
let tz: f64 = 0;
let ux: f64 = 0;
let uy: f64 = 0;
let uz: f64 = 0;
let crossX: f64 = 0;
let crossY: f64 = 0;

const inside = (place: f64, length: f64): f64 => min(length, max(0.0, place));

const onTest = (at: f64): f64 => -((x - ux * at) * tx + (y - uy * at) * ty + (sum + uz * at) * tz);
const onSource = (at: f64): f64 => (x + tx * at) * ux + (y + ty * at) * uy - (sum + tz * at) * uz;

function distance(a: f64, b: f64): f64 {
  const dx = x + tx * a - ux * b;
  const dy = y + ty * a - uy * b;
  const s = sum + tz * a + uz * b;
  return sqrt(dx * dx + dy * dy + s * s);
}

/** Writes Gauss points on panels between edges, places then weights, at `out`; returns their number. */
function putPoints(edges: i32, out: usize): i32 {
  for (let panel = 1; panel < edges; panel++) {
    const from = load<f64>(panelEdges + usize(8 * (panel - 1)));
    const half = (load<f64>(panelEdges + usize(8 * panel)) - from) / 2;
    for (let i: usize = 0; i < 32; i += 8) {
      const at = out + usize(32 * (panel - 1)) + i;
      store<f64>(at, from + half * (1 + load<f64>(rule + i)));
      store<f64>(at + panelPointBytes, half * load<f64>(rule + i, 32));
    }
  }
  return 4 * (edges - 1);
}

function wholeElement(length: f64, out: usize): i32 {
  store<f64>(panelEdges, 0);
  store<f64>(panelEdges, length, 8);
  return putPoints(2, out);
}

const onSourcePoints = panelPoints + 2 * panelPointBytes;

let testCountOfPoints: i32 = 0;
let sourceCountOfPoints: i32 = 0;

/** Points on both elements, on panels closing in on where they come nearest when they are close. */
function choosePoints(l: f64, m: f64, close: bool): void {
  if (!close) {
    testCountOfPoints = wholeElement(l, panelPoints);
    sourceCountOfPoints = wholeElement(m, onSourcePoints);
    return;
  }
  const t0 = inside(onTest(0), l);
  const t1 = inside(onTest(m), l);
  const s0 = inside(onSource(0), m);
  const s1 = inside(onSource(l), m);
  const nearest = min(min(distance(t0, s0), distance(t0, s1)), min(distance(t1, s0), distance(t1, s1)));
  const finest = finestShare * max(nearest, touching * min(l, m));
  testCountOfPoints = putPoints(gradedEdges(l, t0, t1, finest), panelPoints);
  sourceCountOfPoints = putPoints(gradedEdges(m, s0, s1, finest), onSourcePoints);
}

const both = (v: v128): f64 => f64x2.extract_lane(v, 0) + f64x2.extract_lane(v, 1);

/** False, and nothing worked out, when the directions do not couple. */
export function crossMoments(
  tests: usize,
  testCount: i32,
  e: i32,
  images: usize,
  imageCount: i32,
  f: i32,
  k: f64,
  close: bool,
): bool {
  const t = directionOf(tests, testCount, e);
  const u = directionOf(images, imageCount, f);
  tx = load<f64>(t);
  ty = load<f64>(t, 8);
  tz = load<f64>(t, 16);
  ux = load<f64>(u);
  uy = load<f64>(u, 8);
  uz = -load<f64>(u, 16);
  crossX = tz * ux - uz * tx;
  crossY = tz * uy - uz * ty;
  if (abs(crossX) + abs(crossY) < rounding) return false;
  const p = startOf(tests, e);
  const q = startOf(images, f);
  x = load<f64>(p) - load<f64>(q);
  y = load<f64>(p, 8) - load<f64>(q, 8);
  sum = load<f64>(p, 16) - load<f64>(q, 16);
  const l = lengthOf(tests, testCount, e);
  const m = lengthOf(images, imageCount, f);
  choosePoints(l, m, close);
  sumSamples(l, m, k);
  return true;
}

function sumSamples(l: f64, m: f64, k: f64): void {
  const zero = f64x2.splat(0);
  const one = f64x2.splat(1);
  let fallingRe = zero;
  let fallingIm = zero;
  let risingRe = zero;
  let risingIm = zero;
  let wholeFallingRe = zero;
  let wholeFallingIm = zero;
  let wholeRisingRe = zero;
  let wholeRisingIm = zero;
  for (let i = 0; i < testCountOfPoints; i++) {
    const at = load<f64>(panelPoints + usize(8 * i));
    const share = f64x2.splat(load<f64>(panelPoints + usize(8 * i) + panelPointBytes));
    const up = f64x2.splat(at / l);
    const down = f64x2.splat(1 - at / l);
    for (let j = 0; j < sourceCountOfPoints; j += 2) {
      const from = v128.load(onSourcePoints + usize(8 * j));
      const weight = f64x2.mul(share, v128.load(onSourcePoints + usize(8 * j) + panelPointBytes));
      const dx = f64x2.sub(f64x2.splat(x + tx * at), f64x2.mul(f64x2.splat(ux), from));
      const dy = f64x2.sub(f64x2.splat(y + ty * at), f64x2.mul(f64x2.splat(uy), from));
      const s = f64x2.add(f64x2.splat(sum + tz * at), f64x2.mul(f64x2.splat(uz), from));
      const rho2 = f64x2.add(f64x2.mul(dx, dx), f64x2.mul(dy, dy));
      const r = f64x2.sqrt(f64x2.add(rho2, f64x2.mul(s, s)));
      const shorter = f64x2.div(one, f64x2.add(r, s));
      const phase = f64x2.mul(f64x2.splat(k), f64x2.mul(rho2, shorter));
      sinCos(f64x2.mul(phase, f64x2.splat(0.5)));
      const half = sine;
      const wide = f64x2.div(f64x2.add(half, half), rho2);
      const small = f64x2.lt(phase, f64x2.splat(1e-9));
      const chord = v128.bitselect(f64x2.mul(f64x2.splat(k), shorter), wide, small);
      const re = f64x2.sub(f64x2.div(shorter, r), f64x2.mul(chord, half));
      const im = f64x2.mul(chord, cosine);
      sinCos(f64x2.mul(f64x2.splat(k), r));
      const coupling = f64x2.add(f64x2.mul(f64x2.splat(crossX), dx), f64x2.mul(f64x2.splat(crossY), dy));
      const w = f64x2.mul(weight, coupling);
      const valueRe = f64x2.mul(w, f64x2.add(f64x2.mul(re, cosine), f64x2.mul(im, sine)));
      const valueIm = f64x2.mul(w, f64x2.sub(f64x2.mul(im, cosine), f64x2.mul(re, sine)));
      const rise = f64x2.div(from, f64x2.splat(m));
      const otherRe = f64x2.mul(valueRe, rise);
      const otherIm = f64x2.mul(valueIm, rise);
      wholeFallingRe = f64x2.add(wholeFallingRe, f64x2.mul(down, valueRe));
      wholeFallingIm = f64x2.add(wholeFallingIm, f64x2.mul(down, valueIm));
      wholeRisingRe = f64x2.add(wholeRisingRe, f64x2.mul(up, valueRe));
      wholeRisingIm = f64x2.add(wholeRisingIm, f64x2.mul(up, valueIm));
      fallingRe = f64x2.add(fallingRe, f64x2.mul(down, otherRe));
      fallingIm = f64x2.add(fallingIm, f64x2.mul(down, otherIm));
      risingRe = f64x2.add(risingRe, f64x2.mul(up, otherRe));
      risingIm = f64x2.add(risingIm, f64x2.mul(up, otherIm));
    }
  }
  crossRe1 = both(fallingRe);
  crossIm1 = both(fallingIm);
  crossRe3 = both(risingRe);
  crossIm3 = both(risingIm);
  crossRe0 = both(f64x2.sub(wholeFallingRe, fallingRe));
  crossIm0 = both(f64x2.sub(wholeFallingIm, fallingIm));
  crossRe2 = both(f64x2.sub(wholeRisingRe, risingRe));
  crossIm2 = both(f64x2.sub(wholeRisingIm, risingIm));
}
