/** What depends on geometry alone, kept by content: sweeps, other heights, other metals and other soils work it out once. */
import { createBoundedStore } from "../kept/boundedStore";
import type { Elements, Kernels, NearMoments, Orbits } from "../kernels/door";
import type { ElectrodeArms, WithElectrodes } from "./electrodes";
import type { MeshRule } from "./grading";
import { buildMesh, type Mesh, mirrorElements } from "./mesh";
import { geometryOf, heightOf, onGrid } from "./onGrid";
import { buildRestriction, type Restriction } from "./restriction";
import type { Soil, Structure } from "./structure";

export interface PreparedMesh {
  readonly mesh: Mesh;
  /** The mesh's elements at height 0: direct terms are worked out of these, so that they are the same bits at every height. */
  readonly lowered: Elements;
  readonly near: NearMoments;
  /** Elements mirrored in a perfect plane and their close pairs; null without one. */
  readonly images: { readonly elements: Elements; readonly near: NearMoments } | null;
  readonly restriction: Restriction;
  /** Images among the elements, where the unknowns are those of a symmetry. */
  readonly orbits?: Orbits;
  /** Names the mesh whatever its height (m); null for one that is not kept. */
  readonly shape: string | null;
  readonly height: number;
}

const mostBytes = 48e6;
const mostHeights = 64;

interface Shape {
  /** Standing at height 0. */
  readonly low: PreparedMesh;
  /** The same at the heights asked for, so that what is kept by the mesh object is found again. */
  readonly raised: Map<number, PreparedMesh>;
}

/** Moments of 36 bytes a near pair rule; elements and unknowns take some 300 bytes each. */
const sizeOf = ({ low: { mesh, near, images } }: Shape): number =>
  36 * (near.column.length + (images?.near.column.length ?? 0)) + 300 * (mesh.unknowns + mesh.elements.count);

const shapes = createBoundedStore<Shape>(mostBytes, sizeOf);
let count = 0;

function prepare(
  structure: Structure,
  arms: ElectrodeArms,
  soil: Soil,
  rule: MeshRule,
  kernels: Kernels,
): PreparedMesh {
  const mesh = buildMesh(structure, soil, rule, arms);
  const mirrored = soil.kind === "perfect" ? mirrorElements(mesh.elements) : null;
  count += 1;
  return {
    mesh,
    lowered: mesh.elements,
    near: kernels.nearMoments(mesh.elements, mesh.elements),
    images: mirrored && { elements: mirrored, near: kernels.nearMoments(mesh.elements, mirrored) },
    restriction: buildRestriction(mesh),
    shape: `shape ${count}`,
    height: 0,
  };
}

function raisedTo(height: number, low: PreparedMesh): PreparedMesh {
  if (height === 0) return low;
  const { elements } = low.mesh;
  const start = elements.start.map((x, i) => (i % 3 === 2 ? x + height : x));
  return { ...low, height, mesh: { ...low.mesh, elements: { ...elements, start } } };
}

/** The mesh by a rule. Coordinates are taken to the nearest nanometre (onGrid). */
export function preparedMesh(
  { structure, arms }: WithElectrodes,
  soil: Soil,
  rule: MeshRule,
  kernels: Kernels,
): PreparedMesh {
  const height = heightOf(structure, soil, arms);
  const lowered = onGrid(structure, height);
  const perfect = soil.kind === "perfect";
  const key = JSON.stringify([kernels.name, perfect, rule, arms]) + geometryOf(lowered);
  const shape = shapes.get(key) ?? { low: prepare(lowered, arms, soil, rule, kernels), raised: new Map() };
  shapes.set(key, shape);
  const known = shape.raised.get(height);
  if (known) return known;
  const placed = raisedTo(height, shape.low);
  const oldest = shape.raised.keys().next().value;
  if (shape.raised.size >= mostHeights && oldest !== undefined) shape.raised.delete(oldest);
  shape.raised.set(height, placed);
  return placed;
}
