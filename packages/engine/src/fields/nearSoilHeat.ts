/**
 * Power that evanescent waves carry into the soil. Their azimuth integral is a Bessel function, so that the power is a
 * sum over pairs of sample points of real kernels of distance and height sum. With the charges q (continuity turns
 * kr u - kz n into j q), horizontal moments m and vertical ones n, and kz = -ja:
 *   |kz u + kr n|^2 = |a q + k^2 n|^2 / kr^2,   |v|^2 = |m|^2 - |q - a n|^2 / kr^2.
 */
import { buildKernelTable } from "../ground/kernelTable";
import { octaveSampler } from "../ground/octaveSampler";
import { powerNodes } from "../ground/powerNodes";
import type { SoilSurface } from "../ground/soilSurface";
import type { Reach } from "../ground/spectrum";
import type { ComplexPlane, Kernels, Spectrum } from "../kernels/door";
import { complex } from "../numerics/complex";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { type HeightGroups, tablesBetween } from "../wires/heightGroups";
import { imageLoss } from "./imageHeat";

const powerTail = 14;

/**
 * Weights of the kernels that multiply m m (horizontal), q q (scalar), n n (vertical), and q n (imaginary part of it).
 * Without images the scalar kernel's limit c for large decay is left out: integral of c e^{-as} J0 da over all a is
 * c (cos(kR)/R + integral of sin(kz s) J0 dkz from 0 to k); its first part is imageHeat's, the second stays here.
 */
function powerSpectrum(surface: SoilSurface, reach: Reach): Spectrum {
  const { k } = surface;
  const { propagating, evanescent } = powerNodes(surface, reach, powerTail);
  const limit = reach.lessImages ? imageLoss(surface) / (4 * Math.PI) : 0;
  const waves = reach.lessImages ? propagating : [];
  const nodes = [...waves, ...evanescent];
  const plane = (): ComplexPlane => ({ re: new Float64Array(nodes.length), im: new Float64Array(nodes.length) });
  const spectrum = {
    propagating: waves.length,
    steep: reach.steep,
    depth: Float64Array.from(nodes, (n) => n.depth),
    radial: Float64Array.from(nodes, (n, i) =>
      i < waves.length ? Math.sqrt(Math.max(0, k * k - n.depth ** 2)) : Math.hypot(k, n.depth),
    ),
    horizontal: plane(),
    scalar: plane(),
    vertical: plane(),
    cross: plane(),
  };
  waves.forEach(({ weight }, i) => {
    spectrum.scalar.im[i] = weight * limit;
  });
  evanescent.forEach(({ depth: a, weight }, e) => {
    const i = waves.length + e;
    const { tm, te } = surface.transmit(complex(0, -a));
    const radialSquared = k * k + a * a;
    const w = (weight * a) / (2 * Math.PI);
    spectrum.horizontal.re[i] = w * te;
    spectrum.scalar.re[i] = (w * (tm * a * a - te)) / radialSquared - weight * limit;
    spectrum.vertical.re[i] = (w * (tm * k ** 4 - te * a * a)) / radialSquared;
    spectrum.vertical.im[i] = (2 * w * a * (tm * k * k + te)) / radialSquared;
  });
  return spectrum;
}

/** Charge moments of the sample points, A. */
function chargeMoments(driven: DrivenAntenna): ComplexPlane {
  const { points } = driven.solution.model;
  const q = { re: new Float64Array(points.count), im: new Float64Array(points.count) };
  for (let n = 0; n + 1 < points.first.length; n++) {
    for (let a = points.first[n]!; a < points.first[n + 1]!; a++) {
      q.re[points.point[a]!]! += points.charge[a]! * driven.currents.re[n]!;
      q.im[points.point[a]!]! += points.charge[a]! * driven.currents.im[n]!;
    }
  }
  return q;
}

/** Watts carried into the soil by evanescent waves, less what imageHeat holds. */
export function nearSoilHeat(
  driven: DrivenAntenna,
  groups: HeightGroups,
  surface: SoilSurface,
  kernels: Kernels,
): number {
  const { position, direction, count } = driven.solution.model.points;
  // Phase constant 0: these kernels are real, nothing is to be taken out.
  const tables = tablesBetween(groups, (reach) =>
    buildKernelTable(
      0,
      reach,
      octaveSampler(reach, (part) => powerSpectrum(surface, part), kernels.sumSpectrum),
    ),
  );
  const q = chargeMoments(driven);
  const c = driven.moments;
  const product = (a: ComplexPlane, i: number, b: ComplexPlane, j: number): number =>
    a.re[i]! * b.re[j]! + a.im[i]! * b.im[j]!;
  const g = new Float64Array(8);
  let power = 0;
  for (let i = 0; i < count; i++) {
    const [tx, ty, tz] = [direction[3 * i]!, direction[3 * i + 1]!, direction[3 * i + 2]!];
    for (let j = 0; j <= i; j++) {
      const [ux, uy, uz] = [direction[3 * j]!, direction[3 * j + 1]!, direction[3 * j + 2]!];
      const dx = position[3 * i]! - position[3 * j]!;
      const dy = position[3 * i + 1]! - position[3 * j + 1]!;
      const rho = Math.sqrt(dx * dx + dy * dy);
      const table = tables[groups.groupOf[i]! * groups.count + groups.groupOf[j]!]!;
      table.lookUp(rho, position[3 * i + 2]! + position[3 * j + 2]!, g);
      const moments = product(c, i, c, j);
      const mixed = (uz * product(q, i, c, j) + tz * product(c, i, q, j)) / 2;
      const pair =
        (tx * ux + ty * uy) * moments * g[0]! + product(q, i, q, j) * g[2]! + tz * uz * moments * g[4]! + mixed * g[5]!;
      power += i === j ? pair : 2 * pair;
    }
  }
  return power;
}
