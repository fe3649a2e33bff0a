/**
 * The antenna over a span of frequencies from a few exact solves: its impedance matrix interpolated on nested
 * Chebyshev points, doubled until exact solves between the points agree. Berrut and Trefethen, SIAM Review 46 (2004).
 */

import { chebyshevPoints, interpolateChebyshev } from "../numerics/chebyshevPoints";
import { type Complex, complex, magnitude, subtract } from "../numerics/complex";
import { invertComplexMatrix } from "../numerics/invertComplexMatrix";
import type { Station } from "../station/station";
import { admittanceOfAll, basisImpedances } from "../wires/portBasis";
import { finerOf, type Refinement } from "../wires/refinement";
import { type AntennaRefused, type AntennaSolver, type HeldMesh, type SolvedAntenna, soilOf } from "./antennaSolver";
import { closeAntenna } from "./closeAntenna";

/** Largest error allowed at the check points: this many ohms plus this share of the impedance. */
const allowedOhms = 0.05;
const allowedShare = 1e-3;
const fewestIntervals = 8;
const mostIntervals = 64;

export interface InterpolatedAntenna {
  /** Stands in for a solver inside the span; beyond it, or when interpolation was given up, solves exactly. */
  readonly solver: AntennaSolver;
  readonly solvedPoints: number;
  /** Largest difference to an exact solve found at the check points, ohm; 0 when every point is solved exactly. */
  readonly error: number;
  /** Frequencies solved exactly, Hz. */
  readonly nodes: readonly number[];
}

/** Yields before every solve, so that a host can show progress and stop. */
export function* interpolateAntenna(
  station: Station,
  span: { readonly from: number; readonly to: number },
  solver: AntennaSolver,
): Generator<void, InterpolatedAntenna | AntennaRefused> {
  const mesh = yield* meshFor(station, span, solver);
  if ("refused" in mesh) return mesh;
  for (let intervals = fewestIntervals; intervals <= mostIntervals; intervals *= 2) {
    const nodes = chebyshevPoints(span.from, span.to, intervals);
    const solved: SolvedAntenna[] = [];
    for (const f of nodes) {
      yield;
      const one = solver.solve(station, f, 0, mesh);
      if ("refused" in one) return one;
      solved.push(one);
    }
    // One mesh for all: ports depend on each other in the same way at every frequency.
    const { basis } = solved[0]!.solution!;
    const matrices = solved.map((s) => s.solution && basisImpedances(s.solution.admittance, basis));
    if (matrices.some((m) => m === null)) break;
    const interpolant = (f: number) => admittanceOfAll(interpolateMatrix(nodes, matrices as Complex[][][], f), basis);
    const electrodes = (f: number) =>
      interpolateMatrix(
        nodes,
        solved.map((s) => [[...s.solution!.electrodes]]),
        f,
      )[0]!;
    const stand = standIn({ station, span, solver, mesh }, interpolant, electrodes);
    const checked: ReturnType<typeof mismatch>[] = [];
    for (const f of checkPoints(nodes)) {
      yield;
      checked.push(mismatch(solver.solve(station, f, 0, mesh), stand.solve(station, f)));
    }
    if (checked.every((c) => c?.within)) {
      const error = Math.max(...checked.map((c) => c!.ohms));
      return {
        solver: stand,
        solvedPoints: nodes.length,
        error,
        nodes,
      };
    }
  }
  return { solver, solvedPoints: 0, error: 0, nodes: [] };
}

/** One mesh for the whole span: made for its upper end, as fine as either end or the middle asks for. */
function* meshFor(
  station: Station,
  span: { readonly from: number; readonly to: number },
  solver: AntennaSolver,
): Generator<void, HeldMesh | AntennaRefused> {
  let finest: Refinement | null = null;
  for (const f of [span.from, (span.from + span.to) / 2, span.to]) {
    yield;
    const solved = solver.solve(station, f);
    if ("refused" in solved) return solved;
    const { refinement } = solved.solution!.method;
    finest = finest === null ? refinement : finerOf(finest, refinement);
  }
  return { refinement: finest!, meshFrequency: span.to };
}

/** Between the outermost points, where the error of a Chebyshev interpolant is no smaller than elsewhere, and in the middle. */
function checkPoints(nodes: readonly number[]): number[] {
  const middle = Math.floor(nodes.length / 2);
  const between = (i: number) => (nodes[i]! + nodes[i + 1]!) / 2;
  return [between(1), between(middle), between(nodes.length - 3)];
}

/** Between the feeds, with all other ports closed as the station has them. */
function mismatch(
  exact: SolvedAntenna | AntennaRefused,
  guess: SolvedAntenna | AntennaRefused,
): { ohms: number; within: boolean } | null {
  if ("refused" in exact || "refused" in guess) return null;
  const truth = invertComplexMatrix(exact.admittance);
  const guessed = invertComplexMatrix(guess.admittance);
  if (truth === null || guessed === null) return null;
  let ohms = 0;
  let within = true;
  truth.forEach((row, i) => {
    row.forEach((z, k) => {
      const error = magnitude(subtract(z, guessed[i]![k]!));
      ohms = Math.max(ohms, error);
      if (error > allowedOhms + allowedShare * magnitude(z)) within = false;
    });
  });
  return { ohms, within };
}

function interpolateMatrix(nodes: readonly number[], matrices: readonly Complex[][][], f: number): Complex[][] {
  return matrices[0]!.map((row, i) =>
    row.map((_, k) => {
      const part = (pick: (z: Complex) => number) =>
        interpolateChebyshev(
          nodes,
          matrices.map((m) => pick(m[i]![k]!)),
          f,
        );
      return complex(
        part((z) => z.re),
        part((z) => z.im),
      );
    }),
  );
}

interface Interpolated {
  readonly station: Station;
  readonly span: { readonly from: number; readonly to: number };
  readonly solver: AntennaSolver;
  readonly mesh: HeldMesh;
}

/** Interpolates all ports; chokes and earths of the station asked for close them, which therefore may differ. */
function standIn(
  { station, span, solver, mesh }: Interpolated,
  interpolant: (f: number) => Complex[][] | null,
  electrodes: (f: number) => Complex[],
): AntennaSolver {
  const { wires } = solver.describe(station);
  return {
    solves: solver.solves,
    describe: solver.describe,
    settings: solver.settings,
    solve(asked, frequency, lift = 0) {
      const described = solver.describe(asked);
      const inside = frequency >= span.from && frequency <= span.to;
      const served = lift === 0 && inside && described.wires === wires;
      const admittance = served ? interpolant(frequency) : null;
      if (admittance === null) return solver.solve(asked, frequency, lift, mesh);
      const set = solver.settings(asked, frequency, lift, mesh);
      if ("refused" in set) return set;
      const state = { frequency, soil: soilOf(asked, frequency), admittance, electrodes: electrodes(frequency) };
      return closeAntenna(described.build, { ...state, fineAdmittance: null, solution: null }, set);
    },
  };
}
