/** Static moments of close elements that do not share an axis. Definition: the readable twin's skewMoments. */
import { directionOf, lengthOf, radiusOf, startOf } from "./elements";
import { gradedEdges } from "./gradedEdges";
import { panelEdges } from "./kept";
import { logarithm } from "./logarithm";

/** Gauss-Legendre rule of six points: points, then weights. */
const rule = memory.data<f64>([
  -0.932469514203152, -0.6612093864662646, -0.23861918608319693, 0.23861918608319693, 0.6612093864662646,
  0.932469514203152, 0.1713244923791705, 0.3607615730481386, 0.46791393457269104, 0.46791393457269104,
  0.3607615730481386, 0.1713244923791705,
]);

const both = (x: v128): f64 => f64x2.extract_lane(x, 0) + f64x2.extract_lane(x, 1);

/** y + sqrt(y^2 + d2) without cancellation; `root` is the square root. */
function stretched(y: v128, root: v128, d2: v128): v128 {
  const sum = f64x2.add(f64x2.abs(y), root);
  return v128.bitselect(f64x2.div(d2, sum), sum, f64x2.lt(y, f64x2.splat(0)));
}

const spread = (radius: f64, along: f64, squared: f64): f64 =>
  ((radius * radius) / 2) * ((3 * along * along) / squared - 1);

/** Four moments of test e and source f, written at `out`. */
export function skewMoments(
  tests: usize,
  testCount: i32,
  e: i32,
  sources: usize,
  sourceCount: i32,
  f: i32,
  out: usize,
): void {
  const length = lengthOf(tests, testCount, e);
  const m = lengthOf(sources, sourceCount, f);
  const t = directionOf(tests, testCount, e);
  const u = directionOf(sources, sourceCount, f);
  const p = startOf(tests, e);
  const q = startOf(sources, f);
  let cosine: f64 = 0;
  let alongTest: f64 = 0;
  let alongSource: f64 = 0;
  let offsetSquared: f64 = 0;
  let centreTest: f64 = 0;
  let centreSource: f64 = 0;
  let centreSquared: f64 = 0;
  for (let c: usize = 0; c < 24; c += 8) {
    const tc = load<f64>(t + c);
    const uc = load<f64>(u + c);
    const offset = load<f64>(p + c) - load<f64>(q + c);
    cosine += tc * uc;
    alongTest += offset * tc;
    alongSource += offset * uc;
    offsetSquared += offset * offset;
    const between = offset + (tc * length - uc * m) / 2;
    centreTest += between * tc;
    centreSource += between * uc;
    centreSquared += between * between;
  }
  const testRadius = radiusOf(tests, testCount, e);
  const sourceRadius = radiusOf(sources, sourceCount, f);
  const radiusSquared = (testRadius * testRadius + sourceRadius * sourceRadius) / 2;
  const tubes = spread(testRadius, centreTest, centreSquared) + spread(sourceRadius, centreSource, centreSquared);
  const parallel = 1 - abs(cosine) < 1e-9;
  const added = parallel ? 0.0 : max(tubes, radiusSquared / 4);
  const aside = parallel ? sqrt(max(0.0, offsetSquared - alongSource * alongSource)) : 0.0;
  const finest = max(sqrt(radiusSquared), aside) / 2;
  const count = gradedEdges(length, -alongTest, m * cosine - alongTest, finest);
  let m0 = f64x2.splat(0);
  let m1 = m0;
  let m2 = m0;
  let m3 = m0;
  const zero = m0;
  for (let panel = 1; panel < count; panel++) {
    const from = load<f64>(panelEdges + usize(8 * (panel - 1)));
    const half = (load<f64>(panelEdges + usize(8 * panel)) - from) / 2;
    for (let i: usize = 0; i < 48; i += 16) {
      const s = f64x2.add(
        f64x2.splat(from),
        f64x2.mul(f64x2.splat(half), f64x2.add(f64x2.splat(1), v128.load(rule + i))),
      );
      const x = f64x2.add(f64x2.splat(alongSource), f64x2.mul(s, f64x2.splat(cosine)));
      const distance = f64x2.add(f64x2.splat(offsetSquared), f64x2.mul(s, f64x2.add(f64x2.splat(2 * alongTest), s)));
      const d2 = f64x2.add(f64x2.max(zero, f64x2.sub(distance, f64x2.mul(x, x))), f64x2.splat(added));
      const ahead = f64x2.sub(f64x2.splat(m), x);
      const farRoot = f64x2.sqrt(f64x2.add(f64x2.mul(ahead, ahead), d2));
      const nearRoot = f64x2.sqrt(f64x2.add(f64x2.mul(x, x), d2));
      const ratio = f64x2.div(stretched(ahead, farRoot, d2), stretched(f64x2.neg(x), nearRoot, d2));
      const whole = logarithm(ratio);
      const rising = f64x2.div(f64x2.add(f64x2.sub(farRoot, nearRoot), f64x2.mul(x, whole)), f64x2.splat(m));
      const weight = f64x2.mul(f64x2.splat(half), v128.load(rule + i, 48));
      const up = f64x2.div(f64x2.mul(weight, s), f64x2.splat(length));
      const down = f64x2.sub(weight, up);
      const falling = f64x2.sub(whole, rising);
      m0 = f64x2.add(m0, f64x2.mul(down, falling));
      m1 = f64x2.add(m1, f64x2.mul(down, rising));
      m2 = f64x2.add(m2, f64x2.mul(up, falling));
      m3 = f64x2.add(m3, f64x2.mul(up, rising));
    }
  }
  store<f64>(out, both(m0));
  store<f64>(out + 8, both(m1));
  store<f64>(out + 16, both(m2));
  store<f64>(out + 24, both(m3));
}
