/** Turns a structure into elements and unknown currents (hat functions on nodes, and currents through junctions). */
import type { Elements, Scatter } from "../kernels/door";
import { wireDirection, wireLength } from "./geometry";
import { type MeshRule, wireNodes } from "./grading";
import { findJunctions, type Junction, junctionCurrents, type WireEnd } from "./junctions";
import type { Soil, Structure } from "./structure";

export interface Mesh {
  readonly elements: Elements;
  /** Elements of wire w are `firstElement[w] .. firstElement[w + 1] - 1`, from its start to its end. */
  readonly firstElement: Int32Array;
  readonly scatter: Scatter;
  readonly unknowns: number;
  /** Unknown that is the current through each feed's gap, in the order of the structure's feeds. */
  readonly feedUnknown: Int32Array;
  /**
   * Unknowns kept by the mesh of doubled elements. Elements at feeds and loads are not doubled: their length sets the
   * width of the gap, which belongs to the model and not to its error.
   */
  readonly coarse: Int32Array;
}

/** A part of an unknown: current +1 or -1 along the element at one of its ends. */
interface Half {
  readonly elementEnd: number;
  readonly sign: 1 | -1;
}

function buildElements(structure: Structure, nodes: readonly (readonly number[])[]): Elements {
  const count = nodes.reduce((sum, n) => sum + n.length - 1, 0);
  const start = new Float64Array(3 * count);
  const direction = new Float64Array(3 * count);
  const length = new Float64Array(count);
  const radius = new Float64Array(count);
  let e = 0;
  structure.wires.forEach((wire, index) => {
    const d = wireDirection(wire);
    const at = nodes[index]!;
    for (let i = 1; i < at.length; i++, e++) {
      for (let c = 0; c < 3; c++) {
        start[3 * e + c] = wire.from[c]! + d[c]! * at[i - 1]!;
        direction[3 * e + c] = d[c]!;
      }
      length[e] = at[i]! - at[i - 1]!;
      radius[e] = wire.radius;
    }
  });
  return { count, start, direction, length, radius };
}

function collectScatter(elementCount: number, unknowns: readonly (readonly Half[])[]): Scatter {
  const ends: { unknown: number; sign: number }[][] = Array.from({ length: 2 * elementCount }, () => []);
  unknowns.forEach((halves, unknown) => {
    for (const half of halves) ends[half.elementEnd]!.push({ unknown, sign: half.sign });
  });
  const first = new Int32Array(2 * elementCount + 1);
  ends.forEach((list, i) => {
    first[i + 1] = first[i]! + list.length;
  });
  const all = ends.flat();
  return {
    first,
    unknown: Int32Array.from(all, (x) => x.unknown),
    sign: Float64Array.from(all, (x) => x.sign),
  };
}

/** Distances along a wire of the feeds and loads on it. */
function gapDistances(structure: Structure, junctions: readonly Junction[], wire: number): number[] {
  const length = wireLength(structure.wires[wire]!);
  const feeds = junctions
    .filter((j) => j.feed >= 0)
    .flatMap((j) => j.ends.filter((e) => e.wire === wire).map((e) => e.end * length));
  return [...feeds, ...structure.loads.filter((l) => l.wire === wire).map((l) => l.distance)];
}

/** Builds the mesh; the structure must have passed validateStructure. */
export function buildMesh(structure: Structure, soil: Soil, rule: MeshRule): Mesh {
  const junctions = findJunctions(structure, soil);
  const nodes = structure.wires.map((_, w) => wireNodes(structure, junctions, w, rule));
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
  const feedUnknown = new Int32Array(structure.feeds.length).fill(-1);
  for (const junction of junctions) {
    for (const { from, to, feed } of junctionCurrents(junction, structure.feeds)) {
      if (feed >= 0) feedUnknown[feed] = unknowns.length;
      coarse.push(unknowns.length);
      const halves: Half[] = from ? [{ elementEnd: endOf(from), sign: from.end === 1 ? 1 : -1 }] : [];
      unknowns.push([...halves, { elementEnd: endOf(to), sign: to.end === 0 ? 1 : -1 }]);
    }
  }
  const scatter = collectScatter(elements.count, unknowns);
  return { elements, firstElement, scatter, unknowns: unknowns.length, feedUnknown, coarse: Int32Array.from(coarse) };
}

/** The same elements mirrored in the plane z = 0. */
export function mirrorElements(elements: Elements): Elements {
  const flip = (values: Float64Array): Float64Array => values.map((v, i) => (i % 3 === 2 ? -v : v));
  return { ...elements, start: flip(elements.start), direction: flip(elements.direction) };
}
