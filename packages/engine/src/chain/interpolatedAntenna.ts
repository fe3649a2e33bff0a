/**
 * The antenna over a span of frequencies from a few exact solves: all its ports by one rational interpolation, sample after
 * sample where the last one changed it most, until two in a row changed nothing that counts, both of them checks in the
 * widest gaps.
 */
import { chebyshevPoints } from "../numerics/chebyshevPoints";
import { type Complex, magnitude, subtract } from "../numerics/complex";
import { invertComplexMatrix } from "../numerics/invertComplexMatrix";
import { fitRational } from "../numerics/rationalInterpolation";
import type { Station } from "../station/station";
import type { Radiating } from "../wires/radiating";
import { finerOf } from "../wires/refinement";
import type { AntennaRefused, AntennaSolver, HeldMesh, SolvedAntenna } from "./antennaSolver";
import {
  currentNumbers,
  currentSample,
  currentValues,
  momentChange,
  type PortFunctions,
  portFunctions,
  portSample,
  portValues,
} from "./portFunctions";
import type { Ahead } from "./solveRequest";
import { type Interpolated, radiatingAt, type Span, standIn } from "./standIn";

/** Largest change that does not count: this many ohms plus this share of the impedance between the feeds. */
const allowedOhms = 0.05;
const allowedShare = 1e-3;
/** The same for current moments, as a share of the largest at that frequency. */
const allowedMoment = 2e-3;
/** Samples to begin with, in spans up to an octave and beyond, and the most that are taken. */
const firstNarrow = 3;
const firstWide = 6;
const most = 64;
const checksWanted = 2;
/** Places between two neighbouring samples at which fits are compared. */
const between = 6;
/** Meshes tried until one is fine enough at every sample. */
const mostMeshes = 3;

export interface InterpolatedAntenna {
  /** Stands in for a solver inside the span; beyond it, or when interpolation was given up, solves exactly. */
  readonly solver: AntennaSolver;
  readonly solvedPoints: number;
  /**
   * Ohm: by how much either of the last two samples changed an impedance between the feeds at most. Each fit is better than
   * the one before it, so that this bounds the error of the last. 0 when every point is solved exactly.
   */
  readonly error: number;
  /** Frequencies solved exactly, Hz. */
  readonly nodes: readonly number[];
  /** Held over the span. */
  readonly mesh: HeldMesh;
  /** What radiates at a frequency (Hz) of the span under voltages (V rms) at the feeds; null when it was not wanted or given up, or soil that changes with frequency laid the sample points out differently. */
  readonly radiating: ((frequency: number, feedVoltages: readonly Complex[]) => Radiating | null) | null;
}

export interface Wanted {
  /** Frequencies (Hz) that served a station much like this one, the last of them checks in the widest gaps. */
  readonly nodes?: readonly number[];
  /** Whether currents are interpolated too, for `radiating`. */
  readonly currents?: true;
}

/** Yields before every solve what is needed next, so that a host can show progress, stop, and solve ahead. */
export function* interpolateAntenna(
  station: Station,
  span: Span,
  solver: AntennaSolver,
  { nodes, currents }: Wanted = {},
): Generator<Ahead, InterpolatedAntenna | AntennaRefused> {
  const known = nodes !== undefined && nodes.length > 0;
  const first = known ? nodes : firstNodes(span);
  const top = yield* solvedAt({ station, span, solver, mesh: undefined }, span.to);
  if ("refused" in top) return top;
  let { refinement } = top.solution!.method;
  for (let meshes = 0; meshes < mostMeshes; meshes++) {
    const mesh: HeldMesh = { refinement, meshFrequency: span.to };
    const found = yield* onMesh(
      { station, span, solver, mesh },
      {
        first,
        known,
        mayRefine: meshes + 1 < mostMeshes,
        withCurrents: currents === true,
      },
    );
    if (!("tooCoarse" in found)) return found;
    const own = yield* solvedAt({ station, span, solver, mesh: undefined }, found.tooCoarse);
    if ("refused" in own) return own;
    refinement = finerOf(refinement, own.solution!.method.refinement);
  }
  throw new Error("interpolation: the last mesh is always taken");
}

