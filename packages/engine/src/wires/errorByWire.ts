/**
 * Where the error of the port impedances sits. On the node between the halves of a pair the current departs from the mean of
 * its neighbours by b; Galerkin's orthogonality makes the difference of the two meshes' impedances the sum of
 * b_i b_k Z_nn over all such nodes, as far as they do not couple (10 to 25 % too much on dipoles). Currents are those for one
 * ampere into each port in turn, the others open.
 */
import type { SplitVectors } from "../kernels/door";
import type { Complex } from "../numerics/complex";
import type { Mesh } from "./mesh";
import type { PortBasis } from "./portBasis";

interface Solved {
  readonly mesh: Mesh;
  /** |Z_nn| of each unknown, ohm. */
  readonly ownImpedances: Float64Array;
  /** For one volt at each port. */
  readonly currents: SplitVectors;
  readonly basis: PortBasis;
  /** Ohm, between the basis' ports, and the goal for the error of each. */
  readonly impedances: readonly (readonly Complex[])[];
  readonly goals: readonly number[];
}

/** For each wire: its part of the difference between the meshes over the goal, of the port where that is largest. */
export function errorByWire({ mesh, ownImpedances, currents, basis, impedances, goals }: Solved): number[] {
  const kept = new Set(mesh.coarse);
  const middles = middlesOf(mesh).filter(({ unknown }) => !kept.has(unknown));
  const byWire = new Array<number>(mesh.firstElement.length - 1).fill(0);
  for (const { wire, unknown, element } of middles) {
    const departures = basis.ports.map((port) => departure(mesh, currents, port, unknown, element));
    const own = ownImpedances[unknown]!;
    let most = 0;
    goals.forEach((goal, i) => {
      let re = 0;
      let im = 0;
      departures.forEach((d, k) => {
        const z = impedances[k]![i]!;
        re += d.re * z.re - d.im * z.im;
        im += d.re * z.im + d.im * z.re;
      });
      most = Math.max(most, (own * (re * re + im * im)) / goal);
    });
    byWire[wire]! += most;
  }
  return byWire;
}

/** Nodes inside pairs: the unknown there and the first element of the pair. */
function middlesOf({ firstElement, scatter }: Mesh): { wire: number; unknown: number; element: number }[] {
  return Array.from({ length: firstElement.length - 1 }, (_, wire) => {
    const pairs = Math.floor((firstElement[wire + 1]! - firstElement[wire]!) / 2);
    return Array.from({ length: pairs }, (_, p) => {
      const element = firstElement[wire]! + 2 * p;
      return { wire, element, unknown: scatter.unknown[scatter.first[2 * element + 1]!]! };
    });
  }).flat();
}

/** Current in the middle of a pair less the mean of those at its ends. */
function departure({ scatter }: Mesh, currents: SplitVectors, port: number, middle: number, element: number): Complex {
  const offset = port * currents.length;
  let re = currents.re[offset + middle]!;
  let im = currents.im[offset + middle]!;
  for (const end of [2 * element, 2 * element + 3]) {
    for (let a = scatter.first[end]!; a < scatter.first[end + 1]!; a++) {
      re -= (scatter.sign[a]! * currents.re[offset + scatter.unknown[a]!]!) / 2;
      im -= (scatter.sign[a]! * currents.im[offset + scatter.unknown[a]!]!) / 2;
    }
  }
  return { re, im };
}
