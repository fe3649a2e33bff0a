/** The worker that answers, and the one place of the page that runs a question: reads the file, runs it, reports on the way. */
import {
  type Answer,
  chooseKernels,
  loadableQuestions,
  loadQuestion,
  type Progress,
  questionListings,
  type Refusal,
} from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { visibleLine } from "@feedpath/report";
import { catalogueVersion, lineCatalogue, readStation } from "@feedpath/station-file";
import { type Asked, createAnswerMemory, solveAhead } from "@feedpath/workers";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { drive } from "./drive";
import type { FromWorker, ToWorker } from "./messages";
import { outlineEntries } from "./outline";
import { readParameters } from "./readParameters";
import { openSolvers } from "./solvers";

type Ask = Extract<ToWorker, { kind: "ask" }>;

const say = (message: FromWorker): void => self.postMessage(message);

/** A part of the page that could not be loaded: nothing the program did wrong. */
class NotLoaded extends Error {}

/** What is needed after the answer only; a connection may be gone by then. */
const loadHandOver = () =>
  import("./handOver").catch((why: unknown) => {
    throw new NotLoaded(String(why));
  });

/** A question is loaded when it is asked, and all of them after the first answer: a connection may be gone by then. */
const loadAsked = (id: string) =>
  loadQuestion(id).catch((why: unknown) => {
    throw new NotLoaded(String(why));
  });

/** Number of the run that goes on; another number in it ends the one before. */
let current = 0;

/** A turn of the event loop, so that waiting messages are delivered. */
const breathe = (): Promise<void> => {
  const { port1, port2 } = new MessageChannel();
  return new Promise((done) => {
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(null);
  });
};

async function ask({ run, text, fileName, measured, question: id, parameters: typed }: Ask): Promise<void> {
  const read = readStation(text, {
    fileName,
    readFile: (name) => (Object.hasOwn(measured, name) ? (measured[name] ?? null) : null),
  });
  if (read.station === null || read.problems.length > 0)
    return say({ kind: "read", run, problems: read.problems, outline: null });
  const { station } = read;
  const bands = station.bands.map(({ name }) => name);
  const outline = { title: visibleLine(station.title), bands, entries: outlineEntries(text) };
  say({ kind: "read", run, problems: [], outline });

  const question = await loadAsked(id);
  if (!question) throw new Error(`There is no question "${id}": expected one of ${loadableQuestions.join(", ")}.`);
  if (run !== current) return say({ kind: "stopped", run });
  const asked = readParameters(question, bands, typed);
  if (asked.problems.length > 0) return say({ kind: "wrongParameters", run, problems: asked.problems });

  const context = {
    program: __FEEDPATH_VERSION__,
    catalogue: catalogueVersion,
    fileHash: bytesToHex(sha256(utf8ToBytes(read.normalised))),
    lines: lineCatalogue,
    kept: solvers.memory,
  };
  const result = await answerTo({ question, station, parameters: asked.parameters, context }, run);
  if (result === "stopped") return say({ kind: "stopped", run });
  // Asked for after the first answer, which must not wait for it, and while the server that gave the page is there.
  void loadHandOver().catch(() => undefined);
  for (const each of loadableQuestions) void loadAsked(each).catch(() => undefined);
  if ("refused" in result) return say({ kind: "refused", run, refusal: result });
  say({ kind: "answered", run, answer: result });
  warmUpOnce();
  const { makeDepth } = await loadHandOver();
  say({ kind: "depth", run, depth: makeDepth(result) });
}

async function answerTo(asked: Asked, run: number): Promise<Answer | Refusal | "stopped"> {
  const known = answers.get(asked);
  if (known) return known;
  const { question, station, parameters, context } = asked;
  // What is announced stays here: the page has no use for it.
  const report = ({ done, of, what }: Progress): void => say({ kind: "progress", run, progress: { done, of, what } });
  const outcome = await drive(question.run(station, parameters, context), {
    now: () => performance.now(),
    breathe,
    stopped: () => current !== run,
    report,
    solveAhead: (progress) => solveAhead(progress, solvers, report),
  });
  if (outcome === "stopped") return outcome;
  answers.set(asked, outcome.result);
  return outcome.result;
}

chooseKernels(fastKernels);
const solvers = openSolvers(breathe);
const answers = createAnswerMemory();

let warm = false;

/** After the first answer, which must not wait for it. */
function warmUpOnce(): void {
  if (!warm) solvers.pool.warmUp();
  warm = true;
}

/** The run that goes on from here; what the one before still had solved ahead is given up. */
function makeCurrent(run: number): void {
  current = run;
  solvers.pool.cancel();
}

say({ kind: "questions", questions: questionListings });

self.onmessage = async ({ data }: MessageEvent<ToWorker>) => {
  try {
    if (data.kind === "stop") {
      if (data.run === current) makeCurrent(-data.run);
    } else if (data.kind === "ask") {
      makeCurrent(data.run);
      await ask(data);
    } else if (data.kind === "sheet") {
      const { makeSheet } = await loadHandOver();
      say({ kind: "sheet", run: data.run, html: makeSheet(data.answer, data.text) });
    } else {
      const { answerLines } = await loadHandOver();
      say(answerLines(data));
    }
  } catch (defect) {
    if (defect instanceof NotLoaded) return say({ kind: "missing", run: data.run });
    say({ kind: "defect", run: data.run, message: defect instanceof Error ? defect.message : String(defect) });
  }
};
