/**
 * A few Gauss points per wire that stand for all its elements wherever the field is smooth: reflected waves, far field,
 * power into the soil. Currents are projected on them by Lagrange polynomials, so these parts cost the same however
 * fine the mesh is.
 */
import { barycentricWeights, lagrangeRow } from "../numerics/barycentric";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { wireLength } from "./geometry";
import type { Mesh } from "./mesh";
import type { Structure, Wire } from "./structure";

const pointsPerPanel = 8;
/**
 * Longest panel in wavelengths, and in heights of its lower end: reflected kernels vary on the scale of the height, or,
 * near the soil, where their quasi-static images are integrated apart, of the soil's length (soilLength).
 */
const longestInWavelengths = 0.3;
const longestInHeights = 2.5;

export interface SamplePoints {
  readonly count: number;
  /** Three numbers a point, m. */
  readonly position: Float64Array;
  /** Unit vectors. */
  readonly direction: Float64Array;
  /** Whether each wire of the structure is low: its quasi-static images are integrated element by element. */
  readonly lowWires: readonly boolean[];
  /** The same for the wire of each point: 1 or 0. */
  readonly low: Uint8Array;
  /** Radius of the wire at each point, m. */
  readonly radius: Float64Array;
  /** Column lists: unknown n has entries first[n] .. first[n + 1] - 1. */
  readonly first: Int32Array;
  readonly point: Int32Array;
  /** Integral of Lagrange polynomial times hat function, m. */
  readonly current: Float64Array;
  /** Integral of Lagrange polynomial times the hat's slope. */
  readonly charge: Float64Array;
}

/**
 * Arms of electrodes lie in the surface itself; what is left of their images once these are taken out varies over the
 * soil's length, so that their points may lie this high (m), as low as the kernels are tested.
 */
const leastHeight = 1e-3;

/** Wires that come down to this many soil lengths are low: what is left of their images varies no faster. */
const lowInSoilLengths = 0.8;

const isLow = (wire: Wire, soil: number | null): boolean =>
  soil !== null && Math.min(wire.from[2], wire.to[2]) < lowInSoilLengths * soil;

/** Panel edges as distances from the wire's start. */
function panelEdges(wire: Wire, wavelength: number, soil: number | null): number[] {
  const length = wireLength(wire);
  const [zFrom, zTo] = [wire.from[2], wire.to[2]];
  const low = Math.min(zFrom, zTo);
  const slope = Math.abs(zTo - zFrom) / length;
  const edges = [0];
  let at = 0;
  while (at < length * (1 - 1e-9)) {
    const least = soil !== null && isLow(wire, soil) ? lowInSoilLengths * soil : 0;
    const byHeight = soil === null ? Number.POSITIVE_INFINITY : longestInHeights * Math.max(low + slope * at, least);
    at += Math.min(longestInWavelengths * wavelength, byHeight);
    edges.push(at);
  }
  const fitted = edges.map((e) => (e * length) / at);
  return zFrom <= zTo ? fitted : fitted.map((e) => length - e).reverse();
}

/** Sample points a structure would need over soil of a length (soilLength, m; null: none); known before memory is taken. */
export const countSamplePoints = (structure: Structure, wavelength: number, soil: number | null): number =>
  structure.wires.reduce((sum, w) => sum + pointsPerPanel * (panelEdges(w, wavelength, soil).length - 1), 0);

interface Entry {
  readonly point: number;
  current: number;
  charge: number;
}

const panelRule = gaussLegendre(pointsPerPanel);
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

/** Chooses the points for a wavelength (m) and a soil (soilLength, m; null: none) and projects the mesh on them. */
export function buildSamplePoints(
  structure: Structure,
  mesh: Mesh,
  wavelength: number,
  soil: number | null,
): SamplePoints {
  const position: number[] = [];
  const direction: number[] = [];
  const radius: number[] = [];
  const low: number[] = [];
  const lowWires = structure.wires.map((wire) => isLow(wire, soil));
  const entries = Array.from({ length: mesh.unknowns }, () => new Map<number, Entry>());
  structure.wires.forEach((wire, w) => {
    const edges = panelEdges(wire, wavelength, soil);
    const firstPoint = position.length / 3;
    const u = mesh.elements.direction.subarray(3 * mesh.firstElement[w]!, 3 * mesh.firstElement[w]! + 3);
    for (let p = 1; p < edges.length; p++) {
      for (const x of panelRule.points) {
        const s = edges[p - 1]! + ((edges[p]! - edges[p - 1]!) * (1 + x)) / 2;
        position.push(
          wire.from[0] + u[0]! * s,
          wire.from[1] + u[1]! * s,
          Math.max(leastHeight, wire.from[2] + u[2]! * s),
        );
        direction.push(u[0]!, u[1]!, u[2]!);
        radius.push(wire.radius);
        low.push(lowWires[w] ? 1 : 0);
      }
    }
    projectWire(mesh, w, edges, firstPoint, entries);
  });
  const first = new Int32Array(mesh.unknowns + 1);
  entries.forEach((map, n) => {
    first[n + 1] = first[n]! + map.size;
  });
  const all = entries.flatMap((map) => [...map.values()]);
  return {
    count: position.length / 3,
    position: Float64Array.from(position),
    direction: Float64Array.from(direction),
    radius: Float64Array.from(radius),
    lowWires,
    low: Uint8Array.from(low),
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
