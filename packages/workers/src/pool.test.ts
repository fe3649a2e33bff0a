import { describe, expect, it } from "vitest";
import { createPool, type Pool } from "./pool";
import { type FromWorker, serve, type ToWorker, type WorkerLike } from "./worker";

const square = (x: number): number => {
  if (Number.isNaN(x)) throw new Error("no number");
  return x * x;
};

/** A worker in the same thread that does one message whenever it is told to. */
interface Fake extends WorkerLike<number, number> {
  readonly waiting: ToWorker<number>[];
  readonly step: () => void;
  readonly die: () => void;
  readonly warm: () => number;
  readonly ended: () => boolean;
}

function fake(ready = true): Fake {
  let hearMessage: (message: FromWorker<number>) => void = () => undefined;
  let hearDeath: (why: string) => void = () => undefined;
  let work: (message: ToWorker<number>) => void = () => undefined;
  let ended = false;
  let warm = 0;
  const waiting: ToWorker<number>[] = [];
  return {
    waiting,
    post: (message) => void waiting.push(message),
    onMessage: (hear) => {
      hearMessage = hear;
      if (!ready) return;
      serve<number, number>(
        { post: (message) => hearMessage(message), onMessage: (listen) => (work = listen) },
        square,
        () => warm++,
      );
    },
    onDeath: (hear) => {
      hearDeath = hear;
    },
    terminate: () => {
      ended = true;
    },
    step: () => {
      const message = waiting.shift();
      if (message && !ended) work(message);
    },
    die: () => {
      ended = true;
      hearDeath("out of memory");
    },
    warm: () => warm,
    ended: () => ended,
  };
}

function bench(size: number, start: (index: number) => Fake = () => fake()) {
  const workers: Fake[] = [];
  const timers: (() => void)[] = [];
  const pool: Pool<number, number> = createPool({
    size,
    startWorker: () => {
      const worker = start(workers.length);
      workers.push(worker);
      return worker;
    },
    later: (_, act) => timers.push(act),
  });
  const results = new Map<number, number>();
  const onResult = (job: number, result: number): void => {
    expect(results.has(job)).toBe(false);
    results.set(job, result);
  };
  const alive = () => workers.filter((worker) => !worker.ended());
  return {
    ...{ pool, workers, results, onResult, alive },
    start: (jobs: readonly number[]) => pool.run({ jobs, onResult }),
    timeout: () => timers.splice(0).forEach((act) => void act()),
    /** Lets the workers do all they hold, the last first. */
    finish: () => {
      while (alive().some(({ waiting }) => waiting.length > 0)) for (const worker of alive().reverse()) worker.step();
    },
  };
}

const jobs = Array.from({ length: 20 }, (_, i) => i);
const squares = new Map(jobs.map((job) => [job, job * job]));
const inOrder = (results: ReadonlyMap<number, number>) => new Map([...results].sort(([a], [b]) => a - b));

/** The thread of the pool has taken what it could: all that awaits has had its turn. */
const untilOwnIsThrough = () => new Promise((resolve) => setImmediate(resolve));

