/** Wires that cross, touch elsewhere than at their ends, or run closer than a current even around the wire allows. */
import { closestApproach, distanceBetween, dot, wireDirection, wireEnd, wireLength } from "./geometry";
import { sameplace } from "./junctions";
import type { Structure, Wire } from "./structure";

/**
 * Least axis distance in sums of the two radii. At 3 the current crowds enough to change the line impedance of the
 * pair by 1.6 % (arcosh 3 against ln 6), which is not modelled.
 */
const leastInRadii = 3;

const metres = (x: number): string => `${Number(x.toPrecision(3))} m`;

export function spacingProblems(structure: Structure): string[] {
  const problems: string[] = [];
  const { wires } = structure;
  for (let i = 0; i < wires.length; i++) {
    for (let k = i + 1; k < wires.length; k++) {
      // Bars of a grid meet by its build; their thickness stands for the sheet between them.
      if (wires[i]!.bar && wires[k]!.bar) continue;
      const problem = pairProblem(wires[i]!, wires[k]!);
      if (problem) problems.push(problem);
    }
  }
  return problems;
}

function pairProblem(a: Wire, b: Wire): string | null {
  const names = `wires "${a.name}" and "${b.name}"`;
  const least = leastInRadii * (a.radius + b.radius);
  for (const endA of [0, 1] as const) {
    for (const endB of [0, 1] as const) {
      if (distanceBetween(wireEnd(a, endA), wireEnd(b, endB)) <= sameplace)
        return cornerProblem(a, endA, b, endB, least);
    }
  }
  const { onA, onB, distance } = closestApproach(a, b);
  if (distance >= least) return null;
  if (distance > sameplace)
    return `${names} come within ${metres(distance)}: closer than ${metres(least)} (${leastInRadii} sums of radii)`;
  const ends = [onA, onB].some((x) => x < 1e-9 || x > 1 - 1e-9);
  return ends
    ? `${names}: one ends on the middle of the other; divide the other wire there`
    : `${names} cross; divide both where they touch, or part them by ${metres(least)}`;
}

/** Two wires from one point must part: halfway along the shorter one they have to be `least` apart. */
function cornerProblem(a: Wire, endA: 0 | 1, b: Wire, endB: 0 | 1, least: number): string | null {
  const u = wireDirection(a);
  const v = wireDirection(b);
  const cosine = dot(u, v) * (endA === endB ? 1 : -1);
  const shorter = Math.min(wireLength(a), wireLength(b));
  const angle = Math.acos(Math.max(-1, Math.min(1, cosine)));
  if (cosine <= 0 || Math.sin(angle) * (shorter / 2) >= least) return null;
  const degrees = Number(((angle * 180) / Math.PI).toPrecision(3));
  return `wires "${a.name}" and "${b.name}" leave one point ${degrees} degrees apart: too close for their radii`;
}
