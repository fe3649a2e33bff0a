/**
 * Natural logarithm of two positive normal numbers at once: exponent and mantissa parted, the mantissa taken to
 * [sqrt(1/2), sqrt 2], there 2 atanh((m - 1)/(m + 1)) by its series, cut where the next term is below 1e-17. Error below
 * 3e-16 of the larger of 1 and the result.
 */

const root: f64 = Math.SQRT2;
/** ln 2 in two parts, the first of 33 bits: its products with exponents are exact. */
const first: f64 = 0.6931471803691238;
const second: f64 = 1.9082149292705877e-10;
const mantissa: i64 = 0x000fffffffffffff;
/** Exponent bits of 1. */
const unit: i64 = 0x3ff0000000000000;
/** 2^52 as a number; its last bits count what is put there. */
const counter: i64 = 0x4330000000000000;

function term(sum: v128, square: v128, coefficient: f64): v128 {
  return f64x2.add(f64x2.mul(sum, square), f64x2.splat(coefficient));
}

export function logarithm(x: v128): v128 {
  const biased = i64x2.shr_u(x, 52);
  let exponent = f64x2.sub(v128.or(biased, i64x2.splat(counter)), f64x2.splat(4503599627370496 + 1023));
  let m = v128.or(v128.and(x, i64x2.splat(mantissa)), i64x2.splat(unit));
  const large = f64x2.gt(m, f64x2.splat(root));
  m = v128.bitselect(f64x2.mul(m, f64x2.splat(0.5)), m, large);
  exponent = f64x2.add(exponent, v128.and(large, f64x2.splat(1)));
  const s = f64x2.div(f64x2.sub(m, f64x2.splat(1)), f64x2.add(m, f64x2.splat(1)));
  const square = f64x2.mul(s, s);
  let sum = f64x2.splat(2 / 21.0);
  sum = term(sum, square, 2 / 19.0);
  sum = term(sum, square, 2 / 17.0);
  sum = term(sum, square, 2 / 15.0);
  sum = term(sum, square, 2 / 13.0);
  sum = term(sum, square, 2 / 11.0);
  sum = term(sum, square, 2 / 9.0);
  sum = term(sum, square, 2 / 7.0);
  sum = term(sum, square, 2 / 5.0);
  sum = term(sum, square, 2 / 3.0);
  const small = f64x2.add(f64x2.mul(f64x2.mul(s, square), sum), f64x2.mul(exponent, f64x2.splat(second)));
  const twice = f64x2.add(s, s);
  return f64x2.add(f64x2.mul(exponent, f64x2.splat(first)), f64x2.add(twice, small));
}
