/** The questions with what answers them, all at hand, in the order of their listings. */
import { band } from "./band/run";
import { bounce } from "./bounce/run";
import { build } from "./build/run";
import type { Question } from "./common/question";
import { height } from "./height/run";
import { limits } from "./limits/run";
import { line } from "./line/run";
import { listen } from "./listen/run";
import { questionListings } from "./listings";
import { nearby } from "./nearby/run";
import { outside } from "./outside/run";
import { radials } from "./radials/run";
import { sky } from "./sky/run";
import { trim } from "./trim/run";
import { watts } from "./watts/run";
import { why } from "./why/run";

const known: Readonly<Record<string, Question>> = {
  watts,
  band,
  height,
  trim,
  line,
  sky,
  outside,
  radials,
  nearby,
  limits,
  listen,
  build,
  why,
  bounce,
};

export const questions: readonly Question[] = questionListings.map(({ id }) => known[id]!);

export const findQuestion = (id: string): Question | undefined => questions.find((q) => q.id === id);
