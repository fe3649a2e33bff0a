/**
 * Power that flows through the surface into the soil, as an integral of its own over the transmitted plane waves
 * (propagating and evanescent); it includes what a surface wave carries. Not a remainder of the power balance.
 */
import { reflection } from "../ground/reflection";
import { complexPermittivity } from "../ground/soilMedium";
import { spectralNodes } from "../ground/spectrum";
import { add, type Complex, complex, divide, magnitudeSquared, multiply, one, scale } from "../numerics/complex";
import { speedOfLight, vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { reachOf } from "../wires/reflectedTerms";
import type { Soil } from "../wires/structure";
import { emptySum, sumMoments } from "./radiationSums";

const powerTail = 14;
const fewestAzimuths = 16;

/** Watts into homogeneous soil. */
export function soilHeat(driven: DrivenAntenna, soil: Soil & { kind: "homogeneous" }): number {
  const { frequency, model } = driven.solution;
  const k = (2 * Math.PI * frequency) / speedOfLight;
  const eps = complexPermittivity(soil, frequency);
  const reach = reachOf(model.points);
  const nodes = spectralNodes(k, eps, reach, powerTail);
  let power = 0;
  for (const { depth, weight } of nodes.propagating) {
    const radial = Math.sqrt(Math.max(0, k * k - depth * depth));
    power += weight * depth * ringPower(driven, eps, { kz: complex(depth), radial, extent: reach.largestDistance });
  }
  for (const { depth, weight } of nodes.evanescent) {
    const radial = Math.sqrt(k * k + depth * depth);
    power += weight * depth * ringPower(driven, eps, { kz: complex(0, -depth), radial, extent: reach.largestDistance });
  }
  return power / (4 * Math.PI * Math.PI);
}

interface Ring {
  readonly kz: Complex;
  readonly radial: number;
  readonly extent: number;
}

const sum = emptySum();

/** Azimuth integral of transmitted power at one horizontal wavenumber (trapezoid rule, exact for a finite band). */
function ringPower(driven: DrivenAntenna, eps: Complex, ring: Ring): number {
  const w = 2 * Math.PI * driven.solution.frequency;
  const { kz, radial } = ring;
  const { soilDepth } = reflection(kz, w / speedOfLight, eps);
  const tmVoltage = scale(divide(soilDepth, add(soilDepth, multiply(eps, kz))), 1 / (w * vacuumPermittivity));
  const teVoltage = scale(divide(one, add(kz, soilDepth)), w * vacuumPermeability);
  const tmPower = magnitudeSquared(tmVoltage) * w * vacuumPermittivity * divide(eps, soilDepth).re;
  const tePower = (magnitudeSquared(teVoltage) * soilDepth.re) / (w * vacuumPermeability);
  const count = fewestAzimuths + 2 * Math.ceil((radial * ring.extent) / 2);
  let total = 0;
  for (let i = 0; i < count; i++) {
    sumMoments(driven, radial, (2 * Math.PI * (i + 0.5)) / count, -kz.re, -kz.im, sum);
    const re = kz.re * sum.u[0]! - kz.im * sum.u[1]! + radial * sum.n[0]!;
    const im = kz.re * sum.u[1]! + kz.im * sum.u[0]! + radial * sum.n[1]!;
    total += tmPower * (re * re + im * im) + tePower * (sum.v[0]! ** 2 + sum.v[1]! ** 2);
  }
  return (total * 2 * Math.PI) / count;
}
