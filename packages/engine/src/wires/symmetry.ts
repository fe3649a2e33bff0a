/**
 * The symmetry of a structure with its ports: the group of turns about a vertical axis and mirrors in upright planes that lay
 * wires, metals, sleeves and loads on themselves and every port on itself, as it is or turned. Level soil does not break it.
 * The currents that a port drives then repeat themselves along the images, and only those of one part need be solved for.
 * Ports on which the isometries act by other signs are solved one kind after another.
 */
import type { Scatter } from "../kernels/door";
import type { LocalImpedances } from "./localTerms";
import type { PreparedMesh } from "./preparedMesh";
import { reducedMesh } from "./reducedMesh";
import type { Soil, Structure } from "./structure";
import { elementOrbits, type SymmetricUnknowns, symmetricUnknowns } from "./symmetricUnknowns";
import { wireMaps } from "./symmetryMaps";
import { keepsLoads, portSigns } from "./symmetryPorts";

/** Ports on which all isometries act alike, and the mesh their currents are solved on. */
export interface PortKind {
  readonly ports: readonly number[];
  readonly symmetric: SymmetricUnknowns;
  readonly prepared: PreparedMesh;
}

export interface Symmetry {
  /** Isometries, the identity among them, that do different things to the wires. */
  readonly order: number;
  readonly kinds: readonly PortKind[];
}

interface Problem {
  readonly structure: Structure;
  readonly prepared: PreparedMesh;
  readonly local: LocalImpedances;
  readonly soil: Soil;
}

/** Numbers equal things alike, in the order they are met. */
const kindsOf = (things: readonly unknown[]): number[] => {
  const seen = new Map<string, number>();
  return things.map((thing) => {
    const text = JSON.stringify(thing);
    const kind = seen.get(text) ?? seen.size;
    seen.set(text, kind);
    return kind;
  });
};

const kept = new WeakMap<Scatter, Map<string, Symmetry | null>>();
let count = 0;

/**
 * Null when there is none. Kept while the mesh lives, at whatever height, for each pattern of equal metals, sleeves and
 * loads.
 */
export function symmetryOf(problem: Problem): Symmetry | null {
  const { structure, prepared, local, soil } = problem;
  const metals = kindsOf(structure.wires.map((w, i) => [w.radius, local.wires[i], local.sleeves[i]]));
  const loads = kindsOf(local.loads.map((load) => load.impedance));
  const key = `${soil.kind === "perfect"} ${metals} ${loads}`;
  const { scatter } = prepared.mesh;
  const ofMesh = kept.get(scatter) ?? new Map<string, Symmetry | null>();
  kept.set(scatter, ofMesh);
  const known = ofMesh.get(key);
  const symmetry = known === undefined ? findSymmetry(problem, metals) : known;
  ofMesh.set(key, symmetry);
  return symmetry && { ...symmetry, kinds: symmetry.kinds.map((kind) => raised(kind, prepared)) };
}

/** Where the mesh asked for stands. */
const raised = (kind: PortKind, { mesh: { elements }, height }: PreparedMesh): PortKind => ({
  ...kind,
  prepared: { ...kind.prepared, height, mesh: { ...kind.prepared.mesh, elements } },
});

function findSymmetry({ structure, prepared, local, soil }: Problem, metals: readonly number[]): Symmetry | null {
  const maps = wireMaps(structure, prepared.mesh, (w, v) => metals[w] === metals[v])
    .filter((map) => keepsLoads(structure, prepared.mesh, local, map))
    .map((map) => ({ map, signs: portSigns(structure, soil, map) }))
    .filter(({ signs }) => !signs.includes(0));
  if (maps.length < 2) return null;
  const kinds: PortKind[] = [];
  const orbits = elementOrbits(
    prepared.mesh,
    maps.map(({ map }) => map),
  );
  const ports = prepared.mesh.ports.map((_, p) => p);
  const signsOn = (p: number): string => maps.map(({ signs }) => signs[p]).join(" ");
  for (const signs of new Set(ports.map(signsOn))) {
    const alike = ports.filter((p) => signsOn(p) === signs);
    const group = maps.map(({ map, signs: s }) => ({ map, sign: s[alike[0]!] as 1 | -1 }));
    const symmetric = symmetricUnknowns(prepared.mesh, group);
    count += 1;
    const reduced = reducedMesh(prepared, symmetric, `symmetry ${count}`);
    if (!reduced) return null;
    kinds.push({ ports: alike, symmetric, prepared: { ...reduced, orbits } });
  }
  return { order: maps.length, kinds };
}
