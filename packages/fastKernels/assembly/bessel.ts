/**
 * J0(x) and J1(x)/x of two real numbers x >= 0 at once. Below 25: Taylor polynomials about a grid of spacing 1/4, both
 * functions of one x side by side in a vector; coefficients from Bessel's equation, starting values from the trapezoid rule
 * on J_n(x) = mean of cos(n t - x sin t). Above: Hankel's asymptotic series to x^-15 (Abramowitz and Stegun 1964, 9.2.5 to
 * 9.2.10). Absolute error below 1e-14.
 */
import { besselTable } from "./kept";
import { cosine, sinCos, sine } from "./sinCos";

/** Results of the last call. */
export let j0: v128 = f64x2.splat(0);
export let j1OverX: v128 = f64x2.splat(0);

const cells: i32 = 100;
const limit: f64 = 25;
const perUnit: f64 = 4;
const terms: i32 = 11;
/** Bytes of one cell: pairs (J0, J1/x), lowest power first. */
const cellBytes: usize = 176;
const table: usize = besselTable;
let isMade: bool = false;

/** J_n(x), exact to rounding while x < 40. */
function integralRepresentation(n: f64, x: f64): f64 {
  const count = 96;
  let sum: f64 = 0;
  for (let i = 0; i < count; i++) {
    const t = (2 * Math.PI * (f64(i) + 0.5)) / count;
    sinCos(f64x2.splat(t));
    sinCos(f64x2.splat(n * t - x * f64x2.extract_lane(sine, 0)));
    sum += f64x2.extract_lane(cosine, 0);
  }
  return sum / count;
}

function fillCell(cell: i32): void {
  const x = (f64(cell) + 0.5) / perUnit;
  const at = table + usize(cell) * cellBytes;
  const order0 = integralRepresentation(0, x);
  const order1 = integralRepresentation(1, x);
  store<f64>(at, order0);
  store<f64>(at + 8, order1 / x);
  store<f64>(at + 16, -order1);
  store<f64>(at + 24, (order0 - (2 * order1) / x) / x);
  // x y'' + p y' + x y = 0 with p = 1 for J0, p = 3 for J1/x.
  for (let k = 0; k + 2 < terms; k++) {
    for (let f: usize = 0; f < 2; f++) {
      const here = at + usize(k) * 16 + 8 * f;
      const before = k > 0 ? load<f64>(here - 16) : 0;
      const p = f64(k) + 1 + 2 * f64(f);
      const lower = x * load<f64>(here) + before;
      store<f64>(here + 32, -(f64(k + 1) * p * load<f64>(here + 16) + lower) / (x * f64(k + 1) * f64(k + 2)));
    }
  }
}

function makeTable(): void {
  for (let cell = 0; cell < cells; cell++) fillCell(cell);
  isMade = true;
}

function byTable(x: v128): void {
  if (!isMade) makeTable();
  const scaled = f64x2.mul(x, f64x2.splat(perUnit));
  const cell = f64x2.min(f64x2.floor(scaled), f64x2.splat(f64(cells - 1)));
  const offset = f64x2.mul(f64x2.sub(scaled, f64x2.add(cell, f64x2.splat(0.5))), f64x2.splat(1 / perUnit));
  const numbers = i32x4.trunc_sat_f64x2_u_zero(cell);
  const a = table + usize(i32x4.extract_lane(numbers, 0)) * cellBytes;
  const b = table + usize(i32x4.extract_lane(numbers, 1)) * cellBytes;
  const s = v128.shuffle<f64>(offset, offset, 0, 0);
  const t = v128.shuffle<f64>(offset, offset, 1, 1);
  let y = v128.load(a, 160);
  let z = v128.load(b, 160);
  y = f64x2.add(f64x2.mul(y, s), v128.load(a, 144));
  z = f64x2.add(f64x2.mul(z, t), v128.load(b, 144));
  y = f64x2.add(f64x2.mul(y, s), v128.load(a, 128));
  z = f64x2.add(f64x2.mul(z, t), v128.load(b, 128));
  y = f64x2.add(f64x2.mul(y, s), v128.load(a, 112));
  z = f64x2.add(f64x2.mul(z, t), v128.load(b, 112));
  y = f64x2.add(f64x2.mul(y, s), v128.load(a, 96));
  z = f64x2.add(f64x2.mul(z, t), v128.load(b, 96));
  y = f64x2.add(f64x2.mul(y, s), v128.load(a, 80));
  z = f64x2.add(f64x2.mul(z, t), v128.load(b, 80));
  y = f64x2.add(f64x2.mul(y, s), v128.load(a, 64));
  z = f64x2.add(f64x2.mul(z, t), v128.load(b, 64));
  y = f64x2.add(f64x2.mul(y, s), v128.load(a, 48));
  z = f64x2.add(f64x2.mul(z, t), v128.load(b, 48));
  y = f64x2.add(f64x2.mul(y, s), v128.load(a, 32));
  z = f64x2.add(f64x2.mul(z, t), v128.load(b, 32));
  y = f64x2.add(f64x2.mul(y, s), v128.load(a, 16));
  z = f64x2.add(f64x2.mul(z, t), v128.load(b, 16));
  y = f64x2.add(f64x2.mul(y, s), v128.load(a));
  z = f64x2.add(f64x2.mul(z, t), v128.load(b));
  j0 = v128.shuffle<f64>(y, z, 0, 2);
  j1OverX = v128.shuffle<f64>(y, z, 1, 3);
}

