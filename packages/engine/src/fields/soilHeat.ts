/**
 * Power that flows through the surface into the soil, as an integral of its own over the transmitted plane waves
 * (propagating and evanescent); it includes what a surface wave carries. Not a remainder of the power balance.
 */
import { propagatingPower } from "../ground/powerNodes";
import { type RealSoil, soilSurface } from "../ground/soilSurface";
import type { Kernels } from "../kernels/door";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { wholeReach } from "../wires/tableReaches";
import { imageHeat } from "./imageHeat";
import { nearSoilHeat } from "./nearSoilHeat";
import { emptySum, sumMoments } from "./radiationSums";

const fewestAzimuths = 16;

/** Watts into soil: propagating waves by a sum over directions, evanescent ones pair by pair. */
export function soilHeat(driven: DrivenAntenna, soil: RealSoil, kernels: Kernels): number {
  const { frequency, model } = driven.solution;
  const surface = soilSurface(soil, frequency);
  const { k } = surface;
  const whole = wholeReach(model.points);
  let propagating = 0;
  const nodes = propagatingPower(surface, whole);
  nodes.depth.forEach((depth, n) => {
    const radial = Math.sqrt(Math.max(0, k * k - depth * depth));
    const waves = { tm: nodes.tm[n]!, te: nodes.te[n]! };
    const azimuths = fewestAzimuths + 2 * Math.ceil((radial * whole.largestDistance) / 2);
    propagating += nodes.weight[n]! * depth * ringPower(driven, waves, depth, radial, azimuths);
  });
  const evanescent = nearSoilHeat(driven, surface, kernels) + imageHeat(driven, surface, kernels);
  return propagating / (4 * Math.PI * Math.PI) + evanescent;
}

const sum = emptySum();

/** Azimuth integral of transmitted power at one horizontal wavenumber (trapezoid rule, exact for a finite band). */
function ringPower(
  driven: DrivenAntenna,
  waves: { readonly tm: number; readonly te: number },
  kz: number,
  radial: number,
  azimuths: number,
): number {
  let total = 0;
  for (let i = 0; i < azimuths; i++) {
    sumMoments(driven, radial, (2 * Math.PI * (i + 0.5)) / azimuths, -kz, sum);
    const re = kz * sum.u[0]! + radial * sum.n[0]!;
    const im = kz * sum.u[1]! + radial * sum.n[1]!;
    total += waves.tm * (re * re + im * im) + waves.te * (sum.v[0]! ** 2 + sum.v[1]! ** 2);
  }
  return (total * 2 * Math.PI) / azimuths;
}
