/**
 * Independent jobs spread over workers. Which worker does which job, and in what order, changes no result: a job is a pure
 * function of its data, and results are told by job. One batch at a time; cancelling ends it at once.
 */
import { type CrewOptions, createCrew, type Task } from "./crew";

export type PoolOptions<Job, Result> = CrewOptions<Job, Result>;

/** The thread that owns the pool, doing its share of the jobs. */
export interface Own<Job, Result> {
  readonly work: (job: Job) => Result;
  /** Resolves after the messages that wait have been delivered. */
  readonly breathe: () => Promise<void>;
}

export interface Batch<Job, Result> {
  readonly jobs: readonly Job[];
  /** Called once for every job, in any order. */
  readonly onResult: (job: Job, result: Result) => void;
  /** Without it the workers do all of it. */
  readonly own?: Own<Job, Result>;
}

export interface Pool<Job, Result> {
  /** Workers there may be, this thread not counted. */
  readonly size: number;
  /** Resolves when every job has its result or the batch was cancelled; rejects with what a job failed of. */
  readonly run: (batch: Batch<Job, Result>) => Promise<"done" | "cancelled">;
  readonly cancel: () => void;
  /** Starts all workers and lets each do something small. */
  readonly warmUp: () => void;
  /** Ends all workers. The pool may be used again: it starts new ones. */
  readonly close: () => void;
}

/** A job over which this many workers died is done by no further one. */
const mostDeaths = 2;
/** Time in ms for a worker to finish what was cancelled before it is ended: starting a new one takes longer. */
const grace = 80;

interface Running<Job, Result> extends Batch<Job, Result> {
  readonly queue: Task<Job>[];
  /** Jobs without a result. */
  open: number;
  ownAtWork: boolean;
  readonly end: (how: "done" | "cancelled") => void;
  readonly fail: (defect: Error) => void;
}

export function createPool<Job, Result>(options: PoolOptions<Job, Result>): Pool<Job, Result> {
  let running: Running<Job, Result> | null = null;
  let count = 0;
  const ofBatch = new Map<Task<Job>, Running<Job, Result>>();

  const crew = createCrew(options, {
    next: () => {
      const at = running?.queue.findIndex(({ deaths }) => deaths < mostDeaths) ?? -1;
      return at < 0 ? undefined : running?.queue.splice(at, 1)[0];
    },
    onDone: (task, result) => {
      settle(task, result);
      feed();
    },
    onFailed: (task, message) => {
      const batch = take(task);
      if (batch) fail(batch, new Error(message));
    },
    onLost: (tasks, why) => {
      const mine = tasks.filter((task) => ofBatch.get(task) === running);
      for (const task of tasks) if (!mine.includes(task)) ofBatch.delete(task);
      running?.queue.unshift(...mine);
      if (running) redo(running, why);
    },
  });

  /** After a loss: new workers where a job may be tried again, else this thread, else the defect is told. */
  const redo = (batch: Running<Job, Result>, why: string): void => {
    crew.hire(batch.queue.filter(({ deaths }) => deaths < mostDeaths).length);
    feed();
    if (batch.queue.length === 0) return;
    if (batch.own) return void ownShare(batch, batch.own);
    if (batch.queue.some(({ deaths }) => deaths >= mostDeaths) || crew.count() === 0)
      fail(batch, new Error(`workers died over a job, the last with: ${why}`));
  };

  const feed = (): void => {
    if (running) crew.feed(running.queue.length > 2 * options.size ? 2 : 1);
  };

  const take = (task: Task<Job>): Running<Job, Result> | null => {
    const batch = ofBatch.get(task) ?? null;
    ofBatch.delete(task);
    return batch === running ? batch : null;
  };

  const settle = (task: Task<Job>, result: Result): void => {
    const batch = take(task);
    if (!batch) return;
    batch.onResult(task.job, result);
    batch.open -= 1;
    if (batch.open === 0) finish(batch, "done");
  };

  const finish = (batch: Running<Job, Result>, how: "done" | "cancelled"): void => {
    if (running !== batch) return;
    running = null;
    if (how === "cancelled") crew.giveUp(grace);
    batch.end(how);
  };

  const fail = (batch: Running<Job, Result>, defect: Error): void => {
    batch.fail(defect);
    finish(batch, "cancelled");
  };

  /**
   * From the end of the queue, so that the workers, which take its front, are met in the middle; then what workers hold
   * that are still starting, so that it never takes longer than without them.
   */
  const ownShare = async (batch: Running<Job, Result>, { work, breathe }: Own<Job, Result>): Promise<void> => {
    if (batch.ownAtWork) return;
    batch.ownAtWork = true;
    try {
      const next = () => (running === batch ? (batch.queue.pop() ?? crew.takeBack()) : undefined);
      for (let task = next(); task; task = next()) {
        settle(task, work(task.job));
        await breathe();
      }
    } catch (defect) {
      fail(batch, defect instanceof Error ? defect : new Error(String(defect)));
    }
    batch.ownAtWork = false;
  };

  return {
    size: options.size,
    run: (batch) => {
      if (running) throw new Error("a batch is running: await it or cancel it before the next");
      if (batch.jobs.length === 0) return Promise.resolve("done");
      return new Promise((end, fail) => {
        const queue = batch.jobs.map((job): Task<Job> => ({ number: count++, job, deaths: 0 }));
        const begun: Running<Job, Result> = { ...batch, queue, open: queue.length, ownAtWork: false, end, fail };
        for (const task of queue) ofBatch.set(task, begun);
        running = begun;
        crew.hire(begun.own ? queue.length - 1 : queue.length);
        feed();
        if (begun.own) void ownShare(begun, begun.own);
        else if (crew.count() === 0) redo(begun, "none could be started");
      });
    },
    cancel: () => {
      if (running) finish(running, "cancelled");
    },
    warmUp: () => {
      crew.hire(options.size);
      crew.warmUp();
    },
    close: () => {
      if (running) finish(running, "cancelled");
      crew.close();
    },
  };
}
