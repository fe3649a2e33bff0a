/** Currents and charges of the mesh projected on the Gauss points of each wire's panels. */
import { barycentricWeights, lagrangeRow } from "../numerics/barycentric";
import { gaussLegendre } from "../numerics/gaussLegendre";
import type { Mesh } from "./mesh";
import { pointsPerPanel } from "./samplePanels";

/** Column lists: unknown n has entries first[n] .. first[n + 1] - 1. */
export interface Projection {
  readonly first: Int32Array;
  readonly point: Int32Array;
  /** Integral of Lagrange polynomial times hat function, m. */
  readonly current: Float64Array;
  /** Integral of Lagrange polynomial times the hat's slope. */
  readonly charge: Float64Array;
}

interface Entry {
  readonly point: number;
  current: number;
  charge: number;
}

export const panelRule = gaussLegendre(pointsPerPanel);
const panelWeights = barycentricWeights(panelRule.points);
const overlapRule = gaussLegendre(6);

/** Adds the integrals over [from, to] of one element to the entries of the unknowns on its two ends. */
function addOverlap(
  mesh: Mesh,
  e: number,
  elementStart: number,
  overlap: { from: number; to: number; panelFrom: number; panelTo: number; firstPoint: number },
  entries: readonly Map<number, Entry>[],
): void {
  const { first, unknown, sign } = mesh.scatter;
  const length = mesh.elements.length[e]!;
  const half = (overlap.to - overlap.from) / 2;
  const row = new Float64Array(pointsPerPanel);
  for (let g = 0; g < overlapRule.points.length; g++) {
    const s = overlap.from + half * (1 + overlapRule.points[g]!);
    const weight = half * overlapRule.weights[g]!;
    lagrangeRow(
      panelRule.points,
      panelWeights,
      (2 * (s - overlap.panelFrom)) / (overlap.panelTo - overlap.panelFrom) - 1,
      row,
    );
    const rise = (s - elementStart) / length;
    for (let a = first[2 * e]!; a < first[2 * e + 2]!; a++) {
      const end = a < first[2 * e + 1]! ? 0 : 1;
      const value = weight * sign[a]! * (end === 0 ? 1 - rise : rise);
      const slope = (weight * sign[a]! * (end === 0 ? -1 : 1)) / length;
      const map = entries[unknown[a]!]!;
      for (let m = 0; m < pointsPerPanel; m++) {
        const point = overlap.firstPoint + m;
        const entry = map.get(point) ?? { point, current: 0, charge: 0 };
        entry.current += row[m]! * value;
        entry.charge += row[m]! * slope;
        map.set(point, entry);
      }
    }
  }
}

/** `edges`: of the panels of each wire, m from its start. */
export function project(mesh: Mesh, edges: readonly (readonly number[])[]): Projection {
  const entries = Array.from({ length: mesh.unknowns }, () => new Map<number, Entry>());
  let firstPoint = 0;
  edges.forEach((ofWire, w) => {
    projectWire(mesh, w, ofWire, firstPoint, entries);
    firstPoint += pointsPerPanel * (ofWire.length - 1);
  });
  const first = new Int32Array(mesh.unknowns + 1);
  entries.forEach((map, n) => {
    first[n + 1] = first[n]! + map.size;
  });
  const all = entries.flatMap((map) => [...map.values()]);
  return {
    first,
    point: Int32Array.from(all, (x) => x.point),
    current: Float64Array.from(all, (x) => x.current),
    charge: Float64Array.from(all, (x) => x.charge),
  };
}

/** Walks elements and panels of one wire together. */
function projectWire(
  mesh: Mesh,
  w: number,
  edges: readonly number[],
  firstPoint: number,
  entries: readonly Map<number, Entry>[],
): void {
  let panel = 0;
  let start = 0;
  for (let e = mesh.firstElement[w]!; e < mesh.firstElement[w + 1]!; e++) {
    const end = start + mesh.elements.length[e]!;
    for (let from = start; from < end * (1 - 1e-12); ) {
      while (panel < edges.length - 2 && from >= edges[panel + 1]! * (1 - 1e-12)) panel++;
      const to = panel === edges.length - 2 ? end : Math.min(end, edges[panel + 1]!);
      addOverlap(
        mesh,
        e,
        start,
        {
          from,
          to,
          panelFrom: edges[panel]!,
          panelTo: edges[panel + 1]!,
          firstPoint: firstPoint + pointsPerPanel * panel,
        },
        entries,
      );
      from = to;
    }
    start = end;
  }
}