function term(sum: v128, z: v128, coefficient: f64): v128 {
  return f64x2.add(f64x2.mul(sum, z), f64x2.splat(coefficient));
}

function byHankel(x: v128): void {
  const inverse = f64x2.div(f64x2.splat(1), x);
  const z = f64x2.mul(inverse, inverse);
  let p0 = f64x2.splat(-118838.42625678325);
  p0 = term(p0, z, 3038.090510922384);
  p0 = term(p0, z, -110.01714026924674);
  p0 = term(p0, z, 6.074042001273483);
  p0 = term(p0, z, -0.5725014209747314);
  p0 = term(p0, z, 0.112152099609375);
  p0 = term(p0, z, -0.0703125);
  p0 = term(p0, z, 1);
  let q0 = f64x2.splat(832859.3040162893);
  q0 = term(q0, z, -18257.755474293175);
  q0 = term(q0, z, 551.3358961220206);
  q0 = term(q0, z, -24.380529699556064);
  q0 = term(q0, z, 1.7277275025844574);
  q0 = term(q0, z, -0.22710800170898438);
  q0 = term(q0, z, 0.0732421875);
  q0 = f64x2.mul(term(q0, z, -0.125), inverse);
  let p1 = f64x2.splat(127641.2726461746);
  p1 = term(p1, z, -3302.2722944808525);
  p1 = term(p1, z, 121.59789187653587);
  p1 = term(p1, z, -6.883914268109947);
  p1 = term(p1, z, 0.6765925884246826);
  p1 = term(p1, z, -0.144195556640625);
  p1 = term(p1, z, 0.1171875);
  p1 = term(p1, z, 1);
  let q1 = f64x2.splat(-890297.8767070678);
  q1 = term(q1, z, 19718.37591223663);
  q1 = term(q1, z, -603.8440767050702);
  q1 = term(q1, z, 27.248827311268542);
  q1 = term(q1, z, -1.993531733751297);
  q1 = term(q1, z, 0.2775764465332031);
  q1 = term(q1, z, -0.1025390625);
  q1 = f64x2.mul(term(q1, z, 0.375), inverse);
  sinCos(x);
  const size = f64x2.sqrt(f64x2.mul(inverse, f64x2.splat(1 / Math.PI)));
  const sum = f64x2.mul(size, f64x2.add(cosine, sine));
  const difference = f64x2.mul(size, f64x2.sub(sine, cosine));
  j0 = f64x2.sub(f64x2.mul(p0, sum), f64x2.mul(q0, difference));
  j1OverX = f64x2.mul(inverse, f64x2.add(f64x2.mul(p1, difference), f64x2.mul(q1, sum)));
}

/** Writes `j0` and `j1OverX` of both lanes. */
export function bessel(x: v128): void {
  const far = f64x2.ge(x, f64x2.splat(limit));
  if (!v128.any_true(far)) {
    byTable(x);
    return;
  }
  byHankel(f64x2.max(x, f64x2.splat(limit)));
  if (i64x2.all_true(far)) return;
  const h0 = j0;
  const h1 = j1OverX;
  byTable(f64x2.min(x, f64x2.splat(limit)));
  j0 = v128.bitselect(h0, j0, far);
  j1OverX = v128.bitselect(h1, j1OverX, far);
}
