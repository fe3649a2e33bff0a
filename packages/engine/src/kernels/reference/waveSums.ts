/** Sums of current moments with the phases of plane waves: far field and soil heat. */
import { numbersOfWave, type PlaneWaves, type RadiatingPoints } from "../waves";

/**
 * See Kernels.sumWaves. Each current flows evenly around its wire: to second order in the radius that weakens it by
 * 1 - (k_across a)^2/4. N = sum of c t e^{j(kr cos(phi) x + kr sin(phi) y + kz z)}.
 */
export function sumWaves(points: RadiatingPoints, waves: PlaneWaves): Float64Array {
  const out = new Float64Array(numbersOfWave * waves.radial.length);
  for (let w = 0; w < waves.radial.length; w++) sumWave(points, waves, w, out);
  return out;
}

function sumWave(
  { position, direction, radius, moments, count }: RadiatingPoints,
  { radial: radials, phi, upright }: PlaneWaves,
  w: number,
  out: Float64Array,
): void {
  const [radial, kz] = [radials[w]!, upright[w]!];
  const [c, s] = [Math.cos(phi[w]!), Math.sin(phi[w]!)];
  const square = radial * radial + kz * kz;
  const at = numbersOfWave * w;
  for (let p = 0; p < count; p++) {
    const phase = radial * (c * position[3 * p]! + s * position[3 * p + 1]!) + kz * position[3 * p + 2]!;
    const along = direction[3 * p]! * c + direction[3 * p + 1]! * s;
    const parallel = along * radial + direction[3 * p + 2]! * kz;
    const tube = 1 - ((square - parallel * parallel) * radius[p]! ** 2) / 4;
    const pr = tube * Math.cos(phase);
    const pi = tube * Math.sin(phase);
    const re = moments.re[p]! * pr - moments.im[p]! * pi;
    const im = moments.re[p]! * pi + moments.im[p]! * pr;
    const across = direction[3 * p + 1]! * c - direction[3 * p]! * s;
    out[at]! += along * re;
    out[at + 1]! += along * im;
    out[at + 2]! += across * re;
    out[at + 3]! += across * im;
    out[at + 4]! += direction[3 * p + 2]! * re;
    out[at + 5]! += direction[3 * p + 2]! * im;
  }
}
