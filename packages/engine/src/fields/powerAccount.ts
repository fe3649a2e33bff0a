/** Where the power into the antenna goes. Every entry is computed by itself; the residue is the check. */

import { chosenKernels } from "../kernels/chosen";
import type { Kernels } from "../kernels/door";
import { magnitudeSquared } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { speedOfLight } from "../numerics/vacuum";
import { type DrivenAntenna, elementCurrent } from "../wires/driveAntenna";
import type { Radiating } from "../wires/radiating";
import { isRealSoil } from "../wires/structure";
import { azimuthsRound, directionGrid } from "./directions";
import { radiationIntensities } from "./gain";
import { sleeveHeat } from "./sleeveHeat";
import { soilHeat } from "./soilHeat";

/** Watts. */
export interface PowerAccount {
  readonly powerIn: number;
  readonly heatInWires: number;
  readonly heatInLoads: number;
  /** Lines between the feeds. */
  readonly heatInJoinedLines: number;
  /** What closes the gaps and contacts takes (chokes, earths beyond their electrode); negative where it stands for less than the electrode it replaces. */
  readonly heatAtPorts: number;
  readonly heatInInsulation: number;
  readonly heatInSoil: number;
  /** Sky wave only: over lossy soil the surface wave ends in the soil. */
  readonly radiated: number;
  /** (in - sum of the others)/in. */
  readonly residue: number;
}

/** Integral of |I|^2 over one element times Re Z, summed over all wires; |I| is linear in between. */
function heatInWires(driven: DrivenAntenna): number {
  const { mesh, local } = driven.solution.model;
  let heat = 0;
  local.wires.forEach((impedance, wire) => {
    if (impedance.re === 0) return;
    for (let e = mesh.firstElement[wire]!; e < mesh.firstElement[wire + 1]!; e++) {
      const a = elementCurrent(driven, e, 0);
      const b = elementCurrent(driven, e, 1);
      const mixed = a.re * b.re + a.im * b.im;
      heat += (impedance.re * mesh.elements.length[e]! * (magnitudeSquared(a) + magnitudeSquared(b) + mixed)) / 3;
    }
  });
  return heat;
}

function heatInLoads(driven: DrivenAntenna): number {
  return driven.solution.model.local.loads.reduce((heat, { elementEnd, impedance }) => {
    const current = elementCurrent(driven, elementEnd >> 1, (elementEnd & 1) as 0 | 1);
    return heat + impedance.re * magnitudeSquared(current);
  }, 0);
}

/**
 * Integral of the radiation intensity over the sky (the whole sphere in free space), W. Over ground in t, sine of elevation =
 * t^2: near the horizon the intensity over soil turns on the scale of the Brewster angle, which t spreads. Steps in azimuth
 * are as many as the antenna's width can write into the pattern, and what its Bessel coefficients take to die out.
 */
export function radiatedPower(driven: Radiating): number {
  const { solution } = driven;
  const whole = solution.soil.kind === "free space";
  const k = (2 * Math.PI * solution.frequency) / speedOfLight;
  const rule = gaussLegendre((whole ? 24 : 16) + Math.ceil(k * extent(driven)));
  const width = k * breadth(driven);
  const azimuths = azimuthsRound(2 * Math.ceil((width + 4 * Math.cbrt(width) + 8) / 2));
  const rows = [...rule.points].map((x, i) => {
    const t = (1 + x) / 2;
    return whole ? { sine: x, weight: rule.weights[i]! } : { sine: t * t, weight: rule.weights[i]! * t };
  });
  const elevations = rows.map(({ sine }) => Math.asin(sine));
  const intensities = radiationIntensities(driven, directionGrid(elevations, azimuths));
  return rows.reduce((power, { weight }, i) => {
    const ring = intensities.subarray(i * azimuths.length, (i + 1) * azimuths.length);
    return power + (weight * 2 * Math.PI * ring.reduce((sum, one) => sum + one, 0)) / azimuths.length;
  }, 0);
}

/** Ranges of the sample points along an axis, m. */
function rangeOf({ solution }: Radiating, axis: number): { readonly low: number; readonly high: number } {
  const { position, count } = solution.model.points;
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let p = 0; p < count; p++) {
    low = Math.min(low, position[3 * p + axis]!);
    high = Math.max(high, position[3 * p + axis]!);
  }
  return { low, high };
}

/** Horizontal diagonal of the antenna, m. */
function breadth(driven: Radiating): number {
  const [x, y] = [rangeOf(driven, 0), rangeOf(driven, 1)];
  return Math.hypot(x.high - x.low, y.high - y.low);
}

/** Horizontal diagonal of the antenna or twice its height above the plane, whichever is larger (m): what the detail of the pattern depends on. */
export function extent(driven: Radiating): number {
  const { low, high } = rangeOf(driven, 2);
  return Math.max(breadth(driven), driven.solution.soil.kind === "free space" ? high - low : 2 * high);
}

/** Accounts for every watt; the soil's part is an integral of its own (soilHeat), radiation one over the sky. */
export function powerAccount(driven: DrivenAntenna, kernels: Kernels = chosenKernels()): PowerAccount {
  const { soil } = driven.solution;
  const parts = {
    heatInWires: heatInWires(driven),
    heatInLoads: heatInLoads(driven),
    heatInJoinedLines: driven.joinedHeat,
    heatAtPorts: driven.closingHeat.reduce((sum, p) => sum + p, 0),
    heatInInsulation: sleeveHeat(driven),
    heatInSoil: isRealSoil(soil) ? soilHeat(driven, soil, kernels) : 0,
    radiated: radiatedPower(driven),
  };
  const sum = Object.values(parts).reduce((total, p) => total + p, 0);
  return { powerIn: driven.powerIn, ...parts, residue: (driven.powerIn - sum) / driven.powerIn };
}
