/**
 * Sine and cosine of two numbers at once: reduction by multiples of pi/2 in three parts (Cody and Waite 1980, from memory),
 * then Taylor polynomials on [-pi/4, pi/4], cut where the next term is below 1e-17. Absolute error below 2e-16 + 1e-16 |x|
 * for |x| up to 1e6; larger arguments lose digits and nothing here has them.
 */

/** Results of the last call. */
export let sine: v128 = f64x2.splat(0);
export let cosine: v128 = f64x2.splat(0);

const twoOverPi: f64 = 0.6366197723675814;
/** pi/2 in parts of 33 bits: the products with quadrants below 2^20 are exact. */
const first: f64 = 1.5707963267341256;
const second: f64 = 6.077100506303966e-11;
const third: f64 = 2.0222662487959506e-21;

function term(sum: v128, square: v128, coefficient: f64): v128 {
  return f64x2.add(f64x2.mul(sum, square), f64x2.splat(coefficient));
}

/** Writes `sine` and `cosine` of both lanes. */
export function sinCos(x: v128): void {
  const turns = f64x2.nearest(f64x2.mul(x, f64x2.splat(twoOverPi)));
  let r = f64x2.sub(x, f64x2.mul(turns, f64x2.splat(first)));
  r = f64x2.sub(r, f64x2.mul(turns, f64x2.splat(second)));
  r = f64x2.sub(r, f64x2.mul(turns, f64x2.splat(third)));
  const square = f64x2.mul(r, r);

  let s = f64x2.splat(2.8114572543455206e-15);
  s = term(s, square, -7.647163731819816e-13);
  s = term(s, square, 1.6059043836821613e-10);
  s = term(s, square, -2.505210838544172e-8);
  s = term(s, square, 2.7557319223985893e-6);
  s = term(s, square, -1.984126984126984e-4);
  s = term(s, square, 8.333333333333333e-3);
  s = term(s, square, -1.6666666666666666e-1);
  s = f64x2.add(r, f64x2.mul(f64x2.mul(r, square), s));

  let c = f64x2.splat(4.779477332387385e-14);
  c = term(c, square, -1.1470745597729725e-11);
  c = term(c, square, 2.08767569878681e-9);
  c = term(c, square, -2.755731922398589e-7);
  c = term(c, square, 2.48015873015873e-5);
  c = term(c, square, -1.388888888888889e-3);
  c = term(c, square, 4.1666666666666664e-2);
  c = f64x2.sub(
    f64x2.splat(1),
    f64x2.sub(f64x2.mul(f64x2.splat(0.5), square), f64x2.mul(f64x2.mul(square, square), c)),
  );

  // Odd quadrants exchange both; the second bit of the quadrant, or of the one after, turns the sign.
  const quadrant = i64x2.extend_low_i32x4_s(i32x4.trunc_sat_f64x2_s_zero(turns));
  const odd = i64x2.eq(v128.and(quadrant, i64x2.splat(1)), i64x2.splat(1));
  const sineSign = i64x2.shl(v128.and(quadrant, i64x2.splat(2)), 62);
  const cosineSign = i64x2.shl(v128.and(i64x2.add(quadrant, i64x2.splat(1)), i64x2.splat(2)), 62);
  sine = v128.xor(v128.bitselect(c, s, odd), sineSign);
  cosine = v128.xor(v128.bitselect(s, c, odd), cosineSign);
}
