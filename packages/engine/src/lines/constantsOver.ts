/**
 * Constants of a line at very many frequencies. They are smooth in the logarithm of frequency, so that few exact values
 * tell all: a polynomial through Chebyshev points, held against exact values between them. `lineConstants` defines what is correct.
 */
import { chebyshevTransform, chebyshevZeros } from "../numerics/chebyshevTransform";
import { type LineConstants, type LineOptions, lineConstants } from "./lineConstants";
import type { LineModel } from "./lineModel";

/** Interleaved re, im for each frequency: characteristic impedance in ohm, propagation constant per metre. */
export interface SweptConstants {
  readonly z0: Float64Array;
  readonly gamma: Float64Array;
}

/** Largest deviation from exact values at the points between, relative to |Z0| and to |gamma|. */
const tolerance = 1e-10;
const fewest = 16;
const most = 256;
const width = 4;

/**
 * `frequencies` in Hz, above 0, in any order. Exact where there are too few to gain anything, or where a model is not smooth enough;
 * else within 1e-10 of |Z0| and |gamma|. Errors: those of `lineConstants`.
 */
export function lineConstantsOver(
  model: LineModel,
  frequencies: Float64Array,
  options: LineOptions = {},
): SweptConstants {
  const exactly = (frequency: number) => lineConstants(model, frequency, options);
  const swept = { z0: new Float64Array(2 * frequencies.length), gamma: new Float64Array(2 * frequencies.length) };
  const series = frequencies.length > 4 * fewest ? fitted(exactly, frequencies) : null;
  for (let i = 0; i < frequencies.length; i++) {
    if (series) evaluateInto(swept, i, series, frequencies[i]!);
    else putInto(swept, i, exactly(frequencies[i]!));
  }
  return swept;
}

interface Series {
  readonly coefficients: Float64Array;
  readonly count: number;
  readonly middle: number;
  readonly half: number;
}

/** Null where no affordable polynomial meets the tolerance. */
function fitted(exactly: (frequency: number) => LineConstants, frequencies: Float64Array): Series | null {
  const [low, high] = [
    Math.log(frequencies.reduce((a, b) => Math.min(a, b))),
    Math.log(frequencies.reduce((a, b) => Math.max(a, b))),
  ];
  if (!(high > low)) return null;
  const [middle, half] = [(low + high) / 2, (high - low) / 2];
  for (let count = fewest; count <= most && 2 * count < frequencies.length; count *= 2) {
    const zeros = chebyshevZeros(count);
    const values = new Float64Array(count * width);
    zeros.forEach((x, i) => {
      const frequency = Math.exp(middle + half * x);
      values.set(smooth(exactly(frequency)), i * width);
    });
    const series = { coefficients: chebyshevTransform(values, count, width), count, middle, half };
    if (between(zeros).every((x) => meets(series, exactly(Math.exp(middle + half * x))))) return series;
  }
  return null;
}

/** Places between the zeros, where a polynomial that is too short is furthest off; some of them, and both ends. */
const between = (zeros: Float64Array): number[] => [
  1,
  ...[0.13, 0.37, 0.61, 0.87].map((share) => {
    const i = Math.floor(share * (zeros.length - 1));
    return (zeros[i]! + zeros[i + 1]!) / 2;
  }),
  -1,
];

/** What varies slowly: skin effect goes with the root of frequency, phase with frequency. */
const smooth = ({ frequency, z0, gamma }: LineConstants): readonly number[] => {
  const root = Math.sqrt(frequency);
  return [z0.re, z0.im * root, gamma.re / root, gamma.im / frequency];
};

function meets(series: Series, exact: LineConstants): boolean {
  const got = { z0: new Float64Array(2), gamma: new Float64Array(2) };
  evaluateInto(got, 0, series, exact.frequency);
  const off = (pair: Float64Array, z: { readonly re: number; readonly im: number }): number =>
    Math.hypot(pair[0]! - z.re, pair[1]! - z.im) / Math.hypot(z.re, z.im);
  return off(got.z0, exact.z0) < tolerance && off(got.gamma, exact.gamma) < tolerance;
}

function putInto({ z0, gamma }: SweptConstants, i: number, constants: LineConstants): void {
  z0[2 * i] = constants.z0.re;
  z0[2 * i + 1] = constants.z0.im;
  gamma[2 * i] = constants.gamma.re;
  gamma[2 * i + 1] = constants.gamma.im;
}

/** Clenshaw's recurrence for the four series at once. */
function evaluateInto({ z0, gamma }: SweptConstants, i: number, series: Series, frequency: number): void {
  const { coefficients: c, count, middle, half } = series;
  const x = (Math.log(frequency) - middle) / half;
  const twice = 2 * x;
  let [a1, a2, b1, b2, c1, c2, d1, d2] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (let at = (count - 1) * width; at > 0; at -= width) {
    const [a, b, e, d] = [
      twice * a1 - a2 + c[at]!,
      twice * b1 - b2 + c[at + 1]!,
      twice * c1 - c2 + c[at + 2]!,
      twice * d1 - d2 + c[at + 3]!,
    ];
    [a2, a1, b2, b1, c2, c1, d2, d1] = [a1, a, b1, b, c1, e, d1, d];
  }
  const root = Math.sqrt(frequency);
  z0[2 * i] = x * a1 - a2 + c[0]!;
  z0[2 * i + 1] = (x * b1 - b2 + c[1]!) / root;
  gamma[2 * i] = (x * c1 - c2 + c[2]!) * root;
  gamma[2 * i + 1] = (x * d1 - d2 + c[3]!) * frequency;
}
