/** The questions this version answers, in the order in which they are listed everywhere. */
import { band } from "./band/run";
import { bounce } from "./bounce/run";
import { build } from "./build/run";
import type { Question } from "./common/question";
import { height } from "./height/run";
import { limits } from "./limits/run";
import { line } from "./line/run";
import { listen } from "./listen/run";
import { nearby } from "./nearby/run";
import { outside } from "./outside/run";
import { radials } from "./radials/run";
import { sky } from "./sky/run";
import { trim } from "./trim/run";
import { watts } from "./watts/run";
import { why } from "./why/run";

export const questions: readonly Question[] = [
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
];

export const findQuestion = (id: string): Question | undefined => questions.find((q) => q.id === id);
