/**
 * Where the nodes of a wire lie. Elements grow by a fixed factor away from ends, junctions, feeds and loads up to a
 * largest length, because the current has its sharp features there; every element is one of a pair of equal halves,
 * so that every second node makes a coarser mesh for the error estimate.
 */

import { speedOfLight } from "../numerics/vacuum";
import { facingPlaces } from "./facingPlaces";
import { wireLength } from "./geometry";
import type { Junction } from "./junctions";
import { type Refinement, refinementOf } from "./refinement";
import type { Structure, Wire } from "./structure";

/** Element lengths (m) the mesh is built from. */
export interface MeshRule {
  /** Hz: sample points are laid out for it too, which therefore are the same all over a sweep. */
  readonly frequency: number;
  /** 1 is the default; 2 halves every length except those at gaps. */
  readonly refinement: Refinement;
  /** Where the refinement is 1. */
  readonly largest: number;
  /** At feeds, loads and contacts: the width of the gap, part of the model and therefore the same on every mesh. */
  readonly gap: number;
}

/** The same for one wire. */
interface WireRule {
  readonly refinement: number;
  readonly largest: number;
  readonly gap: number;
  /** Ratio of neighbouring pairs. */
  readonly growth: number;
}

function ruleForWire({ refinement, largest, gap }: MeshRule, { name }: Wire): WireRule {
  const finer = refinementOf(refinement, name);
  return { refinement: finer, largest: largest / finer, gap, growth: 1 + 1.5 / finer };
}

/** Every wire has at least this many pairs of elements on the default mesh. */
const fewestPairs = 4;

/** Elements a wire has at least there. */
export const fewestElements = ({ bar }: Wire): number => (bar ? 2 : 2 * fewestPairs);

/** Elements in a wavelength where the refinement is 1, away from ends and gaps. */
export const elementsInWave = 70;

/**
 * The rule for a frequency (Hz). Measured on half-wave dipoles of 1 to 60 mm radius, 7 to 28 MHz: below 0.06 ohm from the
 * converged value after extrapolation.
 */
export function meshRule(frequency: number, refinement: Refinement): MeshRule {
  const wavelength = speedOfLight / frequency;
  return { frequency, refinement, largest: wavelength / elementsInWave, gap: Math.min(0.3, wavelength / 100) };
}

/** Length of the pair at one side of a stretch; a gap's is kept exactly. */
interface Side {
  readonly pair: number;
  readonly isGap: boolean;
}

/** Lengths of the pairs on a stretch: graded from both sides; all but gaps scaled down to fill it exactly. */
function pairLengths(length: number, first: Side, last: Side, largest: number, growth: number): number[] {
  const before = first.isGap ? [first.pair] : [];
  const after = last.isGap ? [last.pair] : [];
  const free = [...before, ...after].reduce((rest, pair) => rest - pair, length);
  const left: number[] = [];
  const right: number[] = [];
  let nextLeft = Math.min(first.isGap ? first.pair * growth : first.pair, largest);
  let nextRight = Math.min(last.isGap ? last.pair * growth : last.pair, largest);
  let sum = 0;
  while (sum < free * (1 - 1e-9)) {
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
  return [...before, ...[...left, ...right].map((l) => (l * free) / sum), ...after];
}

/**
 * A sleeve is modelled by the charge's potential across it, which holds while the charge changes little over the outer
 * radius: on elements much shorter than that the sleeve outweighs the field outside and the charge would feed on itself.
 */
const shortestSleevedInOuterRadii = 5;

/**
 * Elements at free ends of bare wires, in radii, over the refinement. The charge rises there as one over the root of the
 * distance, which hats take up only in proportion to their length: one radius left a thick dipole (0.006 wavelengths) an
 * error of 1.1 ohm, twice the estimate; a sixteenth leaves 0.06 ohm for 12 unknowns more.
 */
const freeEndInRadii = 1 / 16;

/** Length of the element at a free end, m. */
function freeEnd(wire: Wire, rule: WireRule): number {
  if (wire.insulation) return shortestSleevedInOuterRadii * wire.insulation.outerRadius;
  return (freeEndInRadii * wire.radius) / rule.refinement;
}

/** The pair of elements at one end of a wire. */
function sideAtEnd(
  structure: Structure,
  junctions: readonly Junction[],
  wire: number,
  end: 0 | 1,
  rule: WireRule,
): Side {
  const junction = junctions.find((j) => j.ends.some((e) => e.wire === wire && e.end === end))!;
  const free = junction.ends.length === 1 && !junction.ground;
  if (free) return { pair: 2 * freeEnd(structure.wires[wire]!, rule), isGap: false };
  const shortest = Math.min(...junction.ends.map((e) => wireLength(structure.wires[e.wire]!)));
  const at = end === 0 ? 0 : wireLength(structure.wires[wire]!);
  const opened = (structure.gaps ?? []).some((g) => g.wire === wire && Math.abs(g.distance - at) < 1e-9);
  const isGap = junction.feed >= 0 || junction.contact >= 0 || opened;
  const pair = 2 * Math.min(rule.gap, shortest / (2 * fewestPairs));
  return { pair: isGap ? pair : pair / rule.refinement, isGap };
}

/** A bar of a grid: one pair of elements, more on finer meshes. */
function barNodes(length: number, { refinement }: WireRule): number[] {
  const elements = 2 * Math.max(1, Math.round(refinement));
  return Array.from({ length: elements + 1 }, (_, i) => (length * i) / elements);
}

/** Distances (m) of all nodes of a wire from its start, both ends included. */
export function wireNodes(
  structure: Structure,
  junctions: readonly Junction[],
  wire: number,
  meshRule: MeshRule,
): number[] {
  const rule = ruleForWire(meshRule, structure.wires[wire]!);
  const length = wireLength(structure.wires[wire]!);
  if (structure.wires[wire]!.bar) return barNodes(length, rule);
  const lumped = [...structure.loads, ...(structure.gaps ?? [])];
  const loads = lumped.filter((l) => l.wire === wire && l.distance > 1e-9 && l.distance < length - 1e-9);
  const gaps = [0, ...loads.map((l) => l.distance), length];
  const facing = facingPlaces(structure, wire, rule.gap).filter((f) => gaps.every((g) => Math.abs(g - f) > rule.gap));
  const breaks = [...new Set([...gaps, ...facing])].sort((a, b) => a - b);
  const stretches = breaks.slice(1).map((to, i) => to - breaks[i]!);
  const loadGap = Math.min(rule.gap, Math.min(...stretches) / (2 * fewestPairs));
  const sides = breaks.map((_, i): Side => {
    if (i === 0) return sideAtEnd(structure, junctions, wire, 0, rule);
    if (i === breaks.length - 1) return sideAtEnd(structure, junctions, wire, 1, rule);
    return { pair: 2 * loadGap, isGap: !facing.includes(breaks[i]!) };
  });
  const largest = Math.min(rule.largest, length / (2 * fewestPairs * rule.refinement));
  const nodes = [0];
  stretches.forEach((stretch, i) => {
    let at = breaks[i]!;
    // A gap next to a load close by must leave room for others.
    const [first, last] = [sides[i]!, sides[i + 1]!].map((s) => ({ ...s, pair: Math.min(s.pair, stretch / 3) }));
    for (const pair of pairLengths(stretch, first!, last!, 2 * largest, rule.growth)) {
      nodes.push(at + pair / 2, at + pair);
      at += pair;
    }
    nodes[nodes.length - 1] = breaks[i + 1]!;
  });
  return nodes;
}
