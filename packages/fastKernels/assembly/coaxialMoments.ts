/** Static moments of elements on one axis. Definition: the readable twin's coaxialMoments. */
import { logarithm } from "./logarithm";
import { sinCos, sine } from "./sinCos";

const mostAzimuths: f64 = 500;
const decay: f64 = 9.5;

/** Azimuth means of the second to fourth integral of 1/r, from the last call. */
let f2: f64 = 0;
let f3: f64 = 0;
let f4: f64 = 0;

const both = (x: v128): f64 => f64x2.extract_lane(x, 0) + f64x2.extract_lane(x, 1);

function azimuthMeans(x: f64, a: f64, b: f64): void {
  const u = abs(x);
  const apart = b - a;
  const product = 4 * a * b;
  const c = max(sqrt(u * u + apart * apart), 1e-9 * b) / sqrt(product);
  const stretch = sqrt(c / sqrt(1 + c * c));
  const n = min(mostAzimuths, max(3, ceil((2 * decay) / Math.log((1 + stretch) / (1 - stretch)))));
  const step = Math.PI / (2 * n);
  const shrink = f64x2.splat(1 - stretch * stretch);
  const spread = f64x2.splat(product * stretch * stretch);
  const inverse = f64x2.splat(1 / b);
  const axial = f64x2.splat(u);
  const square = f64x2.splat(u * u);
  let s2 = f64x2.splat(0);
  let s3 = s2;
  let s4 = s2;
  for (let i: f64 = 0; i < n; i += 2) {
    sinCos(f64x2.replace_lane(f64x2.splat(step * (i + 0.5)), 1, step * (i + 1.5)));
    const squared = f64x2.mul(sine, sine);
    const whole = f64x2.sub(f64x2.splat(1), f64x2.mul(shrink, squared));
    const share = f64x2.div(f64x2.splat(stretch / n), whole);
    const weight = i + 1 < n ? share : f64x2.replace_lane(share, 1, 0);
    const d2 = f64x2.add(f64x2.splat(apart * apart), f64x2.div(f64x2.mul(spread, squared), whole));
    const r = f64x2.sqrt(f64x2.add(square, d2));
    const log = logarithm(f64x2.mul(f64x2.add(axial, r), inverse));
    s2 = f64x2.add(s2, f64x2.mul(weight, f64x2.sub(f64x2.mul(axial, log), r)));
    const third = f64x2.sub(
      f64x2.mul(f64x2.sub(f64x2.mul(square, f64x2.splat(0.5)), f64x2.mul(d2, f64x2.splat(0.25))), log),
      f64x2.mul(f64x2.mul(axial, r), f64x2.splat(0.75)),
    );
    s3 = f64x2.add(s3, f64x2.mul(weight, third));
    const power = f64x2.sub(f64x2.mul(square, f64x2.splat(1 / 6.0)), f64x2.mul(d2, f64x2.splat(0.25)));
    const rest = f64x2.sub(
      f64x2.mul(d2, f64x2.splat(5 / 12.0)),
      f64x2.mul(f64x2.add(square, d2), f64x2.splat(11 / 36.0)),
    );
    const fourth = f64x2.add(f64x2.mul(f64x2.mul(power, axial), log), f64x2.mul(rest, r));
    s4 = f64x2.add(s4, f64x2.mul(weight, fourth));
  }
  const sign: f64 = x < 0 ? -1 : x > 0 ? 1 : 0;
  f2 = both(s2);
  f3 = sign * (both(s3) + (a * a) / 4);
  f4 = both(s4) + (a * a * u) / 4;
}

function primitivesAt(x: f64, a: f64, b: f64): void {
  if (abs(x) > 1e-9 * b || b - a > 1e-9 * b) {
    azimuthMeans(x, a, b);
    return;
  }
  f2 = (-4 * a) / Math.PI;
  f3 = 0;
  f4 = (32 * a * a * a) / (27 * Math.PI);
}

/** Of the source's ramps, their integrals at one place of the test, and integrals of these. */
let rising2: f64 = 0;
let rising3: f64 = 0;
let falling2: f64 = 0;
let falling3: f64 = 0;

function rampsAt(s: f64, t0: f64, t1: f64, a: f64, b: f64): void {
  const m = t1 - t0;
  primitivesAt(s - t0, a, b);
  const near2 = f2;
  const near3 = f3;
  const near4 = f4;
  primitivesAt(s - t1, a, b);
  rising2 = -f2 + (near3 - f3) / m;
  rising3 = -f3 + (near4 - f4) / m;
  falling2 = near2 - (near3 - f3) / m;
  falling3 = near3 - (near4 - f4) / m;
}

/** Four moments of a test on [0, length] and a source on [from, to] of the same axis, written at `out`. */
export function coaxialMoments(length: f64, from: f64, to: f64, testRadius: f64, sourceRadius: f64, out: usize): void {
  const a = min(testRadius, sourceRadius);
  const b = max(testRadius, sourceRadius);
  const t0 = min(from, to);
  const t1 = max(from, to);
  rampsAt(0, t0, t1, a, b);
  const startRising2 = rising2;
  const startRising3 = rising3;
  const startFalling2 = falling2;
  const startFalling3 = falling3;
  rampsAt(length, t0, t1, a, b);
  const slopeFalling = (falling3 - startFalling3) / length;
  const slopeRising = (rising3 - startRising3) / length;
  const falling: usize = from < to ? 0 : 8;
  store<f64>(out + falling, -startFalling2 + slopeFalling);
  store<f64>(out + 8 - falling, -startRising2 + slopeRising);
  store<f64>(out + 16 + falling, falling2 - slopeFalling);
  store<f64>(out + 24 - falling, rising2 - slopeRising);
}
