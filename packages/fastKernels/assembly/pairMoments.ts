/** Ramp moments of e^{-jkR}/R between two elements by quadrature. Definition: the readable twin's pairMoments. */
import { directionOf, lengthOf, startOf } from "./elements";
import { pairRoom } from "./kept";
import { cosine, sinCos, sine } from "./sinCos";

/**
 * Gauss-Legendre rules of 2, 3 and 4 points, each in four places: heights of a rising ramp at the points (0 to 1), then
 * weights; places beyond the rule weigh nothing.
 */
const rules = memory.data<f64>([
  0.21132486540518713, 0.7886751345948129, 0.5, 0.5, 1, 1, 0, 0, 0.1127016653792583, 0.5, 0.8872983346207417, 0.5,
  0.5555555555555556, 0.8888888888888888, 0.5555555555555556, 0, 0.06943184420297371, 0.33000947820757187,
  0.6699905217924281, 0.9305681557970263, 0.34785484513745385, 0.6521451548625461, 0.6521451548625461,
  0.34785484513745385,
]);
const ruleBytes: usize = 64;
const weights: usize = 32;
const nearRule: usize = rules + ruleBytes;

/** Bytes of the points of one element: x, y, z of each of three rules in four places. */
export const pointBytes: usize = 288;
const pointsOfRule: usize = 96;

const distanceForTwo: f64 = 8;
const distanceForThree: f64 = 4;

/** Eight moments of the last pair: re of falling-falling, falling-rising, rising-falling, rising-rising, then im. */
export let re0: f64 = 0;
export let re1: f64 = 0;
export let re2: f64 = 0;
export let re3: f64 = 0;
export let im0: f64 = 0;
export let im1: f64 = 0;
export let im2: f64 = 0;
export let im3: f64 = 0;

/** Lanes of the test's falling and rising, times the source's falling and rising. */
let fallingRe: v128 = f64x2.splat(0);
let fallingIm: v128 = fallingRe;
let risingRe: v128 = fallingRe;
let risingIm: v128 = fallingRe;
let wholeFallingRe: v128 = fallingRe;
let wholeFallingIm: v128 = fallingRe;
let wholeRisingRe: v128 = fallingRe;
let wholeRisingIm: v128 = fallingRe;

const both = (x: v128): f64 => f64x2.extract_lane(x, 0) + f64x2.extract_lane(x, 1);

function clear(): void {
  const zero = f64x2.splat(0);
  fallingRe = zero;
  fallingIm = zero;
  risingRe = zero;
  risingIm = zero;
  wholeFallingRe = zero;
  wholeFallingIm = zero;
  wholeRisingRe = zero;
  wholeRisingIm = zero;
}

/** Adds samples at height `rise` of the test's ramp and heights `other` of the source's. */
function add(rise: f64, other: v128, re: v128, im: v128): void {
  const up = f64x2.splat(rise);
  const down = f64x2.splat(1 - rise);
  const otherRe = f64x2.mul(re, other);
  const otherIm = f64x2.mul(im, other);
  wholeFallingRe = f64x2.add(wholeFallingRe, f64x2.mul(down, re));
  wholeFallingIm = f64x2.add(wholeFallingIm, f64x2.mul(down, im));
  wholeRisingRe = f64x2.add(wholeRisingRe, f64x2.mul(up, re));
  wholeRisingIm = f64x2.add(wholeRisingIm, f64x2.mul(up, im));
  fallingRe = f64x2.add(fallingRe, f64x2.mul(down, otherRe));
  fallingIm = f64x2.add(fallingIm, f64x2.mul(down, otherIm));
  risingRe = f64x2.add(risingRe, f64x2.mul(up, otherRe));
  risingIm = f64x2.add(risingIm, f64x2.mul(up, otherIm));
}

