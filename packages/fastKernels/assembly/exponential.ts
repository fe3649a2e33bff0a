/**
 * Exponential of two numbers at once: reduction by multiples of ln 2 in two parts (Cody and Waite 1980, from memory), then
 * Taylor's polynomial on [-ln(2)/2, ln(2)/2], cut where the next term is below 1e-17. Relative error below 1e-15; from -700
 * down the value at -700 is given, above 700 that at 700.
 */

const inverse: f64 = Math.LOG2E;
/** ln 2 in two parts, the first of 33 bits: its products with whole numbers below 2^20 are exact. */
const first: f64 = 0.6931471803691238;
const second: f64 = 1.9082149292705877e-10;
const most: f64 = 700;

/** Two neighbouring terms. */
function two(r: v128, low: f64, high: f64): v128 {
  return f64x2.add(f64x2.mul(r, f64x2.splat(high)), f64x2.splat(low));
}

function join(low: v128, power: v128, high: v128): v128 {
  return f64x2.add(f64x2.mul(power, high), low);
}

export function exponential(x: v128): v128 {
  const inside = f64x2.max(f64x2.splat(-most), f64x2.min(f64x2.splat(most), x));
  const n = f64x2.nearest(f64x2.mul(inside, f64x2.splat(inverse)));
  const r = f64x2.sub(f64x2.sub(inside, f64x2.mul(n, f64x2.splat(first))), f64x2.mul(n, f64x2.splat(second)));
  // Terms joined in pairs, then pairs in pairs: few wait for each other.
  const r2 = f64x2.mul(r, r);
  const r4 = f64x2.mul(r2, r2);
  const r8 = f64x2.mul(r4, r4);
  const a = join(two(r, 1, 1), r2, two(r, 0.5, 1.6666666666666666e-1));
  const b = join(
    two(r, 4.1666666666666664e-2, 8.333333333333333e-3),
    r2,
    two(r, 1.388888888888889e-3, 1.984126984126984e-4),
  );
  const c = join(
    two(r, 2.48015873015873e-5, 2.7557319223985893e-6),
    r2,
    two(r, 2.755731922398589e-7, 2.505210838544172e-8),
  );
  const d = two(r, 2.08767569878681e-9, 1.6059043836821613e-10);
  const sum = join(join(a, r4, b), r8, join(c, r4, d));
  const power = i64x2.extend_low_i32x4_s(i32x4.trunc_sat_f64x2_s_zero(n));
  return f64x2.mul(sum, i64x2.shl(i64x2.add(power, i64x2.splat(1023)), 52));
}
