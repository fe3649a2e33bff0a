/** Number pairs of a Touchstone line to scattering parameters. One-port and two-port, normalised to the reference. */
import type { Complex } from "@feedpath/engine";
import type { NumberFormat, Parameter } from "./optionLine";

const degree = Math.PI / 180;

export function complexOf(first: number, second: number, format: NumberFormat): Complex {
  if (format === "RI") return { re: first, im: second };
  const size = format === "DB" ? 10 ** (first / 20) : first;
  return { re: size * Math.cos(second * degree), im: size * Math.sin(second * degree) };
}

const times = (a: Complex, b: Complex): Complex => ({ re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re });
const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
const minus = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
const one: Complex = { re: 1, im: 0 };

function over(a: Complex, b: Complex): Complex {
  const size = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / size, im: (a.im * b.re - a.re * b.im) / size };
}

const negative = (a: Complex): Complex => ({ re: 0 - a.re, im: 0 - a.im });

/**
 * Row-major scattering matrix from a row-major matrix of S, Y or Z, the latter two normalised to the reference
 * (Touchstone 1.1): S = (Z - 1)(Z + 1)^-1, S = (1 - Y)(1 + Y)^-1. Not finite where the matrix to invert is singular.
 */
export function toScattering(matrix: readonly Complex[], parameter: Parameter): readonly Complex[] {
  if (parameter === "S") return matrix;
  if (matrix.length === 1) {
    const [x = one] = matrix;
    return [parameter === "Z" ? over(minus(x, one), plus(x, one)) : over(minus(one, x), plus(one, x))];
  }
  const [a = one, b = one, c = one, d = one] = matrix;
  const sum = [plus(a, one), b, c, plus(d, one)] as const;
  const difference =
    parameter === "Z" ? [minus(a, one), b, c, minus(d, one)] : [minus(one, a), negative(b), negative(c), minus(one, d)];
  const determinant = minus(times(sum[0], sum[3]), times(sum[1], sum[2]));
  const inverse = [sum[3], negative(sum[1]), negative(sum[2]), sum[0]].map((entry) => over(entry, determinant));
  const entry = (row: number, column: number): Complex =>
    plus(
      times(difference[2 * row] ?? one, inverse[column] ?? one),
      times(difference[2 * row + 1] ?? one, inverse[2 + column] ?? one),
    );
  return [entry(0, 0), entry(0, 1), entry(1, 0), entry(1, 1)];
}
