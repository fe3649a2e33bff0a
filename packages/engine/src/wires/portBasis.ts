/**
 * Ports whose currents are the same by the build of the wires: a choke where the line alone carries the feed's current,
 * an earth right under the feed. Their admittance matrix has no inverse; that of the independent ones among them has.
 */
import type { Complex } from "../numerics/complex";
import { invertComplexMatrix } from "../numerics/invertComplexMatrix";
import type { Port } from "./mesh";

export interface PortBasis {
  /** Ports with currents independent of each other, the earliest ones. */
  readonly ports: readonly number[];
  /** Every port's current as a sum of theirs: `shares[port][i]` times the current of `ports[i]`. */
  readonly shares: readonly (readonly number[])[];
}

/** Currents are sums of unknowns with factors of 1 and -1: what is left of a dependent one is rounding. */
const nothing = 1e-9;

interface Reduced {
  readonly row: Map<number, number>;
  /** The unknown it is cleared by. */
  readonly pivot: number;
  /** The row as a sum of the basis' ports. */
  readonly shares: readonly number[];
}

/** Elimination over the sums of unknowns that are the ports' currents. */
export function portBasis(ports: readonly Port[]): PortBasis {
  const basis: number[] = [];
  const reduced: Reduced[] = [];
  const shares = ports.map((port, p): number[] => {
    const row = new Map<number, number>();
    for (const { unknown, sign } of port) row.set(unknown, (row.get(unknown) ?? 0) + sign);
    const own = new Array<number>(ports.length).fill(0);
    for (const known of reduced) {
      const factor = (row.get(known.pivot) ?? 0) / known.row.get(known.pivot)!;
      if (factor === 0) continue;
      for (const [unknown, value] of known.row) row.set(unknown, (row.get(unknown) ?? 0) - factor * value);
      known.shares.forEach((share, i) => {
        own[i]! += factor * share;
      });
    }
    const [pivot, left] = [...row].reduce((most, one) => (Math.abs(one[1]) > Math.abs(most[1]) ? one : most), [-1, 0]);
    if (Math.abs(left) < nothing) return own;
    const index = basis.push(p) - 1;
    reduced.push({ row, pivot, shares: own.map((share, i) => (i === index ? 1 : -share)) });
    return own.map((_, i) => (i === index ? 1 : 0));
  });
  return { ports: basis, shares: shares.map((own) => own.slice(0, basis.length)) };
}

/** Impedances (ohm) between the independent ports, the others open; null when there are none. */
export const basisImpedances = (
  admittance: readonly (readonly Complex[])[],
  { ports }: PortBasis,
): Complex[][] | null => invertComplexMatrix(ports.map((p) => ports.map((k) => admittance[p]![k]!)));

/** Admittances (S) between all ports from impedances between the independent ones; null when there are none. */
export function admittanceOfAll(
  impedances: readonly (readonly Complex[])[],
  { shares }: PortBasis,
): Complex[][] | null {
  const inverse = invertComplexMatrix(impedances);
  if (!inverse) return null;
  return shares.map((own) =>
    shares.map((other) => {
      let re = 0;
      let im = 0;
      own.forEach((a, i) => {
        if (a === 0) return;
        other.forEach((b, k) => {
          re += a * b * inverse[i]![k]!.re;
          im += a * b * inverse[i]![k]!.im;
        });
      });
      return { re, im };
    }),
  );
}
