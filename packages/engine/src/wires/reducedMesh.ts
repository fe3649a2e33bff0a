/** A prepared mesh whose unknowns are those that determine all others under a symmetry: it is assembled and solved like any. */
import type { Scatter } from "../kernels/door";
import type { Mesh, Port } from "./mesh";
import type { PreparedMesh } from "./preparedMesh";
import type { Restriction } from "./restriction";
import { membersOf, type SymmetricUnknowns } from "./symmetricUnknowns";

/** A list of unknowns with factors in terms of the reduced ones. */
function reducedList(list: Port, { first, unknown, weight }: SymmetricUnknowns): Port {
  const sums = new Map<number, number>();
  for (const { unknown: u, sign } of list) {
    for (let a = first[u]!; a < first[u + 1]!; a++) {
      sums.set(unknown[a]!, (sums.get(unknown[a]!) ?? 0) + sign * weight[a]!);
    }
  }
  return [...sums].filter(([, sign]) => sign !== 0).map(([of, sign]) => ({ unknown: of, sign }));
}

/** The same for column lists, one after another. */
function reducedLists(
  lists: { readonly first: Int32Array; readonly unknown: Int32Array; readonly sign: Float64Array },
  symmetric: SymmetricUnknowns,
): Scatter {
  const first = new Int32Array(lists.first.length);
  const unknown: number[] = [];
  const sign: number[] = [];
  for (let i = 0; i + 1 < lists.first.length; i++) {
    const list = Array.from({ length: lists.first[i + 1]! - lists.first[i]! }, (_, k) => lists.first[i]! + k);
    const sums = reducedList(
      list.map((a) => ({ unknown: lists.unknown[a]!, sign: lists.sign[a]! })),
      symmetric,
    );
    for (const entry of sums) {
      unknown.push(entry.unknown);
      sign.push(entry.sign);
    }
    first[i + 1] = unknown.length;
  }
  return { first, unknown: Int32Array.from(unknown), sign: Float64Array.from(sign) };
}

/**
 * Restriction among reduced unknowns; null when the coarse mesh has not the symmetry. A coarse unknown's lists are those of
 * its members, read where an unknown is free.
 */
function reducedRestriction(
  { mesh, restriction }: PreparedMesh,
  symmetric: SymmetricUnknowns,
): { coarse: Int32Array; restriction: Restriction } | null {
  const place = new Map([...mesh.coarse].map((unknown, c) => [unknown, c]));
  const reduced = new Map([...symmetric.free].map((unknown, a) => [unknown, a]));
  const coarse: number[] = [];
  const lists: Port[] = [];
  for (const [a, members] of membersOf(symmetric).entries()) {
    const kept = members.filter(({ unknown }) => place.has(unknown));
    if (kept.length === 0) continue;
    if (kept.length < members.length) return null;
    const sums = new Map<number, number>();
    for (const { unknown, sign } of kept) {
      const c = place.get(unknown)!;
      for (let i = restriction.first[c]!; i < restriction.first[c + 1]!; i++) {
        const of = reduced.get(restriction.unknown[i]!);
        if (of !== undefined) sums.set(of, (sums.get(of) ?? 0) + sign * restriction.weight[i]!);
      }
    }
    coarse.push(a);
    lists.push([...sums].map(([unknown, sign]) => ({ unknown, sign })));
  }
  const first = new Int32Array(lists.length + 1);
  lists.forEach((list, c) => {
    first[c + 1] = first[c]! + list.length;
  });
  const all = lists.flat();
  return {
    coarse: Int32Array.from(coarse),
    restriction: {
      size: lists.length,
      first,
      unknown: Int32Array.from(all, (x) => x.unknown),
      weight: Float64Array.from(all, (x) => x.sign),
    },
  };
}

/** Null when the mesh of doubled elements has not the symmetry. `name` tells the symmetry from others of the same mesh. */
export function reducedMesh(prepared: PreparedMesh, symmetric: SymmetricUnknowns, name: string): PreparedMesh | null {
  const { mesh, shape } = prepared;
  const twin = reducedRestriction(prepared, symmetric);
  if (!twin) return null;
  const reduced: Mesh = {
    ...mesh,
    scatter: reducedLists(mesh.scatter, symmetric),
    unknowns: symmetric.size,
    ports: mesh.ports.map((port) => reducedList(port, symmetric)),
    coarse: twin.coarse,
  };
  return { ...prepared, mesh: reduced, restriction: twin.restriction, shape: shape && `${shape} ${name}` };
}