describe("a pool of workers", () => {
  it.each([1, 2, 3, 8])("gives every job its own result, with %i workers", async (size) => {
    const { start, finish, results, workers } = bench(size);
    const done = start(jobs);
    finish();
    expect(await done).toBe("done");
    expect(inOrder(results)).toEqual(squares);
    expect(workers).toHaveLength(size);
  });

  it("starts workers only when there is work for them, and keeps them", async () => {
    const { start, finish, workers } = bench(8);
    expect(workers).toHaveLength(0);
    for (const some of [[1, 2], [3, 4, 5], [6]]) {
      const done = start(some);
      finish();
      await done;
    }
    expect(workers).toHaveLength(3);
  });

  it("lets the thread that owns it do its share, from the other end", async () => {
    const { pool, onResult, results, finish, workers } = bench(1);
    const own: number[] = [];
    const work = (job: number): number => {
      own.push(job);
      return square(job);
    };
    const done = pool.run({ jobs, onResult, own: { work, breathe: async () => workers[0]!.step() } });
    await untilOwnIsThrough();
    finish();
    await done;
    expect(inOrder(results)).toEqual(squares);
    expect(own[0]).toBe(19);
    expect(own.length).toBeGreaterThan(2);
    expect(own.length).toBeLessThan(18);
  });

  it("does not wait for workers that are still starting when the thread that owns it has nothing else to do", async () => {
    const { pool, onResult, results, workers } = bench(3, () => fake(false));
    await pool.run({ jobs, onResult, own: { work: square, breathe: async () => undefined } });
    expect(inOrder(results)).toEqual(squares);
    expect(workers.map(({ ended }) => ended())).toEqual([false, false, false]);
  });

  it("replaces a worker that dies and has its work done again", async () => {
    const { start, finish, workers, results } = bench(2);
    const done = start(jobs);
    workers[0]!.step();
    workers[0]!.die();
    expect(workers).toHaveLength(3);
    finish();
    expect(await done).toBe("done");
    expect(inOrder(results)).toEqual(squares);
  });

  it("tells of a job over which workers keep dying", async () => {
    const { start, workers, alive, pool, timeout } = bench(1);
    const told = start([7]).catch((defect: Error) => defect.message);
    workers[0]!.die();
    workers[1]!.die();
    expect(await told).toMatch(/workers died over a job.*out of memory/);
    expect(workers).toHaveLength(2);
    timeout();
    pool.close();
    expect(alive()).toEqual([]);
  });

  it("leaves a job over which workers keep dying, and all when none can be started, to the thread that owns it", async () => {
    const dying = bench(1);
    let turns = 0;
    const breathe = async () => {
      // The first job stays with workers until two have died over it.
      if (turns++ < 2) dying.workers.at(-1)!.die();
    };
    const done = dying.pool.run({ jobs, onResult: dying.onResult, own: { work: square, breathe } });
    await untilOwnIsThrough();
    dying.finish();
    await done;
    expect(inOrder(dying.results)).toEqual(squares);

    const none = bench(3, () => {
      throw new Error("not allowed here");
    });
    await none.pool.run({ jobs, onResult: none.onResult, own: { work: square, breathe: async () => undefined } });
    expect(inOrder(none.results)).toEqual(squares);
    expect(none.workers).toEqual([]);
    await expect(none.start(jobs)).rejects.toThrow("none could be started");
  });

  it("starts no more workers when they die before they are ready", async () => {
    const { start, workers } = bench(1, () => fake(false));
    const told = start(jobs).catch((defect: Error) => defect.message);
    workers[0]!.die();
    workers[1]!.die();
    expect(await told).toMatch(/out of memory/);
    expect(workers).toHaveLength(2);
  });

  it("passes on what a job fails of, and the worker lives on", async () => {
    const { start, finish, workers, results } = bench(1);
    const failing = start([Number.NaN]);
    const told = expect(failing).rejects.toThrow("no number");
    finish();
    await told;
    const done = start([3]);
    finish();
    await done;
    expect(results.get(3)).toBe(9);
    expect(workers).toHaveLength(1);
  });

  it("cancels at once, and ends those that still hang on it a moment later", async () => {
    const { start, pool, workers, results, timeout, alive, finish } = bench(2);
    const first = start(jobs);
    pool.cancel();
    expect(await first).toBe("cancelled");
    // One of the two gets done with what it holds in time.
    while (workers[0]!.waiting.length > 0) workers[0]!.step();
    timeout();
    expect(workers[0]!.ended()).toBe(false);
    expect(workers[1]!.ended()).toBe(true);
    expect(results.size).toBe(0);
    const second = start(jobs);
    finish();
    expect(await second).toBe("done");
    expect(inOrder(results)).toEqual(squares);
    expect(alive()).toHaveLength(2);
  });

  it("keeps the work of the next batch when a worker still hangs on the last one", async () => {
    const { start, pool, timeout, finish, results } = bench(1);
    const first = start([1, 2, 3]);
    pool.cancel();
    const second = start([4, 5]);
    timeout();
    finish();
    expect(await Promise.all([first, second])).toEqual(["cancelled", "done"]);
    expect(inOrder(results)).toEqual(new Map([4, 5].map((x) => [x, x * x])));
  });

  it("warms up all of its workers, and ends all of them", () => {
    const { pool, workers, finish, alive } = bench(3);
    pool.warmUp();
    finish();
    expect(workers.map(({ warm }) => warm())).toEqual([1, 1, 1]);
    pool.close();
    expect(alive()).toEqual([]);
  });

  it("takes one batch at a time, and an empty one is done", async () => {
    const { start, pool } = bench(1);
    expect(await start([])).toBe("done");
    void start([1]);
    expect(() => pool.run({ jobs: [2], onResult: () => undefined })).toThrow("a batch is running");
  });
});