/** The ends of the span and Chebyshev points between them. */
function firstNodes({ from, to }: Span): readonly number[] {
  return chebyshevPoints(from, to, (to > 2 * from ? firstWide : firstNarrow) - 1);
}

interface Sampling extends Omit<Interpolated, "mesh"> {
  readonly mesh: HeldMesh | undefined;
}

function* solvedAt(
  { station, solver, mesh }: Sampling,
  frequency: number,
): Generator<Ahead, SolvedAntenna | AntennaRefused> {
  yield {};
  return solver.solve(station, frequency, 0, mesh);
}

interface TooCoarse {
  /** Hz */
  readonly tooCoarse: number;
}

interface Beginning {
  readonly first: readonly number[];
  /** The last of them are checks in the widest gaps. */
  readonly known: boolean;
  /** A sample whose estimate misses the goal asks for a finer mesh. */
  readonly mayRefine: boolean;
  readonly withCurrents: boolean;
}

function* onMesh(
  work: Interpolated,
  { first, known, mayRefine, withCurrents }: Beginning,
): Generator<Ahead, InterpolatedAntenna | AntennaRefused | TooCoarse> {
  const { station, mesh } = work;
  yield { ahead: first.map((frequency) => ({ station, frequency, lift: 0, mesh })) };
  const samples: Sample[] = [];
  const waiting = [...first];
  let checks = known ? checksWanted : 0;
  while (samples.length + waiting.length <= most) {
    const stopped = yield* sampleAt(work, waiting.splice(0), mayRefine, samples);
    if (stopped) return stopped;
    const fits = threeFits(work, samples, withCurrents);
    const solved = samples.map((s) => s.frequency);
    const changes = [1, 2].map((n) => changesBetween(work, fits[n - 1]!, fits[n]!, solved));
    if (changes.some((c) => c === null)) break;
    const [last, before] = [changes[0]!, changes[1]!];
    const settled = last.share <= 1 && before.share <= 1;
    if (settled && checks >= checksWanted) {
      return {
        solver: fits[0]!.solver,
        radiating: fits[0]!.radiating,
        solvedPoints: samples.length,
        error: Math.max(last.ohms, before.ohms),
        nodes: solved,
        mesh,
      };
    }
    checks = last.share <= 1 ? checks + 1 : 0;
    waiting.push(checks > 0 ? middleOfWidestGap(solved) : last.at);
  }
  return { solver: exactly(work), solvedPoints: 0, error: 0, nodes: [], mesh, radiating: null };
}

interface Sample {
  /** Hz */
  readonly frequency: number;
  readonly solved: SolvedAntenna;
}

/** Adds samples; null, or why there are no more. */
function* sampleAt(
  work: Interpolated,
  frequencies: readonly number[],
  mayRefine: boolean,
  samples: Sample[],
): Generator<Ahead, AntennaRefused | TooCoarse | null> {
  for (const frequency of frequencies) {
    const solved = yield* solvedAt(work, frequency);
    if ("refused" in solved) return solved;
    if (mayRefine && !solved.solution!.goalMet) return { tooCoarse: frequency };
    samples.push({ frequency, solved });
  }
  return null;
}

/** Solves every frequency, on the mesh held. */
const exactly = ({ solver, mesh }: Interpolated): AntennaSolver => ({
  ...solver,
  solve: (station, frequency, lift = 0) => solver.solve(station, frequency, lift, mesh),
});

interface Fit {
  readonly solver: AntennaSolver;
  readonly radiating: InterpolatedAntenna["radiating"];
  readonly functions: PortFunctions;
  /** Numbers of the currents at a frequency in Hz. */
  readonly currents: (frequency: number) => Float64Array;
}

