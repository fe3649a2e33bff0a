/** A question with what answers it, loaded when it is asked: a page need not carry all of them before its first answer. */
import type { Question } from "./common/question";
import { watts } from "./watts/run";

const loaders: Readonly<Record<string, () => Promise<Question>>> = {
  // At hand: a page opens with it.
  watts: async () => watts,
  band: async () => (await import("./band/run")).band,
  height: async () => (await import("./height/run")).height,
  trim: async () => (await import("./trim/run")).trim,
  line: async () => (await import("./line/run")).line,
  sky: async () => (await import("./sky/run")).sky,
  outside: async () => (await import("./outside/run")).outside,
  radials: async () => (await import("./radials/run")).radials,
  nearby: async () => (await import("./nearby/run")).nearby,
  limits: async () => (await import("./limits/run")).limits,
  listen: async () => (await import("./listen/run")).listen,
  build: async () => (await import("./build/run")).build,
  why: async () => (await import("./why/run")).why,
  bounce: async () => (await import("./bounce/run")).bounce,
};

/** Ids that can be loaded: those of the registry (tested). */
export const loadableQuestions: readonly string[] = Object.keys(loaders);

/** The question of that id; undefined where there is none. Rejects where its code cannot be loaded. */
export const loadQuestion = async (id: string): Promise<Question | undefined> => loaders[id]?.();
