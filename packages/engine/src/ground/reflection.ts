/** Reflection of plane waves, propagating and evanescent, at a homogeneous half-space. e^{+jwt}, roots with Im <= 0. */
import { type Complex, complex } from "../numerics/complex";
import { divideInto, lowerRootInto } from "../numerics/complexInto";

export interface Reflection {
  /** Vertical wavenumber in the soil, rad/m. */
  readonly soilDepth: Complex;
  /** TM coefficient of the tangential electric field; -1 over a perfect plane. */
  readonly tm: Complex;
  /** TE coefficient of the tangential electric field; -1 over a perfect plane. */
  readonly te: Complex;
  /** (te - tm)/kr^2 in m^2, without cancellation. */
  readonly difference: Complex;
}

/**
 * Writes re, im of soilDepth, tm, te and difference for vertical wavenumber kz = `re` + j `im` (rad/m, Im <= 0) in the air
 * with wavenumber `k` (rad/m), over complex relative permittivity `eps`. Formulae of a half-space as in Michalski and Zheng
 * 1990 (from memory), derived anew.
 */
export function writeReflection(re: number, im: number, k: number, eps: Complex, out: Float64Array): void {
  const stepRe = 1 - eps.re;
  const stepIm = -eps.im;
  lowerRootInto(out, 0, re * re - im * im - stepRe * k * k, 2 * re * im - stepIm * k * k);
  const k1Re = out[0]!;
  const k1Im = out[1]!;
  const epsRe = eps.re * re - eps.im * im;
  const epsIm = eps.re * im + eps.im * re;
  const tmRe = k1Re + epsRe;
  const tmIm = k1Im + epsIm;
  const teRe = re + k1Re;
  const teIm = im + k1Im;
  divideInto(out, 2, k1Re - epsRe, k1Im - epsIm, tmRe, tmIm);
  // te = (kz - k1)/(kz + k1), extended with its denominator: no cancellation at grazing or dense soil.
  divideInto(out, 4, stepRe * k * k, stepIm * k * k, teRe * teRe - teIm * teIm, 2 * teRe * teIm);
  divideInto(out, 6, 2 * stepRe, 2 * stepIm, teRe * tmRe - teIm * tmIm, teRe * tmIm + teIm * tmRe);
}

const eight = new Float64Array(8);

/** Coefficients for vertical wavenumber `kz`, see writeReflection. */
export function reflection(kz: Complex, k: number, eps: Complex): Reflection {
  writeReflection(kz.re, kz.im, k, eps, eight);
  return {
    soilDepth: complex(eight[0]!, eight[1]!),
    tm: complex(eight[2]!, eight[3]!),
    te: complex(eight[4]!, eight[5]!),
    difference: complex(eight[6]!, eight[7]!),
  };
}
