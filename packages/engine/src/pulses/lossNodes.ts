/** The lumped losses of a stepped line: one ladder at every second place, with the registers of its branches. */
import type { LossLadder } from "./lossLadder";

export interface LossNodes {
  /** Response to the shared quantity at once: ohm in series, S across. */
  readonly slope: number;
  readonly constant: number;
  readonly count: number;
  readonly strength: Float64Array;
  readonly pole: Float64Array;
  /** For each branch: its register x becomes rise u + keep x, and answers -share x without a drive. */
  readonly rise: Float64Array;
  readonly keep: Float64Array;
  readonly share: Float64Array;
  /** One register a branch, node after node. */
  readonly registers: Float64Array;
  /** What the branches of each node answer without any drive. */
  readonly held: Float64Array;
  /** One number: work done on all nodes since the start, W times steps. */
  readonly work: Float64Array;
}

/**
 * `nodes` equal nodes, each standing for `metres` of line. A branch s/(s + pole) by the bilinear rule at `timeStep` seconds:
 * answer = direct u - share x, then x becomes 2 answer + x.
 */
export function lossNodes(ladder: LossLadder, metres: number, nodes: number, timeStep: number): LossNodes {
  const rate = 2 / timeStep;
  const { branches } = ladder;
  const strength = Float64Array.from(branches, (b) => b.strength * metres);
  const pole = Float64Array.from(branches, (b) => b.pole);
  const direct = strength.map((g, k) => (g * rate) / (rate + pole[k]!));
  const share = pole.map((p) => p / (rate + p));
  const constant = ladder.constant * metres;
  return {
    slope: constant + direct.reduce((sum, r) => sum + r, 0),
    constant,
    count: branches.length,
    strength,
    pole,
    rise: direct.map((r) => 2 * r),
    keep: share.map((x) => 1 - 2 * x),
    share,
    registers: new Float64Array(branches.length * nodes),
    held: new Float64Array(nodes),
    work: new Float64Array(1),
  };
}

/** Drives a node for a step: its branches answer, its registers go on, and the work done on it is counted. */
export function takeAt(nodes: LossNodes, node: number, drive: number): void {
  const { count, slope, rise, keep, share, registers, work } = nodes;
  work[0]! += drive * (slope * drive + nodes.held[node]!);
  const first = node * count;
  let held = 0;
  for (let k = 0; k < count; k++) {
    const next = rise[k]! * drive + keep[k]! * registers[first + k]!;
    registers[first + k] = next;
    held -= share[k]! * next;
  }
  nodes.held[node] = held;
}

/**
 * Joule that the resistors of all nodes have turned into heat: the work done on them less what their coils or capacitors hold,
 * which is the same, step by step, as the squares over the resistors (tested).
 */
export const heatIn = (nodes: LossNodes, timeStep: number): number =>
  nodes.work[0]! * timeStep - storedIn(nodes, timeStep);

/** Joule held by the registers. */
export function storedIn({ count, strength, pole, registers }: LossNodes, timeStep: number): number {
  let sum = 0;
  for (let i = 0; i < registers.length; i++) {
    const k = i % count;
    sum += (registers[i]! * registers[i]! * pole[k]!) / strength[k]!;
  }
  // Register squared over four times the branch's own 2/T inductance (or capacitance), for one step.
  return (sum * timeStep * timeStep) / 8;
}
