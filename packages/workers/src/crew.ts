/** The workers of a pool: started when they are needed, fed, replaced when they die, ended when they hang on what nobody wants. */
import type { FromWorker, WorkerLike } from "./worker";

export interface Task<Job> {
  readonly number: number;
  readonly job: Job;
  /** How many workers died over it. */
  deaths: number;
}

export interface CrewOptions<Job, Result> {
  readonly size: number;
  readonly startWorker: () => WorkerLike<Job, Result>;
  /** Calls back after so many ms. */
  readonly later: (ms: number, act: () => void) => void;
}

/** What happens to tasks; told to the pool. */
export interface CrewEvents<Job, Result> {
  readonly onDone: (task: Task<Job>, result: Result) => void;
  readonly onFailed: (task: Task<Job>, message: string) => void;
  /** Tasks a worker held when it died or was ended. */
  readonly onLost: (tasks: readonly Task<Job>[], why: string) => void;
  /** A worker has room: the next task for it, or nothing. */
  readonly next: () => Task<Job> | undefined;
}

interface Member<Job, Result> {
  readonly worker: WorkerLike<Job, Result>;
  readonly held: Task<Job>[];
  ready: boolean;
}

export interface Crew<Job> {
  /** Workers there are, counting those that are starting. */
  readonly count: () => number;
  /** Starts workers up to a number, at most the crew's size. */
  readonly hire: (wanted: number) => void;
  /** Hands out tasks until each worker holds `depth`. */
  readonly feed: (depth: number) => void;
  /** A task given to a worker that is still starting, which then is not waited for. */
  readonly takeBack: () => Task<Job> | undefined;
  readonly warmUp: () => void;
  /** Ends the workers that still hold what they hold now, after `grace` ms. */
  readonly giveUp: (grace: number) => void;
  readonly close: () => void;
}

/** After so many workers that died before they were ready no more are started: there is something wrong with starting them. */
const mostStillborn = 2;

export function createCrew<Job, Result>(options: CrewOptions<Job, Result>, events: CrewEvents<Job, Result>): Crew<Job> {
  const { size, startWorker, later } = options;
  const members = new Set<Member<Job, Result>>();
  let stillborn = 0;

  const hear = (member: Member<Job, Result>, message: FromWorker<Result>): void => {
    if (!members.has(member)) return;
    if (message.kind === "ready") {
      member.ready = true;
      stillborn = 0;
      return;
    }
    const at = member.held.findIndex(({ number }) => number === message.task);
    const [task] = at < 0 ? [] : member.held.splice(at, 1);
    if (!task) return;
    if (message.kind === "done") events.onDone(task, message.result);
    else events.onFailed(task, message.message);
  };

  const died = (member: Member<Job, Result>, why: string): void => {
    if (!members.delete(member)) return;
    const [atWork] = member.held;
    if (!member.ready) stillborn += 1;
    else if (atWork) atWork.deaths += 1;
    events.onLost(member.held.splice(0), why);
  };

  const start = (): void => {
    try {
      const member: Member<Job, Result> = { worker: startWorker(), held: [], ready: false };
      members.add(member);
      member.worker.onMessage((message) => hear(member, message));
      member.worker.onDeath((why) => died(member, why));
    } catch {
      // The platform lets none be started: the same as one that dies at once.
      stillborn += 1;
    }
  };

  const end = (member: Member<Job, Result>): void => {
    if (!members.delete(member)) return;
    member.worker.terminate();
    events.onLost(member.held.splice(0), "ended");
  };

  return {
    count: () => members.size,
    hire: (wanted) => {
      while (members.size < Math.min(wanted, size) && stillborn < mostStillborn) start();
    },
    feed: (depth) => {
      for (let level = 1; level <= depth; level++) {
        for (const member of members) {
          if (member.held.length >= level) continue;
          const task = events.next();
          if (!task) return;
          member.held.push(task);
          member.worker.post({ kind: "do", task: task.number, job: task.job });
        }
      }
    },
    takeBack: () => [...members].find(({ ready, held }) => !ready && held.length > 0)?.held.pop(),
    warmUp: () => {
      for (const member of members) member.worker.post({ kind: "warm up" });
    },
    giveUp: (grace) => {
      const stale = [...members].map((member) => ({ member, tasks: [...member.held] }));
      later(grace, () => {
        for (const { member, tasks } of stale)
          if (members.has(member) && tasks.some((task) => member.held.includes(task))) end(member);
      });
    },
    close: () => {
      for (const member of [...members]) end(member);
    },
  };
}
