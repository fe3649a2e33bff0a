/**
 * Where the nodes of a wire lie. Elements grow by a fixed factor away from ends, junctions, feeds and loads up to a
 * largest length, because the current has its sharp features there; every element is one of a pair of equal halves,
 * so that every second node makes a coarser mesh for the error estimate.
 */

import { speedOfLight } from "../numerics/vacuum";
import { wireLength } from "./geometry";
import type { Junction } from "./junctions";
import type { Structure } from "./structure";

/** Element lengths (m) the mesh is built from. */
export interface MeshRule {
  /** 1 is the default; 2 halves every length except those at gaps. */
  readonly refinement: number;
  readonly largest: number;
  /** At feeds and loads: the width of the gap, part of the model and therefore the same on every mesh. */
  readonly gap: number;
  /** Ratio of neighbouring pairs. */
  readonly growth: number;
}

/** Every wire has at least this many pairs of elements. */
const fewestPairs = 4;

/**
 * The rule for a frequency (Hz). Free ends get elements of one radius over the refinement. Measured on half-wave
 * dipoles of 1 and 10 mm radius at 7 MHz: about 0.05 ohm from the converged value after extrapolation.
 */
export function meshRule(frequency: number, refinement: number): MeshRule {
  const wavelength = speedOfLight / frequency;
  return {
    refinement,
    largest: wavelength / (70 * refinement),
    gap: Math.min(0.3, wavelength / 100),
    growth: 1 + 1.5 / refinement,
  };
}

/** Lengths of the pairs on a stretch: graded from both sides, scaled down to fill it exactly. */
function pairLengths(length: number, first: number, last: number, largest: number, growth: number): number[] {
  const left: number[] = [];
  const right: number[] = [];
  let nextLeft = Math.min(first, largest);
  let nextRight = Math.min(last, largest);
  let sum = 0;
  while (sum < length * (1 - 1e-9)) {
    if (nextLeft <= nextRight) {
      left.push(nextLeft);
      sum += nextLeft;
      nextLeft = Math.min(nextLeft * growth, largest);
    } else {
      right.unshift(nextRight);
      sum += nextRight;
      nextRight = Math.min(nextRight * growth, largest);
    }
  }
  return [...left, ...right].map((l) => (l * length) / sum);
}

/** Distances (m) of all nodes of a wire from its start, both ends included. */
export function wireNodes(
  structure: Structure,
  junctions: readonly Junction[],
  wire: number,
  rule: MeshRule,
): number[] {
  const length = wireLength(structure.wires[wire]!);
  const { refinement } = rule;
  const sizeAtEnd = (end: 0 | 1): number => {
    const junction = junctions.find((j) => j.ends.some((e) => e.wire === wire && e.end === end))!;
    const free = junction.ends.length === 1 && !junction.onGround;
    if (free) return structure.wires[wire]!.radius / refinement;
    const shortest = Math.min(...junction.ends.map((e) => wireLength(structure.wires[e.wire]!)));
    const size = Math.min(rule.gap, shortest / fewestPairs);
    return junction.feed >= 0 ? size : size / refinement;
  };
  const loads = structure.loads.filter((l) => l.wire === wire && l.distance > 0 && l.distance < length);
  const breaks = [...new Set([0, ...loads.map((l) => l.distance), length])].sort((a, b) => a - b);
  const sizes = breaks.map((_, i) =>
    i === 0 ? sizeAtEnd(0) : i === breaks.length - 1 ? sizeAtEnd(1) : Math.min(rule.gap, length / (2 * fewestPairs)),
  );
  const largest = Math.min(rule.largest, length / (2 * fewestPairs * refinement));
  const nodes = [0];
  for (let i = 1; i < breaks.length; i++) {
    const [from, to] = [breaks[i - 1]!, breaks[i]!];
    let at = from;
    for (const pair of pairLengths(to - from, 2 * sizes[i - 1]!, 2 * sizes[i]!, 2 * largest, rule.growth)) {
      nodes.push(at + pair / 2, at + pair);
      at += pair;
    }
    nodes[nodes.length - 1] = to;
  }
  return nodes;
}
