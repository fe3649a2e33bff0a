import { describe, expect, it } from "vitest";
import { chosenKernels } from "../kernels/chosen";
import { dipole, groundPlane } from "./antennas.fixture";
import { portAdmittance } from "./portMatrices";
import { solvePorts, solveSystem } from "./solveSystem";
import type { Soil, Structure } from "./structure";
import {
  assemblyOf,
  free,
  invertedVee,
  loaded,
  loop,
  mastOnEarth,
  perfect,
  soil,
  star,
  turnedArms,
  withGap,
} from "./symmetric.fixture";

/** Largest difference of admittances and of currents with and without symmetry, over the largest of each. */
function differences(structure: Structure, ground: Soil) {
  const assembly = assemblyOf(structure, ground);
  const { ports } = assembly.prepared.mesh;
  const all = ports.map((_, p) => p);
  const plain = solvePorts(assembly, all, chosenKernels());
  const made = solveSystem(assembly, chosenKernels());
  const ofVectors = (a: { re: Float64Array; im: Float64Array }, b: typeof a): number => {
    let [most, size] = [0, 0];
    a.re.forEach((re, i) => {
      most = Math.max(most, Math.hypot(re - b.re[i]!, a.im[i]! - b.im[i]!));
      size = Math.max(size, Math.hypot(re, a.im[i]!));
    });
    return most / size;
  };
  const flat = (currents: typeof made.currents) => {
    const entries = portAdmittance(currents, ports).flat();
    return { re: Float64Array.from(entries, (y) => y.re), im: Float64Array.from(entries, (y) => y.im) };
  };
  return {
    symmetry: made.symmetry,
    currents: ofVectors(plain.fine.vectors, made.currents),
    admittance: ofVectors(flat(plain.fine.vectors), flat(made.currents)),
    coarse: ofVectors(flat(plain.coarse), flat(made.coarseCurrents)),
  };
}

/**
 * Moments of elements beside others 100 times as long cancel to 1e-11, for a pair and its images by other roundings; near
 * resonance the sum of many of them, thousands of ohms, leaves some ohms. Images are off by the grid of coordinates, too:
 * 1e-9 m of lengths of 5 m and more, 2e-10, with the sharpness of resonance (10 to 100) 2e-8.
 */
const within = 1e-7;

describe("what is solved by way of symmetry is what is solved without", () => {
  it.each([
    ["dipole in free space", dipole(20, 1e-3, 10), free, 2],
    ["dipole over soil", dipole(20, 1e-3, 10), soil, 2],
    ["dipole over a perfect plane", dipole(20, 1e-3, 4), perfect, 2],
    ["dipole of copper with coils", loaded(300, 4), soil, 2],
    ["inverted vee", invertedVee, soil, 2],
    ["loop", loop, soil, 2],
    ["four radials low over soil", groundPlane(0.3), soil, 8],
    ["nine radials", star(9, 5), free, 18],
    ["a gap that the mirror keeps, beside a feed it turns", withGap([0, 0, 2], [0, 0, 8], 2), soil, 2],
    ["a gap that the mirror turns as it does the feed", withGap([0, -6, 5], [0, 6, 5], 6), free, 2],
    ["two random arms, turned", turnedArms(2, 11), soil, 2],
    ["three random arms, turned", turnedArms(3, 12), free, 3],
    ["four random arms, turned", turnedArms(4, 13), perfect, 4],
    ["seven random arms, turned", turnedArms(7, 14), soil, 7],
    ["mast on an earth", mastOnEarth(), soil, 8],
  ] as [string, Structure, Soil, number][])("%s", (_, structure, ground, order) => {
    const made = differences(structure, ground);
    expect(made.symmetry).toBe(order);
    expect(made.admittance).toBeLessThan(within);
    expect(made.coarse).toBeLessThan(within);
    expect(made.currents).toBeLessThan(within);
  });
});
