/** Reflected kernels with what varies fast taken out: the distance R to the image, its phase, and, for T, rho. */
import type { ComplexPlane, SpectralSums } from "../kernels/door";

export const planesOf = (steep: boolean): number => (steep ? 8 : 4);

interface Smoothing {
  /** rad/m */
  readonly k: number;
  readonly steep: boolean;
  readonly termsInU: number;
}

interface Taken {
  readonly r: Float64Array;
  readonly c: Float64Array;
  readonly q: Float64Array;
}

/** What is taken out at the places of one piece: 4 pi R e^{jkR} = c + jq. */
function takenOut(k: number, rho: Float64Array, s: Float64Array, first: number, termsInU: number): Taken {
  const count = termsInU * s.length;
  const taken = { r: new Float64Array(count), c: new Float64Array(count), q: new Float64Array(count) };
  for (let i = 0, n = 0; i < termsInU; i++) {
    for (let j = 0; j < s.length; j++, n++) {
      const r = Math.sqrt(rho[first + i]! ** 2 + s[j]! ** 2);
      taken.r[n] = r;
      taken.c[n] = 4 * Math.PI * r * Math.cos(k * r);
      taken.q[n] = 4 * Math.PI * r * Math.sin(k * r);
    }
  }
  return taken;
}

/** Writes values with distance and phase taken out, one kernel of `planes` / 2. */
function putSmooth(out: Float64Array, planes: number, kind: number, plane: ComplexPlane, from: number, taken: Taken) {
  for (let n = 0; n < taken.r.length; n++) {
    const re = plane.re[from + n]!;
    const im = plane.im[from + n]!;
    const size = kind === 3 ? taken.r[n]! : 1;
    out[n * planes + 2 * kind] = size * (re * taken.c[n]! - im * taken.q[n]!);
    out[n * planes + 2 * kind + 1] = size * (re * taken.q[n]! + im * taken.c[n]!);
  }
}

/** Values of one piece with distance and phase taken out, planes fastest. */
export function smoothValues(
  { k, steep, termsInU }: Smoothing,
  sums: SpectralSums,
  rho: Float64Array,
  s: Float64Array,
  first: number,
): Float64Array {
  const planes = planesOf(steep);
  const kinds = [sums.horizontal, sums.scalar, sums.vertical, sums.cross];
  const values = new Float64Array(termsInU * s.length * planes);
  const taken = takenOut(k, rho, s, first, termsInU);
  for (let kind = 0; kind < planes / 2; kind++) putSmooth(values, planes, kind, kinds[kind]!, first * s.length, taken);
  return values;
}
