/**
 * Path and antenna joined as one network. Unknowns: a voltage at every joint, a current at either end of every
 * two-port. Tees, switches and coupled feeds need no special case: they are joints where several ends meet.
 */

import type { TwoPort } from "../networks/twoPort";
import { type Complex, complex, negate, one, zero } from "../numerics/complex";
import { solveComplexSystem } from "../numerics/solveComplexSystem";

export type Termination =
  | { readonly kind: "none" }
  | { readonly kind: "short" }
  | { readonly kind: "admittance"; readonly admittance: Complex };

export interface Circuit {
  readonly terminations: readonly Termination[];
  readonly edges: readonly { readonly from: number; readonly to: number; readonly twoPort: TwoPort }[];
  /** Joint of each antenna port, and the antenna's admittance matrix in siemens. */
  readonly portJoints: readonly number[];
  readonly admittance: readonly (readonly Complex[])[];
  /** Joint held at 1 V. */
  readonly source: number;
}

export interface CircuitState {
  readonly voltage: readonly Complex[];
  /** Current into each two-port at its `from` end and out of it at its `to` end, A per volt at the source. */
  readonly inward: readonly Complex[];
  readonly outward: readonly Complex[];
}

/** @returns null when the network has no unique state (a short across the source, a floating part). */
export function solveCircuit(circuit: Circuit): CircuitState | null {
  const joints = circuit.terminations.length;
  const edges = circuit.edges.length;
  const size = joints + 2 * edges;
  const matrix: Complex[][] = [];
  const right: Complex[] = [];
  const row = (entries: readonly (readonly [number, Complex])[], value: Complex): void => {
    const line = new Array<Complex>(size).fill(zero);
    for (const [column, x] of entries) line[column] = complex(line[column]!.re + x.re, line[column]!.im + x.im);
    matrix.push(line);
    right.push(value);
  };
  const inward = (e: number) => joints + 2 * e;
  const outward = (e: number) => joints + 2 * e + 1;

  circuit.edges.forEach(({ from, to, twoPort }, e) => {
    row(
      [
        [from, one],
        [to, negate(twoPort.a)],
        [outward(e), negate(twoPort.b)],
      ],
      zero,
    );
    row(
      [
        [inward(e), one],
        [to, negate(twoPort.c)],
        [outward(e), negate(twoPort.d)],
      ],
      zero,
    );
  });
  circuit.terminations.forEach((_, joint) => {
    const { entries, value } = jointEquation(circuit, joint, inward, outward);
    row(entries, value);
  });
  const x = solveComplexSystem(matrix, right);
  return (
    x && {
      voltage: x.slice(0, joints),
      inward: circuit.edges.map((_, e) => x[inward(e)]!),
      outward: circuit.edges.map((_, e) => x[outward(e)]!),
    }
  );
}

type Entry = readonly [number, Complex];
type Column = (edge: number) => number;

/** The source joint holds 1 V, a shorted joint 0 V; everywhere else the currents that leave add up to nothing. */
function jointEquation(
  circuit: Circuit,
  joint: number,
  inward: Column,
  outward: Column,
): { readonly entries: readonly Entry[]; readonly value: Complex } {
  const termination = circuit.terminations[joint]!;
  if (joint === circuit.source) return { entries: [[joint, one]], value: one };
  if (termination.kind === "short") return { entries: [[joint, one]], value: zero };
  const entries: Entry[] = [];
  circuit.edges.forEach((edge, e) => {
    if (edge.from === joint) entries.push([inward(e), one]);
    if (edge.to === joint) entries.push([outward(e), complex(-1)]);
  });
  if (termination.kind === "admittance") entries.push([joint, termination.admittance]);
  const port = circuit.portJoints.indexOf(joint);
  if (port >= 0) entries.push(...circuit.portJoints.map((other, k): Entry => [other, circuit.admittance[port]![k]!]));
  return { entries, value: zero };
}
