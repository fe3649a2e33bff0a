/** The lumped losses of a stepped line: one ladder at every second place, with the registers of its branches. */
import type { LossLadder } from "./lossLadder";

export interface LossNodes {
  /** Response to the shared quantity at once: ohm in series, S across. */
  readonly slope: number;
  readonly constant: number;
  readonly count: number;
  /** For each branch: response at once, share of its register that answers, and its strength. */
  readonly direct: Float64Array;
  readonly share: Float64Array;
  readonly strength: Float64Array;
  readonly pole: Float64Array;
  /** Branch after branch, in each one register a node. */
  readonly registers: Float64Array;
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
    direct,
    share,
    strength,
    pole,
    registers: new Float64Array(branches.length * nodes),
  };
}

/** What the branches of a node answer without any drive. */
export function heldAt({ count, share, registers }: LossNodes, node: number): number {
  let held = 0;
  const first = node * count;
  for (let k = 0; k < count; k++) held -= share[k]! * registers[first + k]!;
  return held;
}

/** Sets the registers of a node for the next step; returns the power its resistors turn into heat, W. */
export function takeAt(nodes: LossNodes, node: number, drive: number): number {
  const { count, direct, share, strength, registers } = nodes;
  let heat = nodes.constant * drive * drive;
  const first = node * count;
  for (let k = 0; k < count; k++) {
    const x = registers[first + k]!;
    const answer = direct[k]! * drive - share[k]! * x;
    registers[first + k] = 2 * answer + x;
    heat += (answer * answer) / strength[k]!;
  }
  return heat;
}

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
