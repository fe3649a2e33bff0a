/** Low wires and their mirror images: pairs whose quasi-static images in soil are integrated element by element. */
import type { Elements, Kernels, NearMoments, Scatter } from "../kernels/door";
import { type Mesh, mirrorElements } from "./mesh";

export interface LowImages {
  readonly elements: Elements;
  readonly scatter: Scatter;
  readonly mirrored: Elements;
  readonly near: NearMoments;
}

const kept = new WeakMap<Elements, Map<string, LowImages>>();

/** Images of the wires that are low (SamplePoints.lowWires); null when none is. Kept while the mesh lives. */
export function lowImages(mesh: Mesh, low: readonly boolean[], kernels: Kernels): LowImages | null {
  if (!low.includes(true)) return null;
  const ofMesh = kept.get(mesh.elements) ?? new Map<string, LowImages>();
  kept.set(mesh.elements, ofMesh);
  const key = kernels.name + low.map(Number).join("");
  const known = ofMesh.get(key);
  if (known) return known;
  const chosen = low.flatMap((is, w) =>
    is
      ? Array.from({ length: mesh.firstElement[w + 1]! - mesh.firstElement[w]! }, (_, i) => mesh.firstElement[w]! + i)
      : [],
  );
  const elements = pickElements(mesh.elements, chosen);
  const mirrored = mirrorElements(elements);
  const made = {
    elements,
    scatter: pickScatter(mesh.scatter, chosen),
    mirrored,
    near: kernels.nearMoments(elements, mirrored),
  };
  ofMesh.set(key, made);
  return made;
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
