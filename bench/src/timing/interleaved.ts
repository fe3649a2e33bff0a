/** Timing by turns: every case once a round, so that what else the machine does falls on all of them alike. */

export interface Case {
  readonly name: string;
  /** Does the work once; gives milliseconds when it was timed elsewhere (in another process), else null. */
  readonly run: () => null | Promise<number | null>;
}

export interface Timing {
  readonly name: string;
  /** Milliseconds of every round, in order. */
  readonly times: readonly number[];
  /** Milliseconds. */
  readonly median: number;
  readonly fastest: number;
}

async function once(work: Case["run"]): Promise<number> {
  const start = performance.now();
  const told = await work();
  return told ?? performance.now() - start;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

export const timingOf = (name: string, times: readonly number[]): Timing => ({
  name,
  times,
  median: median(times),
  fastest: Math.min(...times),
});

/** Times over `rounds`, after `warmUp` rounds that do not count. */
export async function interleaved(cases: readonly Case[], rounds: number, warmUp: number): Promise<readonly Timing[]> {
  const times = cases.map((): number[] => []);
  for (let round = -warmUp; round < rounds; round++) {
    for (const [i, { run }] of cases.entries()) {
      const time = await once(run);
      if (round >= 0) times[i]!.push(time);
    }
  }
  return cases.map(({ name }, i) => timingOf(name, times[i]!));
}

/** How many times as long as the baseline, fastest over fastest: other work of the machine only ever makes rounds longer. */
export const ratioTo = (timing: Timing, baseline: Timing): number => timing.fastest / baseline.fastest;

export function timingNamed(timings: readonly Timing[], name: string): Timing {
  const found = timings.find((timing) => timing.name === name);
  if (!found) throw new Error(`no timing is named "${name}": ${timings.map((t) => t.name).join(", ")}`);
  return found;
}

/** A case that runs in this thread. */
export const here = (name: string, work: () => void): Case => ({
  name,
  run: () => {
    work();
    return null;
  },
});

/** Rounds (1 to 9) of something that took so many milliseconds, so that all of them take at most about `seconds`. */
export const roundsWithin = (seconds: number, milliseconds: number): number =>
  Math.max(1, Math.min(9, Math.floor((1000 * seconds) / milliseconds)));
