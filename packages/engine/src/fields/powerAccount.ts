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

/** Integral of the radiation intensity over the sky (the whole sphere in free space), W. */
export function radiatedPower(driven: Radiating): number {
  const { solution } = driven;
  const whole = solution.soil.kind === "free space";
  const size = (2 * Math.PI * solution.frequency * extent(driven)) / speedOfLight;
  const rule = gaussLegendre(24 + Math.ceil(size));
  const azimuths = azimuthsRound(24 + 2 * Math.ceil(size));
  const elevations = [...rule.points].map((x) => Math.asin(whole ? x : (1 + x) / 2));
  const intensities = radiationIntensities(driven, directionGrid(elevations, azimuths));
  let power = 0;
  for (let i = 0; i < elevations.length; i++) {
    const ring = intensities.subarray(i * azimuths.length, (i + 1) * azimuths.length);
    const mean = ring.reduce((sum, one) => sum + one, 0) / azimuths.length;
    power += rule.weights[i]! * (whole ? 1 : 0.5) * mean * 2 * Math.PI;
  }
  return power;
}

/** Horizontal diagonal of the antenna or twice its height above the plane, whichever is larger (m): what the detail of the pattern depends on. */
export function extent(driven: Radiating): number {
  const { position, count } = driven.solution.model.points;
  const ranges = [0, 1, 2].map((c) => {
    const values = Array.from({ length: count }, (_, p) => position[3 * p + c]!);
    return { low: Math.min(...values), high: Math.max(...values) };
  });
  const horizontal = Math.hypot(ranges[0]!.high - ranges[0]!.low, ranges[1]!.high - ranges[1]!.low);
  const free = driven.solution.soil.kind === "free space";
  return Math.max(horizontal, free ? ranges[2]!.high - ranges[2]!.low : 2 * ranges[2]!.high);
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
