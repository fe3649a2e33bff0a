/** J and Y of order 0 and 1 for a real argument, from K on the imaginary axis. Must not know any physics. */
import { modifiedBessel } from "./besselModified";
import { complex, exponential, multiply, scale } from "./complex";

export interface Bessel {
  readonly j0: number;
  readonly j1: number;
  readonly y0: number;
  readonly y1: number;
}

/**
 * J0, J1, Y0, Y1 of x > 0: K_n(-j x) = (pi j/2) j^n H_n(x), the Hankel function of the first kind, J + j Y. Error below 1e-14
 * of the larger of the functions of an order, up to x = 1e4. Source: Abramowitz and Stegun 1964, 9.6.4.
 */
export function bessel(x: number): Bessel {
  if (!(x > 0 && x < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`Bessel functions J and Y: x = ${x}, expected a positive number`);
  }
  const { k0, k1 } = modifiedBessel(complex(0, -x));
  // e^(-z) at z = -j x takes the scaling of K off.
  const unscaled = scale(exponential(complex(0, x)), 2 / Math.PI);
  const [h0, h1] = [multiply(k0, unscaled), multiply(k1, unscaled)];
  return { j0: h0.im, y0: -h0.re, j1: -h1.re, y1: -h1.im };
}
