/**
 * J0 and J1 of a real argument x >= 0. Must not know any physics.
 * Below 25: Taylor series about a grid of spacing 1/2, its coefficients from Bessel's equation
 * (x y'' + y' + x y = 0), its starting values from J_n(x) = mean of cos(n t - x sin t), a sum that
 * converges geometrically. Above: Hankel's asymptotic series. Absolute error below 4e-15 of the envelope.
 */
const spacing = 0.5;
const limit = 25;
const terms = 14;
const table = taylorTable();

/** J_n(x) by the trapezoid rule on its integral over a full period; exact to rounding while x < 40. */
function integralRepresentation(n: number, x: number): number {
  const count = 96;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const t = (2 * Math.PI * (i + 0.5)) / count;
    sum += Math.cos(n * t - x * Math.sin(t));
  }
  return sum / count;
}

function taylorTable(): Float64Array {
  const cells = limit / spacing;
  const all = new Float64Array(cells * terms);
  for (let cell = 0; cell < cells; cell++) {
    const centre = (cell + 0.5) * spacing;
    const c = all.subarray(cell * terms, (cell + 1) * terms);
    c[0] = integralRepresentation(0, centre);
    c[1] = -integralRepresentation(1, centre);
    for (let k = 0; k + 2 < terms; k++) {
      const lower = centre * c[k]! + (k > 0 ? c[k - 1]! : 0);
      c[k + 2] = -((k + 1) * (k + 1) * c[k + 1]! + lower) / (centre * (k + 1) * (k + 2));
    }
  }
  return all;
}

/** Amplitude sums P and Q of Hankel's series for order 0 or 1, to 1e-17 or the smallest term. */
function hankelSums(order: 0 | 1, x: number, out: Float64Array): void {
  const m = 4 * order * order;
  let p = 1;
  let q = 0;
  let term = 1;
  for (let k = 1; k < 30; k += 2) {
    term *= (m - (2 * k - 1) ** 2) / (8 * k * x);
    q += term;
    const next = -term * ((m - (2 * k + 1) ** 2) / (8 * (k + 1) * x));
    if (Math.abs(next) < 1e-17 || Math.abs(next) > Math.abs(term)) break;
    p += next;
    term = next;
  }
  out[0] = p;
  out[1] = q;
}

const sums = new Float64Array(2);

/** Writes J0(x) and J1(x), x >= 0. */
export function besselJ0J1(x: number, out: Float64Array): void {
  if (x >= limit) {
    const c = Math.cos(x);
    const s = Math.sin(x);
    const scale = Math.sqrt(1 / (Math.PI * x));
    hankelSums(0, x, sums);
    out[0] = scale * (sums[0]! * (c + s) - sums[1]! * (s - c));
    hankelSums(1, x, sums);
    out[1] = scale * (sums[0]! * (s - c) + sums[1]! * (s + c));
    return;
  }
  const cell = Math.floor(x / spacing);
  const t = x - (cell + 0.5) * spacing;
  const first = cell * terms;
  let value = 0;
  let slope = 0;
  for (let k = first + terms - 1; k >= first; k--) {
    slope = slope * t + value;
    value = value * t + table[k]!;
  }
  out[0] = value;
  out[1] = -slope;
}

/** J1(x)/x from x and J1(x), x >= 0, finite at 0. Absolute error below 1.6e-14 (that of J1 over the switch at 1/4). */
export function besselJ1OverX(x: number, j1: number): number {
  if (x > 0.25) return j1 / x;
  const h = (x * x) / 4;
  return 0.5 * (1 - (h / 2) * (1 - (h / 6) * (1 - (h / 12) * (1 - h / 20))));
}
