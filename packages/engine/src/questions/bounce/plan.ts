/** How long is looked, how finely, and at which moments: bounded work, whatever the line. */
import type { Signal } from "./parameters";

export interface FilmPlan {
  readonly sections: number;
  /** Steps in all, and steps from one moment to the next. */
  readonly steps: number;
  readonly stride: number;
  readonly moments: readonly number[];
  readonly places: readonly number[];
  /** Index of the first moment after time was left out; null where none was. */
  readonly cut: number | null;
  /** `waves`: as they swing. `sizes`: how large they swing, where the line is too many waves long to show each. */
  readonly shows: "waves" | "sizes";
}

/** Along the line; fewer where very many passes are looked at. */
const placesShown = 60;
const fewerPlaces = 40;
const manyPasses = 60;
const momentsShown = 120;
/** Of those, kept for the end where the middle is left out. */
const momentsAtEnd = 24;
const mostUpdates = 4e6;
/** Steps in a wave at least: the deviation they cause is worked out and told. */
const stepsPerWave = 24;
export const mostWaves = 25;
const mostWavesShown = 3;

/** Until echoes and load are settled one after the other, and three periods more to see that they are. */
const carrierPasses = (waves: number, echoes: number, ringing: number): number =>
  Math.ceil(Math.max(6, echoes + 2 + 1.5 * ringing + 3 / Math.max(waves, 0.01)));

const testPasses = (echoes: number): number => Math.min(24, Math.max(5, echoes + 3));

/** `waves` along the line; `echoes` until it is settled; `ringing` of the load in passes of the line. */
export function filmPlan(signal: Signal, waves: number, echoes: number, ringing: number): FilmPlan {
  const carrier = signal === "carrier";
  const wanted = carrier ? stepsPerWave * waves : 240;
  const needed = carrier ? carrierPasses(waves, echoes, ringing) : testPasses(echoes);
  const shown = needed > manyPasses ? fewerPlaces : placesShown;
  const sections = Math.max(1, Math.ceil(wanted / (2 * shown))) * 2 * shown;
  const shows = carrier && waves > mostWavesShown ? "sizes" : "waves";
  const runs = shows === "sizes" ? 2 : 1;
  const affordable = Math.floor(mostUpdates / runs / sections ** 2);
  const passes = Math.max(4, Math.min(affordable, needed));
  const perPass = carrier && shows === "waves" ? Math.min(24, Math.max(4, Math.round(10 * waves))) : 10;
  const stride = Math.max(1, Math.round(sections / perPass));
  const steps = passes * sections + 1;
  const whole = Math.floor((steps - 1) / stride) + 1;
  const uncut = whole <= momentsShown;
  const first = uncut ? whole : momentsShown - momentsAtEnd;
  const early = Array.from({ length: first }, (_, i) => i * stride);
  const late = uncut ? [] : Array.from({ length: momentsAtEnd }, (_, i) => steps - 1 - (momentsAtEnd - 1 - i) * stride);
  return {
    sections,
    steps,
    stride,
    moments: [...early, ...late],
    places: Array.from({ length: shown + 1 }, (_, i) => (i * sections) / shown),
    cut: uncut ? null : first,
    shows,
  };
}