function collect(): void {
  re1 = both(fallingRe);
  im1 = both(fallingIm);
  re3 = both(risingRe);
  im3 = both(risingIm);
  re0 = both(f64x2.sub(wholeFallingRe, fallingRe));
  im0 = both(f64x2.sub(wholeFallingIm, fallingIm));
  re2 = both(f64x2.sub(wholeRisingRe, risingRe));
  im2 = both(f64x2.sub(wholeRisingIm, risingIm));
}

/** Writes the Gauss points of all elements, `pointBytes` each. */
export function fillPoints(block: usize, count: i32, out: usize): void {
  for (let e = 0; e < count; e++) {
    const length = lengthOf(block, count, e);
    const direction = directionOf(block, count, e);
    const start = startOf(block, e);
    for (let rule: usize = 0; rule < 3; rule++) {
      for (let p: usize = 0; p < 4; p++) {
        const along = length * load<f64>(rules + rule * ruleBytes + 8 * p);
        const to = out + usize(e) * pointBytes + rule * pointsOfRule + 8 * p;
        store<f64>(to, load<f64>(start) + along * load<f64>(direction));
        store<f64>(to, load<f64>(start, 8) + along * load<f64>(direction, 8), 32);
        store<f64>(to, load<f64>(start, 16) + along * load<f64>(direction, 16), 64);
      }
    }
  }
}

/** Index of the rule that a distant pair needs, 0 to 2; `p`, `q`: points of both elements. */
export function ruleFor(p: usize, q: usize, longer: f64): usize {
  const dx = (load<f64>(p) + load<f64>(p, 8) - load<f64>(q) - load<f64>(q, 8)) / 2;
  const dy = (load<f64>(p, 32) + load<f64>(p, 40) - load<f64>(q, 32) - load<f64>(q, 40)) / 2;
  const dz = (load<f64>(p, 64) + load<f64>(p, 72) - load<f64>(q, 64) - load<f64>(q, 72)) / 2;
  const ratio = sqrt(dx * dx + dy * dy + dz * dz) / longer;
  return ratio > distanceForTwo ? 0 : ratio > distanceForThree ? 1 : 2;
}

/** Moments of the test at `t` (direction) with points `p` and the source at `u` with points `q`, both tubes averaged. */
export function distantMoments(
  p: usize,
  t: usize,
  q: usize,
  u: usize,
  testRadius: f64,
  sourceRadius: f64,
  area: f64,
  index: usize,
  k: f64,
): void {
  const rule = rules + index * ruleBytes;
  const from = p + index * pointsOfRule;
  const onto = q + index * pointsOfRule;
  const order = index + 2;
  const at = f64x2.splat((testRadius * testRadius) / 2);
  const as = f64x2.splat((sourceRadius * sourceRadius) / 2);
  const one = f64x2.splat(1);
  const three = f64x2.splat(3);
  const halfSquare = f64x2.splat((k * k) / 2);
  const tx = f64x2.splat(load<f64>(t));
  const ty = f64x2.splat(load<f64>(t, 8));
  const tz = f64x2.splat(load<f64>(t, 16));
  const ux = f64x2.splat(load<f64>(u));
  const uy = f64x2.splat(load<f64>(u, 8));
  const uz = f64x2.splat(load<f64>(u, 16));
  clear();
  for (let i: usize = 0; i < 8 * order; i += 8) {
    const x = f64x2.splat(load<f64>(from + i));
    const y = f64x2.splat(load<f64>(from + i, 32));
    const z = f64x2.splat(load<f64>(from + i, 64));
    const share = f64x2.splat((area / 4) * load<f64>(rule + i, weights));
    for (let j: usize = 0; j < 8 * order; j += 16) {
      const dx = f64x2.sub(x, v128.load(onto + j));
      const dy = f64x2.sub(y, v128.load(onto + j, 32));
      const dz = f64x2.sub(z, v128.load(onto + j, 64));
      const r2 = f64x2.add(f64x2.add(f64x2.mul(dx, dx), f64x2.mul(dy, dy)), f64x2.mul(dz, dz));
      const inverse = f64x2.div(one, r2);
      const ct = f64x2.add(f64x2.add(f64x2.mul(dx, tx), f64x2.mul(dy, ty)), f64x2.mul(dz, tz));
      const cu = f64x2.add(f64x2.add(f64x2.mul(dx, ux), f64x2.mul(dy, uy)), f64x2.mul(dz, uz));
      const c2 = f64x2.mul(f64x2.mul(ct, ct), inverse);
      const d2 = f64x2.mul(f64x2.mul(cu, cu), inverse);
      const added = f64x2.add(
        f64x2.mul(at, f64x2.sub(f64x2.mul(three, c2), one)),
        f64x2.mul(as, f64x2.sub(f64x2.mul(three, d2), one)),
      );
      const r = f64x2.sqrt(f64x2.add(r2, added));
      const across = f64x2.add(f64x2.mul(at, f64x2.sub(one, c2)), f64x2.mul(as, f64x2.sub(one, d2)));
      const tubes = f64x2.sub(one, f64x2.mul(halfSquare, across));
      const w = f64x2.div(f64x2.mul(f64x2.mul(share, v128.load(rule + j, weights)), tubes), r);
      sinCos(f64x2.mul(f64x2.splat(k), r));
      add(load<f64>(rule + i), v128.load(rule + j), f64x2.mul(w, cosine), f64x2.neg(f64x2.mul(w, sine)));
    }
  }
  collect();
}

