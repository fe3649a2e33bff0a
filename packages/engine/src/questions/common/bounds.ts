/**
 * How far uncertain inputs move a set of results: each input alone to its low and its high end, the deviations of one
 * direction combined as the root of the sum of their squares (independent inputs). The nominal value comes first.
 */
import type { Ahead } from "../../chain/solveRequest";
import type { Station } from "../../station/station";
import { movedStation, type UncertainInput, uncertainInputs } from "../../station/uncertainInputs";
import type { Progress } from "./question";

export type Numbers = Readonly<Record<string, number | null>>;

export interface InputEffect {
  readonly input: UncertainInput;
  readonly atLow: Numbers;
  readonly atHigh: Numbers;
}

export interface Bounds {
  readonly nominal: Numbers;
  readonly low: Numbers;
  readonly high: Numbers;
  readonly effects: readonly InputEffect[];
}

export interface Move {
  readonly input: UncertainInput;
  /** The station with the input at its low and at its high end. */
  readonly low: Station;
  readonly high: Station;
}

const moves = new WeakMap<Station, readonly Move[]>();

/** A station's uncertain inputs moved one by one; the same objects every time, so that what is kept by them is found. */
export function movesOf(station: Station): readonly Move[] {
  const known = moves.get(station);
  if (known) return known;
  const made = uncertainInputs(station).map((input) => ({
    input,
    low: movedStation(station, input, "low"),
    high: movedStation(station, input, "high"),
  }));
  moves.set(station, made);
  return made;
}

/** `evaluate` returns null where a moved station cannot be worked out: that end is then left out and `skipped` names it. */
export function* moveInputs(
  station: Station,
  nominal: Numbers,
  evaluate: (moved: Station) => Numbers | null | Generator<Ahead, Numbers | null>,
  what: string,
): Generator<Progress, Bounds & { readonly skipped: readonly string[] }> {
  const effects: InputEffect[] = [];
  const skipped: string[] = [];
  const all = movesOf(station);
  for (const [i, { input, low, high }] of all.entries()) {
    const progress = { done: i, of: all.length, what };
    yield progress;
    const atLow = yield* stepping(evaluate(low), progress);
    const atHigh = yield* stepping(evaluate(high), progress);
    if (atLow === null || atHigh === null) skipped.push(input.name);
    effects.push({ input, atLow: atLow ?? nominal, atHigh: atHigh ?? nominal });
  }
  return { nominal, ...combine(nominal, effects), effects, skipped };
}

/** An evaluation in one go or in steps; every step shows the same progress, so that a host gets a chance to stop. */
export function* stepping<T>(work: T | Generator<Ahead, T>, progress: Progress): Generator<Progress, T> {
  if (!isStepping(work)) return work;
  let step = work.next();
  while (!step.done) {
    yield { ...progress, ...step.value };
    step = work.next();
  }
  return step.value;
}

const isStepping = <T>(work: T | Generator<Ahead, T>): work is Generator<Ahead, T> =>
  typeof work === "object" && work !== null && Symbol.iterator in work && "next" in work;

export function combine(nominal: Numbers, effects: readonly InputEffect[]): { low: Numbers; high: Numbers } {
  const low: Record<string, number | null> = {};
  const high: Record<string, number | null> = {};
  for (const [name, value] of Object.entries(nominal)) {
    if (value === null) continue;
    const ends = effects.map((e) => [e.atLow[name] ?? value, e.atHigh[name] ?? value]);
    const rootSumSquare = (pick: (d: readonly number[]) => number) =>
      Math.hypot(...ends.map((pair) => pick([0, ...pair.map((x) => x - value)])));
    low[name] = value - rootSumSquare((d) => Math.min(...d));
    high[name] = value + rootSumSquare((d) => Math.max(...d));
  }
  return { low, high };
}

/**
 * Effects on one result, largest first; inputs that move it by less than `least` are left out. The nominal value counts
 * too: an SWR may rise at both ends of a length and be equal there.
 */
export function ranked(
  { nominal, effects }: Pick<Bounds, "nominal" | "effects">,
  name: string,
  least: number,
): InputEffect[] {
  const reach = (e: InputEffect): number => {
    const values = [nominal[name] ?? 0, e.atLow[name] ?? 0, e.atHigh[name] ?? 0];
    return Math.max(...values) - Math.min(...values);
  };
  return effects.filter((e) => reach(e) > least).sort((a, b) => reach(b) - reach(a));
}
