/** Complex numbers for readable code. Bulk numbers live in split typed arrays instead. Must not know any physics. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const complex = (re: number, im = 0): Complex => ({ re, im });
export const zero: Complex = complex(0);
export const one: Complex = complex(1);
export const j: Complex = complex(0, 1);

export const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
export const subtract = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
export const multiply = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
export const scale = (a: Complex, factor: number): Complex => ({ re: a.re * factor, im: a.im * factor });
export const negate = (a: Complex): Complex => ({ re: -a.re, im: -a.im });
export const conjugate = (a: Complex): Complex => ({ re: a.re, im: -a.im });
export const magnitude = (a: Complex): number => Math.hypot(a.re, a.im);
export const magnitudeSquared = (a: Complex): number => a.re * a.re + a.im * a.im;
export const argument = (a: Complex): number => Math.atan2(a.im, a.re);

/** Quotient a/b by Smith's method: no overflow while the result is representable. */
export function divide(a: Complex, b: Complex): Complex {
  if (Math.abs(b.re) >= Math.abs(b.im)) {
    const ratio = b.im / b.re;
    const denominator = b.re + b.im * ratio;
    return { re: (a.re + a.im * ratio) / denominator, im: (a.im - a.re * ratio) / denominator };
  }
  const ratio = b.re / b.im;
  const denominator = b.re * ratio + b.im;
  return { re: (a.re * ratio + a.im) / denominator, im: (a.im * ratio - a.re) / denominator };
}

export const reciprocal = (a: Complex): Complex => divide(one, a);

/** Principal square root, Re >= 0. */
export function squareRoot(a: Complex): Complex {
  const m = magnitude(a);
  if (m === 0) return zero;
  const t = Math.sqrt((m + Math.abs(a.re)) / 2);
  if (a.re >= 0) return { re: t, im: a.im / (2 * t) };
  return { re: Math.abs(a.im) / (2 * t), im: a.im < 0 ? -t : t };
}

export function exponential(a: Complex): Complex {
  const m = Math.exp(a.re);
  return { re: m * Math.cos(a.im), im: m * Math.sin(a.im) };
}

/** Principal logarithm, -pi < Im <= pi. */
export const logarithm = (a: Complex): Complex => ({ re: Math.log(magnitude(a)), im: argument(a) });

export const hyperbolicCosine = (a: Complex): Complex => ({
  re: Math.cosh(a.re) * Math.cos(a.im),
  im: Math.sinh(a.re) * Math.sin(a.im),
});
export const hyperbolicSine = (a: Complex): Complex => ({
  re: Math.sinh(a.re) * Math.cos(a.im),
  im: Math.cosh(a.re) * Math.sin(a.im),
});
