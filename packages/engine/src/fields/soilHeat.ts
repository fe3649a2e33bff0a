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
import { numbersOfWave, radiationVectors, wavesOf } from "./radiationSums";

const fewestAzimuths = 16;

/** Watts into soil: propagating waves by a sum over directions, evanescent ones pair by pair. */
export function soilHeat(driven: DrivenAntenna, soil: RealSoil, kernels: Kernels): number {
  const { frequency, model } = driven.solution;
  const surface = soilSurface(soil, frequency);
  const { k } = surface;
  const whole = wholeReach(model.points);
  const propagating = ringPowers(driven, propagatingPower(surface, whole), k, whole.largestDistance);
  const evanescent = nearSoilHeat(driven, surface, kernels) + imageHeat(driven, surface, kernels);
  return propagating / (4 * Math.PI * Math.PI) + evanescent;
}

/** Integral over all directions of the transmitted power: trapezoid rule in azimuth, exact for a finite band. */
function ringPowers(
  driven: DrivenAntenna,
  nodes: ReturnType<typeof propagatingPower>,
  k: number,
  distance: number,
): number {
  const { depth, weight, tm, te } = nodes;
  const radials = depth.map((kz) => Math.sqrt(Math.max(0, k * k - kz * kz)));
  const azimuths = Int32Array.from(radials, (radial) => fewestAzimuths + 2 * Math.ceil((radial * distance) / 2));
  const waves = wavesOf(azimuths.reduce((sum, count) => sum + count, 0));
  let place = 0;
  depth.forEach((kz, n) => {
    for (let i = 0; i < azimuths[n]!; i++, place++) {
      waves.radial[place] = radials[n]!;
      waves.phi[place] = (2 * Math.PI * (i + 0.5)) / azimuths[n]!;
      waves.upright[place] = -kz;
    }
  });
  const sums = radiationVectors(driven, waves);
  let total = 0;
  let at = 0;
  depth.forEach((kz, n) => {
    let ring = 0;
    for (let i = 0; i < azimuths[n]!; i++, at += numbersOfWave) {
      const re = kz * sums[at]! + radials[n]! * sums[at + 4]!;
      const im = kz * sums[at + 1]! + radials[n]! * sums[at + 5]!;
      ring += tm[n]! * (re * re + im * im) + te[n]! * (sums[at + 2]! ** 2 + sums[at + 3]! ** 2);
    }
    total += (weight[n]! * kz * ring * 2 * Math.PI) / azimuths[n]!;
  });
  return total;
}
