import { referenceKernels, type Soil, type Structure, solveAntenna, type Wire } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { fastKernels } from "./fastKernels";

/** Numbers between 0 and 1 that look random (Park and Miller 1988). */
function* scattered(seed: number): Generator<number, never> {
  for (let state = seed; ; ) {
    state = (state * 48271) % 2147483647;
    yield state / 2147483647;
  }
}

const soils: readonly (Soil & { readonly name: string })[] = [
  { name: "poor", kind: "homogeneous", relativePermittivity: 5, conductivity: 1e-3 },
  { name: "average", kind: "homogeneous", relativePermittivity: 13, conductivity: 5e-3 },
  { name: "sea", kind: "homogeneous", relativePermittivity: 80, conductivity: 5 },
  {
    name: "sand over wet soil",
    kind: "layered",
    layers: [
      { relativePermittivity: 3, conductivity: 1e-4, thickness: 2 },
      { relativePermittivity: 30, conductivity: 1e-2, thickness: null },
    ],
  },
];

type Place = readonly [number, number, number];

const wire = (from: Place, to: Place): Wire => ({
  ...{ name: `to ${to}`, from, to, radius: 1e-3, conductivity: 5.8e7, permeability: 1, insulation: null },
});

/** Two to four wires from one feed in any direction, all above `lowest`; m. */
function star(next: () => number, size: number, lowest: number): Structure {
  const at: Place = [0, 0, lowest + size * (0.3 + next())];
  const count = 2 + Math.floor(3 * next());
  const ends = Array.from({ length: count }, (_, i): Place => {
    const azimuth = (2 * Math.PI * (i + 0.4 * next())) / count;
    const reach = size * (0.4 + 0.4 * next());
    const level = next() < 0.4;
    return [reach * Math.cos(azimuth), reach * Math.sin(azimuth), level ? at[2] : lowest + 1.5 * size * next()];
  });
  const from = ends.slice(1).map((_, i) => i + 1);
  return { wires: ends.map((end) => wire(at, end)), feeds: [{ name: "feed", at, from, into: [0] }], loads: [] };
}

describe("antennas over soil on the fast twin", () => {
  // The twins' complex Bessel functions may differ by 2e-10 of a kernel, all else by rounding; the matrices of wires this
  // size answer with a thousand times that at most (their condition by ports), of the largest admittance.
  const tolerance = 2e-7;
  it.each(soils)("have the admittances of the readable twin: $name", ({ name, ...soil }) => {
    const numbers = scattered(name.length);
    const next = (): number => numbers.next().value;
    for (const lowest of [0.004, 0.3, 4]) {
      const frequency = 1.8e6 * 16 ** next();
      const structure = star(next, 0.25 * (299792458 / frequency), lowest);
      const [ours, theirs] = [fastKernels, referenceKernels].map((twin) =>
        solveAntenna(structure, soil, frequency, twin, { refinement: 1 }),
      );
      const [a, b] = [ours!.admittance[0]![0]!, theirs!.admittance[0]![0]!];
      expect(Math.hypot(a.re - b.re, a.im - b.im) / Math.hypot(b.re, b.im), `${frequency} Hz`).toBeLessThan(tolerance);
    }
  });
});
