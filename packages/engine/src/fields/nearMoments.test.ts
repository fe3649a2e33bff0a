import { describe, expect, it } from "vitest";
import { complexPermittivity } from "../ground/soilMedium";
import { one } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { speedOfLight } from "../numerics/vacuum";
import { dipole, testFrequency, testWavelength, wire } from "../wires/antennas.fixture";
import { driveAntenna } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Structure } from "../wires/structure";
import { currentElements } from "./nearElements";
import { keptKernels } from "./nearKernels";
import { momentsFor, type WireMoment } from "./nearMoments";
import { addReflectedField } from "./nearReflected";
import { buildNearSpectrum } from "./nearSpectrum";

const wl = testWavelength;
const k = (2 * Math.PI * testFrequency) / speedOfLight;
const soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 } as const;
const rule = gaussLegendre(6);

describe("moments", () => {
  const structures: readonly (readonly [string, Structure])[] = [
    ["low", dipole(4, 1e-3, 0.2)],
    ["sloping", { ...dipole(wl / 2, 1e-3, 8), wires: [wire([2, -9, 0.5], [0, 0, 8]), wire([0, 0, 8], [-1, 8, 11])] }],
  ];
  const places = [
    [0, 0.7, 0],
    [1.9, -8.5, 0.1],
    [3, -4, 0.02],
    [25, 10, 1.5],
  ];
  it.each(structures)("reflect the field that many points on every element do: %s", (_, structure) => {
    const driven = driveAntenna(solveAntenna(structure, soil, testFrequency), [one]);
    const kernels = keptKernels((reach) => buildNearSpectrum(k, complexPermittivity(soil, testFrequency), reach));
    const elements = currentElements(driven);
    const { firstElement } = driven.solution.model.mesh;
    const wires = structure.wires.map((_wire, w) => elements.slice(firstElement[w]!, firstElement[w + 1]!));
    for (const place of places) {
      const few = new Float64Array(12);
      for (const moment of momentsFor(wires, place, wl)) addReflectedField(moment, place, k, kernels, few);
      const many = new Float64Array(12);
      for (const moment of elements.flatMap((e) => dense(e, 0.05))) addReflectedField(moment, place, k, kernels, many);
      for (const part of [0, 6]) {
        const size = Math.hypot(...many.subarray(part, part + 6));
        const apart = Math.hypot(...few.subarray(part, part + 6).map((x, i) => x - many[part + i]!));
        // Share of the reflected field, which is but a part of the whole.
        expect(apart / size, `${place}`).toBeLessThan(1e-4);
      }
    }
  });

  /** Six Gauss points on pieces no longer than `longest` m. */
  function dense(element: ReturnType<typeof currentElements>[number], longest: number): WireMoment[] {
    const pieces = Math.ceil(element.length / longest);
    const half = element.length / pieces / 2;
    return Array.from({ length: pieces }, (_, p) =>
      [...rule.points].map((x, i): WireMoment => {
        const s = half * (2 * p + 1 + x);
        const weight = half * rule.weights[i]!;
        const { start, direction, current, slope } = element;
        return {
          position: [start[0] + s * direction[0], start[1] + s * direction[1], start[2] + s * direction[2]],
          direction,
          current: Float64Array.of(weight * (current[0] + slope[0] * s), weight * (current[1] + slope[1] * s)),
          charge: Float64Array.of(weight * slope[0], weight * slope[1]),
        };
      }),
    ).flat();
  }
});
