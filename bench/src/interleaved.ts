/** Timing by turns: every case once a round, so that what else the machine does falls on all of them alike. */

export interface Case {
  readonly name: string;
  /** Does the work once; gives milliseconds when it was timed elsewhere (in another process), else null. */
  readonly run: () => null | Promise<number>;
}

export interface Timing {
  readonly name: string;
  /** Milliseconds. */
  readonly median: number;
  readonly fastest: number;
  readonly rounds: number;
}

async function once(work: Case["run"]): Promise<number> {
  const start = performance.now();
  const told = await work();
  return told ?? performance.now() - start;
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
};

/** Medians over `rounds`, after `warmUp` rounds that do not count. */
export async function interleaved(cases: readonly Case[], rounds: number, warmUp: number): Promise<readonly Timing[]> {
  const times = cases.map((): number[] => []);
  for (let round = -warmUp; round < rounds; round++) {
    for (const [i, { run }] of cases.entries()) {
      const time = await once(run);
      if (round >= 0) times[i]!.push(time);
    }
  }
  return cases.map(({ name }, i) => ({
    name,
    median: median(times[i]!),
    fastest: Math.min(...times[i]!),
    rounds,
  }));
}
