/**
 * The currents that a group of isometries leaves as they are, or turns, each isometry by a sign of its own: which unknowns
 * determine all others. Where the drive has that symmetry, the currents have it.
 */
import type { Orbits } from "../kernels/door";
import { dependentUnknowns, type UnknownSum } from "./dependentUnknowns";
import type { Mesh, Port } from "./mesh";
import type { WireMap } from "./symmetryMaps";

/** Row lists: unknown u of the mesh is the sum of `weight` times the reduced `unknown` from first[u] on. */
export interface SymmetricUnknowns {
  readonly size: number;
  readonly first: Int32Array;
  readonly unknown: Int32Array;
  readonly weight: Float64Array;
  /** The mesh's unknown that each reduced one stands for. */
  readonly free: Int32Array;
}

export interface SignedMap {
  readonly map: WireMap;
  /** What the current turns into along the image of a wire: itself, or its negative. */
  readonly sign: 1 | -1;
}

/** Where the end of an element comes to lie. */
export function imageOfEnd({ firstElement }: Mesh, { image, reversed }: WireMap, wire: number, end: number): number {
  const own = firstElement[wire]!;
  const other = firstElement[image[wire]!]!;
  if (!reversed[wire]) return end + 2 * (other - own);
  const last = 2 * (firstElement[wire + 1]! - own) - 1;
  return 2 * other + last - (end - 2 * own);
}

/** Which elements are images of each other. */
export function elementOrbits(mesh: Mesh, maps: readonly WireMap[]): Orbits {
  const { count } = mesh.elements;
  const first = new Int32Array(count).fill(-1);
  const size = new Int32Array(count);
  for (let wire = 0; wire + 1 < mesh.firstElement.length; wire++) {
    for (let e = mesh.firstElement[wire]!; e < mesh.firstElement[wire + 1]!; e++) {
      if (first[e] !== -1) continue;
      const images = new Set(maps.map((map) => imageOfEnd(mesh, map, wire, 2 * e) >> 1));
      for (const image of images) {
        first[image] = e;
        size[image] = images.size;
      }
    }
  }
  return { first, size };
}

/** Equations: the current along the image of an end is, with the sign, the one along the end. */
function* equations(mesh: Mesh, group: readonly SignedMap[]): Generator<UnknownSum> {
  const { first, unknown, sign } = mesh.scatter;
  const seen = new Uint8Array(2 * mesh.elements.count);
  const add = (sum: UnknownSum, end: number, factor: number): void => {
    for (let a = first[end]!; a < first[end + 1]!; a++) {
      sum.set(unknown[a]!, (sum.get(unknown[a]!) ?? 0) + factor * sign[a]!);
    }
  };
  for (let wire = 0; wire + 1 < mesh.firstElement.length; wire++) {
    for (let end = 2 * mesh.firstElement[wire]!; end < 2 * mesh.firstElement[wire + 1]!; end++) {
      if (seen[end]) continue;
      for (const { map, sign: turned } of group) {
        const image = imageOfEnd(mesh, map, wire, end);
        seen[image] = 1;
        const factor = map.reversed[wire] ? -turned : turned;
        if (image === end && factor === 1) continue;
        const sum: UnknownSum = new Map();
        add(sum, image, 1);
        add(sum, end, -factor);
        yield sum;
      }
    }
  }
}

export function symmetricUnknowns(mesh: Mesh, group: readonly SignedMap[]): SymmetricUnknowns {
  const dependent = dependentUnknowns(equations(mesh, group));
  const place = new Int32Array(mesh.unknowns).fill(-1);
  const free: number[] = [];
  for (let u = 0; u < mesh.unknowns; u++) if (!dependent.has(u)) place[u] = free.push(u) - 1;
  const first = new Int32Array(mesh.unknowns + 1);
  const unknown: number[] = [];
  const weight: number[] = [];
  for (let u = 0; u < mesh.unknowns; u++) {
    for (const [of, share] of dependent.get(u) ?? [[u, 1] as const]) {
      unknown.push(place[of]!);
      weight.push(share);
    }
    first[u + 1] = unknown.length;
  }
  return {
    size: free.length,
    first,
    unknown: Int32Array.from(unknown),
    weight: Float64Array.from(weight),
    free: Int32Array.from(free),
  };
}

/** Mesh unknowns of each reduced one: the lists of SymmetricUnknowns the other way round. */
export function membersOf({ size, first, unknown, weight }: SymmetricUnknowns): Port[] {
  const members: { unknown: number; sign: number }[][] = Array.from({ length: size }, () => []);
  for (let u = 0; u + 1 < first.length; u++) {
    for (let a = first[u]!; a < first[u + 1]!; a++) members[unknown[a]!]!.push({ unknown: u, sign: weight[a]! });
  }
  return members;
}
