/**
 * Power that evanescent waves carry into the soil. Their azimuth integral is a Bessel function, so that the power is a
 * sum over pairs of sample points of real kernels of distance and height sum. With the charges q (continuity turns
 * kr u - kz n into j q), horizontal moments m and vertical ones n, and kz = -ja:
 *   |kz u + kr n|^2 = |a q + k^2 n|^2 / kr^2,   |v|^2 = |m|^2 - |q - a n|^2 / kr^2.
 */
import { buildKernelTable } from "../ground/kernelTable";
import { octaveSampler } from "../ground/octaveSampler";
import { evanescentPower } from "../ground/powerNodes";
import type { SoilSurface } from "../ground/soilSurface";
import { type PowerNodes, propagatingNodes, type Reach } from "../ground/spectralNodes";
import type { ComplexPlane, Kernels, Spectrum } from "../kernels/door";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { keeping } from "../wires/keptTables";
import { tablesFor } from "../wires/tableReaches";
import { imageLoss } from "./imageHeat";

const powerTail = 14;

/**
 * Weights of the kernels that multiply m m (horizontal), q q (scalar), n n (vertical), and q n (imaginary part of it).
 * Without images the scalar kernel's limit c for large decay is left out: integral of c e^{-as} J0 da over all a is
 * c (cos(kR)/R + integral of sin(kz s) J0 dkz from 0 to k); its first part is imageHeat's, the second stays here.
 */
function powerSpectrum(surface: SoilSurface, reach: Reach): Spectrum {
  const { k } = surface;
  const decays = evanescentPower(surface, reach, powerTail);
  const limit = reach.lessImages ? imageLoss(surface) / (4 * Math.PI) : 0;
  const air = reach.lessImages ? propagatingNodes(k, surface.top, reach) : none;
  const waves = air.depth.length;
  const count = waves + decays.depth.length;
  const plane = (): ComplexPlane => ({ re: new Float64Array(count), im: new Float64Array(count) });
  const spectrum = {
    waves,
    steep: reach.steep,
    depth: plane(),
    radial: plane(),
    horizontal: plane(),
    scalar: plane(),
    vertical: plane(),
    cross: plane(),
  };
  for (let n = 0; n < waves; n++) {
    spectrum.depth.re[n] = air.depth[n]!;
    spectrum.radial.re[n] = Math.sqrt(Math.max(0, k * k - air.depth[n]! ** 2));
    spectrum.scalar.im[n] = air.weight[n]! * limit;
  }
  for (let e = 0; e + waves < count; e++) fillDecay(spectrum, waves + e, decays, e, k, limit);
  return spectrum;
}

const none = { depth: new Float64Array(0), weight: new Float64Array(0) };

function fillDecay(spectrum: Spectrum, n: number, decays: PowerNodes, e: number, k: number, limit: number): void {
  const a = decays.depth[e]!;
  const weight = decays.weight[e]!;
  const tm = decays.tm[e]!;
  const te = decays.te[e]!;
  const radialSquared = k * k + a * a;
  const w = (weight * a) / (2 * Math.PI);
  spectrum.depth.im[n] = -a;
  spectrum.radial.re[n] = Math.sqrt(radialSquared);
  spectrum.horizontal.re[n] = w * te;
  spectrum.scalar.re[n] = (w * (tm * a * a - te)) / radialSquared - weight * limit;
  spectrum.vertical.re[n] = (w * (tm * k ** 4 - te * a * a)) / radialSquared;
  spectrum.vertical.im[n] = (2 * w * a * (tm * k * k + te)) / radialSquared;
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
export function nearSoilHeat(driven: DrivenAntenna, surface: SoilSurface, kernels: Kernels): number {
  const { points } = driven.solution.model;
  // Phase constant 0: these kernels are real, nothing is to be taken out.
  const build = (reach: Reach) =>
    buildKernelTable(
      0,
      reach,
      octaveSampler(reach, (part) => powerSpectrum(surface, part), kernels.sumSpectrum),
    );
  const about = `${kernels.name}, power, ${JSON.stringify([surface.k, surface.top, surface.layers])}`;
  const tables = tablesFor(points, keeping(about, build));
  return kernels.sumPairPower({ points, current: driven.moments, charge: chargeMoments(driven) }, tables);
}