/** Heights of the source's ramp and weights at six points: three on each side of where the test's point is nearest. */
const heights = pairRoom + 64;
const shares = heights + 48;

/** Moments of the smooth remainder (e^{-jkR} - 1)/R. */
export function remainderMoments(
  start: usize,
  t: usize,
  l: f64,
  sourceStart: usize,
  u: usize,
  length: f64,
  radii: f64,
  k: f64,
): void {
  clear();
  for (let i: usize = 0; i < 24; i += 8) {
    const rise = load<f64>(nearRule + i);
    let foot: f64 = 0;
    let squared: f64 = 0;
    for (let c: usize = 0; c < 24; c += 8) {
      const offset = load<f64>(start + c) + rise * l * load<f64>(t + c) - load<f64>(sourceStart + c);
      foot += offset * load<f64>(u + c);
      squared += offset * offset;
    }
    const aside = f64x2.splat(max(0.0, squared - foot * foot) + radii);
    const kink = min(1.0, max(0.0, foot / length));
    const share = (l * length * load<f64>(nearRule + i, weights)) / 4;
    for (let j: usize = 0; j < 24; j += 8) {
      const at = load<f64>(nearRule + j);
      const weight = share * load<f64>(nearRule + j, weights);
      store<f64>(heights + j, kink * at);
      store<f64>(shares + j, weight * kink);
      store<f64>(heights + j, kink + (1 - kink) * at, 24);
      store<f64>(shares + j, weight * (1 - kink), 24);
    }
    for (let j: usize = 0; j < 48; j += 16) {
      const other = v128.load(heights + j);
      const along = f64x2.sub(f64x2.splat(foot), f64x2.mul(other, f64x2.splat(length)));
      const r = f64x2.sqrt(f64x2.add(f64x2.mul(along, along), aside));
      sinCos(f64x2.mul(r, f64x2.splat(k / 2)));
      const w = f64x2.div(f64x2.mul(f64x2.splat(-2), v128.load(shares + j)), r);
      const chord = f64x2.mul(w, sine);
      add(rise, other, f64x2.mul(chord, sine), f64x2.mul(chord, cosine));
    }
  }
  collect();
}

/** Adds the four static moments at `near`. */
export function addStatic(near: usize): void {
  re0 += load<f64>(near);
  re1 += load<f64>(near, 8);
  re2 += load<f64>(near, 16);
  re3 += load<f64>(near, 24);
}
