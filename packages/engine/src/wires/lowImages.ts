/** Low wires and their mirror images: pairs whose quasi-static images in soil are integrated element by element. */
import type { Elements, Kernels, NearMoments, Orbits, Scatter } from "../kernels/door";
import { type Mesh, mirrorElements } from "./mesh";

export interface LowImages {
  readonly elements: Elements;
  readonly scatter: Scatter;
  readonly mirrored: Elements;
  readonly near: NearMoments;
  /** Images under a symmetry among these elements; null without one. */
  readonly orbits: Orbits | null;
}

interface LowPairs extends Omit<LowImages, "scatter" | "orbits"> {
  /** Indices of the elements among all. */
  readonly chosen: readonly number[];
}

const kept = new WeakMap<Elements, Map<string, LowPairs>>();

/**
 * Images of the wires that are low (SamplePoints.lowWires); null when none is. Pairs are kept while the elements live, for all
 * meshes of other unknowns on them.
 */
export function lowImages(
  mesh: Mesh,
  low: readonly boolean[],
  kernels: Kernels,
  orbits: Orbits | null = null,
): LowImages | null {
  if (!low.includes(true)) return null;
  const ofMesh = kept.get(mesh.elements) ?? new Map<string, LowPairs>();
  kept.set(mesh.elements, ofMesh);
  const key = kernels.name + low.map(Number).join("");
  const pairs = ofMesh.get(key) ?? lowPairs(mesh, low, kernels);
  ofMesh.set(key, pairs);
  const { chosen } = pairs;
  return { ...pairs, scatter: pickScatter(mesh.scatter, chosen), orbits: orbits && pickOrbits(orbits, chosen) };
}

function lowPairs(mesh: Mesh, low: readonly boolean[], kernels: Kernels): LowPairs {
  const chosen = low.flatMap((is, w) =>
    is
      ? Array.from({ length: mesh.firstElement[w + 1]! - mesh.firstElement[w]! }, (_, i) => mesh.firstElement[w]! + i)
      : [],
  );
  const elements = pickElements(mesh.elements, chosen);
  const mirrored = mirrorElements(elements);
  return { elements, mirrored, near: kernels.nearMoments(elements, mirrored), chosen };
}

function pickElements(all: Elements, chosen: readonly number[]): Elements {
  const three = (values: Float64Array): Float64Array =>
    Float64Array.from(chosen.flatMap((e) => [...values.subarray(3 * e, 3 * e + 3)]));
  return {
    count: chosen.length,
    start: three(all.start),
    direction: three(all.direction),
    length: Float64Array.from(chosen, (e) => all.length[e]!),
    radius: Float64Array.from(chosen, (e) => all.radius[e]!),
  };
}

function pickScatter({ first, unknown, sign }: Scatter, chosen: readonly number[]): Scatter {
  const ends = chosen.flatMap((e) => [2 * e, 2 * e + 1]);
  const entries = ends.map((end) => Array.from({ length: first[end + 1]! - first[end]! }, (_, i) => first[end]! + i));
  const starts = new Int32Array(ends.length + 1);
  entries.forEach((list, i) => {
    starts[i + 1] = starts[i]! + list.length;
  });
  const all = entries.flat();
  return {
    first: starts,
    unknown: Int32Array.from(all, (a) => unknown[a]!),
    sign: Float64Array.from(all, (a) => sign[a]!),
  };
}

/** Null when of some orbit only a part is chosen: all pairs are then worked out. */
function pickOrbits(orbits: Orbits, chosen: readonly number[]): Orbits | null {
  const place = new Map(chosen.map((e, i) => [e, i]));
  const counts = new Int32Array(chosen.length);
  const first = Int32Array.from(chosen, (e) => place.get(orbits.first[e]!) ?? -1);
  if (first.includes(-1)) return null;
  for (const f of first) counts[f]!++;
  const size = Int32Array.from(chosen, (e) => orbits.size[e]!);
  return first.every((f) => counts[f] === size[f]) ? { first, size } : null;
}
