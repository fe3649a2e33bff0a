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

function term(sum: v128, r: v128, coefficient: f64): v128 {
  return f64x2.add(f64x2.mul(sum, r), f64x2.splat(coefficient));
}

export function exponential(x: v128): v128 {
  const inside = f64x2.max(f64x2.splat(-most), f64x2.min(f64x2.splat(most), x));
  const n = f64x2.nearest(f64x2.mul(inside, f64x2.splat(inverse)));
  const r = f64x2.sub(f64x2.sub(inside, f64x2.mul(n, f64x2.splat(first))), f64x2.mul(n, f64x2.splat(second)));
  let sum = f64x2.splat(1.6059043836821613e-10);
  sum = term(sum, r, 2.08767569878681e-9);
  sum = term(sum, r, 2.505210838544172e-8);
  sum = term(sum, r, 2.755731922398589e-7);
  sum = term(sum, r, 2.7557319223985893e-6);
  sum = term(sum, r, 2.48015873015873e-5);
  sum = term(sum, r, 1.984126984126984e-4);
  sum = term(sum, r, 1.388888888888889e-3);
  sum = term(sum, r, 8.333333333333333e-3);
  sum = term(sum, r, 4.1666666666666664e-2);
  sum = term(sum, r, 1.6666666666666666e-1);
  sum = term(sum, r, 0.5);
  sum = term(sum, r, 1);
  sum = term(sum, r, 1);
  const power = i64x2.extend_low_i32x4_s(i32x4.trunc_sat_f64x2_s_zero(n));
  return f64x2.mul(sum, i64x2.shl(i64x2.add(power, i64x2.splat(1023)), 52));
}
