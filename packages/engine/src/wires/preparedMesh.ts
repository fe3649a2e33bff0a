/** What depends on geometry alone, kept while the structure lives: a sweep on one mesh works it out once. */
import type { Elements, Kernels, NearMoments } from "../kernels/door";
import type { WithElectrodes } from "./electrodes";
import type { MeshRule } from "./grading";
import { buildMesh, type Mesh, mirrorElements } from "./mesh";
import { buildRestriction, type Restriction } from "./restriction";
import type { Soil, Structure } from "./structure";

export interface PreparedMesh {
  readonly mesh: Mesh;
  readonly near: NearMoments;
  /** Elements mirrored in a perfect plane and their close pairs; null without one. */
  readonly images: { readonly elements: Elements; readonly near: NearMoments } | null;
  readonly restriction: Restriction;
}

/** Meshes kept for each structure. */
const mostKept = 4;
const kept = new WeakMap<Structure, Map<string, PreparedMesh>>();

function prepare({ structure, arms }: WithElectrodes, soil: Soil, rule: MeshRule, kernels: Kernels): PreparedMesh {
  const mesh = buildMesh(structure, soil, rule, arms);
  const mirrored = soil.kind === "perfect" ? mirrorElements(mesh.elements) : null;
  return {
    mesh,
    near: kernels.nearMoments(mesh.elements, mesh.elements),
    images: mirrored && { elements: mirrored, near: kernels.nearMoments(mesh.elements, mirrored) },
    restriction: buildRestriction(mesh),
  };
}

/** The mesh by a rule, from what is kept when the same structure object comes again. */
export function preparedMesh(made: WithElectrodes, soil: Soil, rule: MeshRule, kernels: Kernels): PreparedMesh {
  const ofStructure = kept.get(made.structure) ?? new Map<string, PreparedMesh>();
  kept.set(made.structure, ofStructure);
  const key = [kernels.name, soil.kind === "perfect", rule.refinement, rule.largest, rule.gap, rule.growth].join();
  const known = ofStructure.get(key);
  if (known) return known;
  const fresh = prepare(made, soil, rule, kernels);
  const oldest = ofStructure.keys().next().value;
  if (ofStructure.size >= mostKept && oldest !== undefined) ofStructure.delete(oldest);
  ofStructure.set(key, fresh);
  return fresh;
}
