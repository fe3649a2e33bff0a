/** Elements of straight wires cut at their nodes, and which unknowns live on their ends. */
import type { Elements, Scatter } from "../kernels/door";
import { wireDirection } from "./geometry";
import type { Structure } from "./structure";

/** A part of an unknown: so much current (1 or -1; less on the arms of an electrode) along the element at one of its ends. */
export interface Half {
  readonly elementEnd: number;
  readonly sign: number;
}

export function buildElements(structure: Structure, nodes: readonly (readonly number[])[]): Elements {
  const count = nodes.reduce((sum, n) => sum + n.length - 1, 0);
  const start = new Float64Array(3 * count);
  const direction = new Float64Array(3 * count);
  const length = new Float64Array(count);
  const radius = new Float64Array(count);
  let e = 0;
  structure.wires.forEach((wire, index) => {
    const d = wireDirection(wire);
    const at = nodes[index]!;
    for (let i = 1; i < at.length; i++, e++) {
      for (let c = 0; c < 3; c++) {
        start[3 * e + c] = wire.from[c]! + d[c]! * at[i - 1]!;
        direction[3 * e + c] = d[c]!;
      }
      length[e] = at[i]! - at[i - 1]!;
      radius[e] = wire.radius;
    }
  });
  return { count, start, direction, length, radius };
}

export function collectScatter(elementCount: number, unknowns: readonly (readonly Half[])[]): Scatter {
  const ends: { unknown: number; sign: number }[][] = Array.from({ length: 2 * elementCount }, () => []);
  unknowns.forEach((halves, unknown) => {
    for (const half of halves) ends[half.elementEnd]!.push({ unknown, sign: half.sign });
  });
  const first = new Int32Array(2 * elementCount + 1);
  ends.forEach((list, i) => {
    first[i + 1] = first[i]! + list.length;
  });
  const all = ends.flat();
  return {
    first,
    unknown: Int32Array.from(all, (x) => x.unknown),
    sign: Float64Array.from(all, (x) => x.sign),
  };
}

/** The element end nearest to a distance (m) along a wire. */
export function elementEndAt(elements: Elements, firstElement: Int32Array, wire: number, distance: number): number {
  const first = firstElement[wire]!;
  let nearest = 2 * first;
  let off = distance;
  let passed = 0;
  for (let e = first; e < firstElement[wire + 1]!; e++) {
    passed += elements.length[e]!;
    if (Math.abs(passed - distance) < off) {
      off = Math.abs(passed - distance);
      nearest = 2 * e + 1;
    }
  }
  return nearest;
}
