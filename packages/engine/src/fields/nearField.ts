/** Electric and magnetic field at any place above the ground, near or far, from the currents of a driven antenna. */
import { layeredMedium } from "../ground/layeredSoil";
import { buildLayeredSpectrum } from "../ground/layeredSpectrum";
import { complexPermittivity } from "../ground/soilMedium";
import { type Complex, complex } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import type { DrivenAntenna } from "../wires/driveAntenna";
import type { Point, Soil } from "../wires/structure";
import { addElementField, type CurrentElement } from "./nearDirect";
import { currentElements, imageElements } from "./nearElements";
import { keptKernels, type NearKernels } from "./nearKernels";
import { momentsFor } from "./nearMoments";
import { addReflectedField } from "./nearReflected";
import { buildNearSpectrum } from "./nearSpectrum";

/** Rms phasors along x (east), y (north), z (up). */
export interface NearField {
  /** V/m. */
  readonly e: readonly [Complex, Complex, Complex];
  /** A/m. */
  readonly h: readonly [Complex, Complex, Complex];
}

/** Over soil the sum of a place's height and a wire's is at least this, m: below it the integrals grow without bound. */
const leastSum = 1e-3;

/** Refuses places inside the ground or inside a wire. */
function checkPlace(driven: DrivenAntenna, elements: readonly CurrentElement[], point: Point): void {
  const { soil, model } = driven.solution;
  const where = `(${point.join(", ")}) m`;
  if (!point.every(Number.isFinite)) throw new RangeError(`near field at ${where}: expected three finite coordinates`);
  if (soil.kind !== "free space" && point[2] < 0) {
    throw new RangeError(`near field at ${where} lies below the ground: expected a height of 0 or more`);
  }
  const { firstElement } = model.mesh;
  model.structure.wires.forEach((wire, w) => {
    for (let e = firstElement[w]!; e < firstElement[w + 1]!; e++) {
      const { start, direction, length, radius } = elements[e]!;
      const d = [point[0] - start[0], point[1] - start[1], point[2] - start[2]];
      const foot = d[0]! * direction[0] + d[1]! * direction[1] + d[2]! * direction[2];
      const away = Math.hypot(...d.map((x, c) => x - foot * direction[c]!));
      if (foot >= 0 && foot <= length && away < radius * (1 - 1e-9)) {
        throw new RangeError(`near field at ${where} lies inside wire "${wire.name}": expected a place outside of it`);
      }
    }
    const lowest = Math.min(wire.from[2], wire.to[2]) + point[2];
    if (soil.kind !== "free space" && soil.kind !== "perfect" && lowest < leastSum) {
      throw new RangeError(
        `near field at ${where} and wire "${wire.name}" lie together ${lowest} m above the soil: expected ${leastSum} m or more`,
      );
    }
  });
}

/** Layers are sampled for half the height sum, on twice the panels: derivatives need more of the tail. */
const layerDensity = 2;

function reflectedKernels(soil: Soil, frequency: number): NearKernels | null {
  if (soil.kind === "free space" || soil.kind === "perfect") return null;
  if (soil.kind === "layered") {
    const medium = layeredMedium(soil.layers, frequency);
    return keptKernels((reach) =>
      buildLayeredSpectrum(medium, { ...reach, sum: reach.sum / layerDensity }, null, layerDensity),
    );
  }
  const eps = complexPermittivity(soil, frequency);
  const k = (2 * Math.PI * frequency) / speedOfLight;
  return keptKernels((reach) => buildNearSpectrum(k, eps, reach));
}

/**
 * A function from places (m, outside of the wires, not below the ground) to the field there, which keeps what places have
 * in common. Exact for the currents of the mesh but for quadrature: 1e-4 of the field from 2 radii of a wire's axis on,
 * over soil where the heights of place and wire add up to 1 mm or more; time grows with distance over that sum.
 */
export function nearFieldSampler(driven: DrivenAntenna): (point: Point) => NearField {
  const { frequency, soil, model } = driven.solution;
  const k = (2 * Math.PI * frequency) / speedOfLight;
  const elements = currentElements(driven);
  const sources = soil.kind === "perfect" ? [...elements, ...imageElements(elements)] : elements;
  const { firstElement } = model.mesh;
  const wires = model.structure.wires.map((_, w) => elements.slice(firstElement[w]!, firstElement[w + 1]!));
  const kernels = reflectedKernels(soil, frequency);
  return (point) => {
    checkPlace(driven, elements, point);
    const sum = new Float64Array(12);
    for (const element of sources) addElementField(element, point, k, sum);
    if (kernels) {
      for (const moment of momentsFor(wires, point, speedOfLight / frequency)) {
        addReflectedField(moment, point, k, kernels, sum);
      }
    }
    const at = (c: number): Complex => complex(sum[2 * c]!, sum[2 * c + 1]!);
    return { e: [at(0), at(1), at(2)], h: [at(3), at(4), at(5)] };
  };
}

/** Field at one place; see nearFieldSampler, which is quicker for many. */
export const nearField = (driven: DrivenAntenna, point: Point): NearField => nearFieldSampler(driven)(point);