/** Through all samples, through all but the last, and through all but the last two. */
function threeFits(work: Interpolated, samples: readonly Sample[], withCurrents: boolean): readonly Fit[] {
  const { from, to } = work.span;
  const x = (frequency: number): number => (2 * (frequency - from)) / (to - from) - 1;
  const functions = portFunctions(
    samples.map((s) => s.solved),
    withCurrents,
  );
  const ports = samples.map((s) => portSample(s.solved, x(s.frequency), functions));
  const currents = samples.map((s) => currentSample(s.solved, x(s.frequency), functions));
  const { points } = samples[0]!.solved.solution!.model;
  return [0, 1, 2].map((left) => {
    const count = samples.length - left;
    const portFit = fitRational(ports.slice(0, count));
    // The ports decide: there are hundreds of moments, with the same poles.
    const currentFit = fitRational(currents.slice(0, count), currentNumbers(functions));
    const at = {
      ports: (frequency: number) => portValues(portFit(x(frequency)), functions),
      currents: (frequency: number) => currentValues(currentFit(x(frequency)), functions),
    };
    return {
      solver: standIn(work, at),
      radiating:
        functions.points === 0 ? null : (frequency, voltages) => radiatingAt(work, at, points, frequency, voltages),
      functions,
      currents: (frequency) => currentFit(x(frequency)),
    } satisfies Fit;
  });
}

/** Hz: the samples, where a fit without the last one shows how far it was off there, and equally spaced places between them. */
function placesOn(frequencies: readonly number[]): number[] {
  const ordered = [...frequencies].sort((a, b) => a - b);
  return ordered.flatMap((to, i) => {
    const from = ordered[i - 1] ?? to;
    return Array.from({ length: i === 0 ? 1 : between + 1 }, (_, k) => to - ((to - from) * k) / (between + 1));
  });
}

const middleOfWidestGap = (frequencies: readonly number[]): number => {
  const ordered = [...frequencies].sort((a, b) => a - b);
  const gaps = ordered.slice(1).map((to, i) => to - ordered[i]!);
  const widest = gaps.indexOf(Math.max(...gaps));
  return ordered[widest]! + gaps[widest]! / 2;
};

/** Not nearer to a sample than a quarter of the gap it lies in: samples side by side would confirm each other only. */
function apart(place: number, frequencies: readonly number[]): boolean {
  const below = Math.max(...frequencies.filter((f) => f <= place));
  const above = Math.min(...frequencies.filter((f) => f >= place));
  return Math.min(place - below, above - place) > (above - below) / 4;
}

interface Change {
  /** Largest change over what is allowed. */
  readonly share: number;
  readonly ohms: number;
  /** Hz: where it is largest among the places well apart from samples. */
  readonly at: number;
}

/** Between the feeds, with all other ports closed as the station has them; null where one of them has no such state. */
function changesBetween({ station }: Interpolated, now: Fit, before: Fit, solved: readonly number[]): Change | null {
  let [share, ohms, open, at] = [0, 0, -1, Number.NaN];
  for (const place of placesOn(solved)) {
    const change = changeAt(now.solver.solve(station, place), before.solver.solve(station, place));
    if (change === null) return null;
    const here = Math.max(change.share, momentsChanged(now, before, place) / allowedMoment);
    ohms = Math.max(ohms, change.ohms);
    share = Math.max(share, here);
    if (here <= open || !apart(place, solved)) continue;
    open = here;
    at = place;
  }
  return { share, ohms, at };
}

const momentsChanged = (now: Fit, before: Fit, place: number): number =>
  now.functions.points === 0 ? 0 : momentChange(now.currents(place), before.currents(place), now.functions);

function changeAt(
  now: SolvedAntenna | AntennaRefused,
  before: SolvedAntenna | AntennaRefused,
): { readonly share: number; readonly ohms: number } | null {
  if ("refused" in now || "refused" in before) return null;
  const z = invertComplexMatrix(now.admittance);
  const earlier = invertComplexMatrix(before.admittance);
  if (z === null || earlier === null) return null;
  let [share, ohms] = [0, 0];
  z.forEach((row, i) => {
    row.forEach((value, k) => {
      const change = magnitude(subtract(value, earlier[i]![k]!));
      ohms = Math.max(ohms, change);
      share = Math.max(share, change / (allowedOhms + allowedShare * magnitude(value)));
    });
  });
  return { share, ohms };
}
