/** Turns a structure into elements and unknown currents (hat functions on nodes, and currents through junctions). */
import type { Elements, Scatter } from "../kernels/door";
import { type ElectrodeArms, electrodeHalves } from "./electrodes";
import { buildElements, collectScatter, elementEndAt, type Half } from "./elements";
import { wireLength } from "./geometry";
import { type MeshRule, wireNodes } from "./grading";
import { findJunctions, type Junction, junctionCurrents, type WireEnd } from "./junctions";
import type { Soil, Structure } from "./structure";

export interface Mesh {
  readonly elements: Elements;
  /** Elements of wire w are `firstElement[w] .. firstElement[w + 1] - 1`, from its start to its end. */
  readonly firstElement: Int32Array;
  readonly scatter: Scatter;
  readonly unknowns: number;
  /** The current through each port, in the order of portNames, as a sum of unknowns. */
  readonly ports: readonly Port[];
  /**
   * Unknowns kept by the mesh of doubled elements. Elements at feeds, loads and contacts are not doubled: their length sets the
   * width of the gap, which belongs to the model and not to its error.
   */
  readonly coarse: Int32Array;
}

/** Unknowns whose sum, each with its sign, is the current through a port. */
export type Port = readonly { readonly unknown: number; readonly sign: number }[];

/** Distances along a wire of the feeds, loads and gaps on it. */
function gapDistances(structure: Structure, junctions: readonly Junction[], wire: number): number[] {
  const length = wireLength(structure.wires[wire]!);
  const feeds = junctions
    .filter((j) => j.feed >= 0 || j.contact >= 0)
    .flatMap((j) => j.ends.filter((e) => e.wire === wire).map((e) => e.end * length));
  const lumped = [...structure.loads, ...(structure.gaps ?? [])];
  return [...feeds, ...lumped.filter((l) => l.wire === wire).map((l) => l.distance)];
}

/** Builds the mesh; the structure must have passed validateStructure, and holds the arms of its electrodes. */
export function buildMesh(structure: Structure, soil: Soil, rule: MeshRule, electrodes: ElectrodeArms = []): Mesh {
  const junctions = findJunctions(structure, soil, electrodes);
  const isArm = new Set(electrodes.flat());
  const nodes = structure.wires.map((wire, w) =>
    isArm.has(w) ? [0, wireLength(wire)] : wireNodes(structure, junctions, w, rule),
  );
  const elements = buildElements(structure, nodes);
  const firstElement = new Int32Array(structure.wires.length + 1);
  nodes.forEach((n, w) => {
    firstElement[w + 1] = firstElement[w]! + n.length - 1;
  });
  const unknowns: Half[][] = [];
  const coarse: number[] = [];
  nodes.forEach((n, w) => {
    const gaps = gapDistances(structure, junctions, w);
    const beside = (i: number): boolean => gaps.some((g) => Math.abs(n[i]! - g) < 1e-9 * n.at(-1)!);
    for (let i = 1; i < n.length - 1; i++) {
      const e = firstElement[w]! + i;
      if (i % 2 === 0 || beside(i - 1) || beside(i + 1)) coarse.push(unknowns.length);
      unknowns.push([
        { elementEnd: 2 * (e - 1) + 1, sign: 1 },
        { elementEnd: 2 * e, sign: 1 },
      ]);
    }
  });
  const endOf = (end: WireEnd): number =>
    end.end === 0 ? 2 * firstElement[end.wire]! : 2 * (firstElement[end.wire + 1]! - 1) + 1;
  const halvesAt = (end: WireEnd | null, ground: readonly number[], inward: 1 | -1): readonly Half[] => {
    if (end === null) return electrodeHalves(ground, firstElement, inward);
    return [{ elementEnd: endOf(end), sign: end.end === 1 ? inward : inward === 1 ? -1 : 1 }];
  };
  const feedPorts: Port[] = [];
  const contactPorts: Port[] = [];
  for (const junction of junctions) {
    const arms = junction.ground?.arms ?? [];
    const grounded: { unknown: number; sign: number }[] = [];
    for (const { from, to, feed } of junctionCurrents(junction, structure.feeds)) {
      const unknown = unknowns.length;
      if (feed >= 0) feedPorts[feed] = [{ unknown, sign: 1 }];
      if (from === null) grounded.push({ unknown, sign: 1 });
      if (to === null) grounded.push({ unknown, sign: -1 });
      coarse.push(unknown);
      unknowns.push([...halvesAt(from, arms, 1), ...halvesAt(to, arms, -1)]);
    }
    if (junction.contact >= 0) contactPorts[junction.contact] = grounded;
  }
  const scatter = collectScatter(elements.count, unknowns);
  const gapPorts = (structure.gaps ?? []).map((gap) =>
    portAt(scatter, elementEndAt(elements, firstElement, gap.wire, gap.distance)),
  );
  return {
    elements,
    firstElement,
    scatter,
    unknowns: unknowns.length,
    ports: [...feedPorts, ...gapPorts, ...contactPorts],
    coarse: Int32Array.from(coarse),
  };
}

/** All unknowns on one element's end: their sum is the current along the element there. */
const portAt = ({ first, unknown, sign }: Scatter, end: number): Port =>
  Array.from({ length: first[end + 1]! - first[end]! }, (_, i) => ({
    unknown: unknown[first[end]! + i]!,
    sign: sign[first[end]! + i]!,
  }));

/** The same elements mirrored in the plane z = 0. */
export function mirrorElements(elements: Elements): Elements {
  const flip = (values: Float64Array): Float64Array => values.map((v, i) => (i % 3 === 2 ? -v : v));
  return { ...elements, start: flip(elements.start), direction: flip(elements.direction) };
}
