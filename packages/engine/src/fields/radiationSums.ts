/** Sums of current moments with plane-wave phases: the one loop behind far field and soil heat. */
import type { DrivenAntenna } from "../wires/driveAntenna";

/** Radiation vector along the plane of incidence (u), across it (v) and upwards (n), A m; re and im. */
export interface RadiationSum {
  readonly u: Float64Array;
  readonly v: Float64Array;
  readonly n: Float64Array;
}

export const emptySum = (): RadiationSum => ({
  u: new Float64Array(2),
  v: new Float64Array(2),
  n: new Float64Array(2),
});

/**
 * Each current flows evenly around its wire: to second order in the radius that weakens it by 1 - (k_across a)^2/4.
 * N = sum of c t e^{j(kr cos(phi) x + kr sin(phi) y + kz z)}, phi from x towards y; `kz` carries its sign.
 */
export function sumMoments(driven: DrivenAntenna, radial: number, phi: number, kz: number, out: RadiationSum): void {
  const { position, direction, radius, count } = driven.solution.model.points;
  const { re: cr, im: ci } = driven.moments;
  const c = Math.cos(phi);
  const s = Math.sin(phi);
  const square = radial * radial + kz * kz;
  let [ur, ui, vr, vi, nr, ni] = [0, 0, 0, 0, 0, 0];
  for (let p = 0; p < count; p++) {
    const phase = radial * (c * position[3 * p]! + s * position[3 * p + 1]!) + kz * position[3 * p + 2]!;
    const along = direction[3 * p]! * c + direction[3 * p + 1]! * s;
    const parallel = along * radial + direction[3 * p + 2]! * kz;
    const tube = 1 - ((square - parallel * parallel) * radius[p]! ** 2) / 4;
    const pr = tube * Math.cos(phase);
    const pi = tube * Math.sin(phase);
    const re = cr[p]! * pr - ci[p]! * pi;
    const im = cr[p]! * pi + ci[p]! * pr;
    const across = direction[3 * p + 1]! * c - direction[3 * p]! * s;
    ur += along * re;
    ui += along * im;
    vr += across * re;
    vi += across * im;
    nr += direction[3 * p + 2]! * re;
    ni += direction[3 * p + 2]! * im;
  }
  out.u[0] = ur;
  out.u[1] = ui;
  out.v[0] = vr;
  out.v[1] = vi;
  out.n[0] = nr;
  out.n[1] = ni;
}
