/** What a choke does to the current on the outside: by its resistance and reactance at one place, and by its place. */
import { type Complex, complex } from "../../numerics/complex";
import type { Station } from "../../station/station";
import type { Progress } from "../common/question";
import { type Compared, type ProbedPlace, withChokeAt, withOnlyChokeAt } from "./comparison";
import { type Asked, isOutside, type OutsideState, workOutside } from "./state";

/** Share of the antenna's largest current below which the outside counts as quiet: our rule. */
export const quietShare = 0.05;
/** Ohm, with the names of their columns. */
export const resistances = [
  { name: "withNoResistance", ohms: 0 },
  { name: "withThreeHundredOhm", ohms: 300 },
  { name: "withOneKilohm", ohms: 1000 },
  { name: "withThreeKilohm", ohms: 3000 },
  { name: "withTenKilohm", ohms: 10000 },
] as const;
const reactances = [...steps(-5000, -2000, 500), ...steps(-1900, 1900, 100), ...steps(2000, 5000, 500)];
const leastOhms = 30;
const mostOhms = 100e3;
const stepsOfOhms = 12;
const refinements = 5;
/** Ohm. */
const leastStep = 2;

function steps(from: number, to: number, by: number): number[] {
  return Array.from({ length: Math.round((to - from) / by) + 1 }, (_, i) => from + i * by);
}

export interface PlaceResult {
  readonly place: ProbedPlace;
  /** Share with the choke that was tried, the only one on the line. */
  readonly share: number | null;
  /** Resistance (ohm) of a choke alone from which on the outside is quiet; null where none up to 100 kΩ does it. */
  readonly ohmsNeeded: number | null;
}

export interface ChokeStudy {
  readonly place: ProbedPlace;
  readonly reactances: readonly number[];
  /** One row of shares for each resistance of `resistances`. */
  readonly shares: readonly (readonly (number | null)[])[];
  /** Share with nothing at this place, the other chokes as they are. */
  readonly bare: number;
  readonly worst: { readonly reactance: number; readonly share: number };
  readonly ohmsNeeded: number | null;
}

export type ShareOf = (state: OutsideState) => number;

export interface StudyAsked extends Asked {
  readonly compared: Compared;
  readonly share: ShareOf;
}

const shareAt = (station: Station, asked: StudyAsked): number | null => {
  const state = workOutside(station, asked);
  return isOutside(state) ? asked.share(state) : null;
};

/** A choke of `tried` ohm at each place in turn. */
export function* studyPlaces(asked: StudyAsked, tried: Complex): Generator<Progress, PlaceResult[]> {
  const { places, probed } = asked.compared;
  const results: PlaceResult[] = [];
  for (const [i, place] of places.entries()) {
    yield { done: i, of: places.length, what: "places of a choke" };
    const at = (z: Complex) => withOnlyChokeAt(probed, place, z);
    results.push({ place, share: shareAt(at(tried), asked), ohmsNeeded: ohmsNeeded((z) => shareAt(at(z), asked)) });
  }
  return results;
}

/** Resistance and reactance at one place, the other chokes of the file as they are. */
export function* studyImpedances(asked: StudyAsked, place: ProbedPlace): Generator<Progress, ChokeStudy> {
  const at = (z: Complex) => shareAt(withChokeAt(asked.compared.probed, place, z), asked);
  const shares: (number | null)[][] = [];
  for (const [i, { ohms }] of resistances.entries()) {
    yield { done: i, of: resistances.length, what: "resistances of a choke" };
    shares.push(reactances.map((reactance) => at(complex(ohms, reactance))));
  }
  const pure = (reactance: number) => ({ reactance, share: at(complex(0, reactance)) ?? 0 });
  return {
    place,
    reactances,
    shares,
    bare: at(complex(0)) ?? 0,
    worst: worstOf(
      reactances.map((reactance, i) => ({ reactance, share: shares[0]![i] ?? 0 })),
      pure,
    ),
    ohmsNeeded: ohmsNeeded(at),
  };
}

interface AtReactance {
  readonly reactance: number;
  readonly share: number;
}

/** The largest share of the sweep, followed between its neighbours: a resonance may be narrower than the steps. */
function worstOf(swept: readonly AtReactance[], at: (reactance: number) => AtReactance): AtReactance {
  const larger = (a: AtReactance, b: AtReactance) => (b.share > a.share ? b : a);
  let best = swept.reduce(larger);
  const index = swept.indexOf(best);
  let step = Math.abs(
    (swept[Math.max(0, index - 1)]!.reactance - swept[Math.min(swept.length - 1, index + 1)]!.reactance) / 2,
  );
  while (step > leastStep) {
    step /= 2;
    best = [at(best.reactance - step), at(best.reactance + step)].reduce(larger, best);
  }
  return best;
}

/** The resistance above which every larger one keeps the share below the mark, to about 2 %; null where none does. */
function ohmsNeeded(shareOf: (impedance: Complex) => number | null): number | null {
  const at = (r: number): boolean => (shareOf(complex(r)) ?? Number.POSITIVE_INFINITY) <= quietShare;
  const ratio = (mostOhms / leastOhms) ** (1 / stepsOfOhms);
  let quiet = mostOhms;
  if (!at(quiet)) return null;
  while (quiet > leastOhms && at(quiet / ratio)) quiet /= ratio;
  if (quiet <= leastOhms) return 0;
  let loud = quiet / ratio;
  for (let i = 0; i < refinements; i++) {
    const middle = Math.sqrt(loud * quiet);
    if (at(middle)) quiet = middle;
    else loud = middle;
  }
  return quiet;
}
