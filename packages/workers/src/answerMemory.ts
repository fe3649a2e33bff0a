/** Whole answers kept by all that they hang on, so that what was asked before is answered at once. */
import {
  type Answer,
  type Context,
  chosenKernels,
  createBoundedStore,
  type Parameters,
  type Question,
  type Refusal,
  type Station,
} from "@feedpath/engine";

export interface Asked {
  readonly question: Question;
  readonly station: Station;
  readonly parameters: Parameters;
  readonly context: Context;
}

export interface AnswerMemory {
  readonly get: (asked: Asked) => Answer | Refusal | undefined;
  readonly set: (asked: Asked, answer: Answer | Refusal) => void;
}

/** At most so many bytes, nearly; those longest unused go first. */
export function createAnswerMemory(mostBytes = 16e6): AnswerMemory {
  const store = createBoundedStore<{ readonly answer: Answer | Refusal; readonly bytes: number }>(
    mostBytes,
    ({ bytes }) => bytes,
  );
  return {
    get: (asked) => store.get(keyOf(asked))?.answer,
    set: (asked, answer) => {
      const key = keyOf(asked);
      store.set(key, { answer, bytes: 2 * (key.length + JSON.stringify(answer).length) });
    },
  };
}

/** The station itself, not only its file: what a file left out and what measured files hold are in no hash of its text. */
function keyOf({ question, station, parameters, context: { program, catalogue, fileHash } }: Asked): string {
  const given = Object.entries(parameters).sort(([a], [b]) => (a < b ? -1 : 1));
  return JSON.stringify([question.id, given, program, catalogue, chosenKernels().name, fileHash, station]);
}
