/** What a report of the worker does to the bench's state. Pure. */
import type { Report } from "../worker/client";
import type { BenchState } from "./benchState";

const rest = { running: false, slow: false, progress: null } as const;

export function applyReport(state: BenchState, report: Report): BenchState {
  switch (report.kind) {
    case "questions":
      return { ...state, questions: report.questions, question: knownQuestion(state.question, report.questions) };
    case "read":
      return report.outline
        ? { ...state, problems: report.problems, outline: report.outline, outlineText: state.askedText }
        : { ...state, ...rest, problems: report.problems };
    case "wrongParameters":
      return { ...state, ...rest, parameterProblems: report.problems };
    case "progress":
      return { ...state, progress: report.progress };
    case "answered":
      return {
        ...state,
        ...rest,
        stopped: false,
        defect: null,
        shown: { kind: "answer", answer: report.answer, text: state.outlineText, depth: null },
      };
    case "depth":
      return state.shown?.kind === "answer"
        ? { ...state, missing: false, shown: { ...state.shown, depth: report.depth } }
        : state;
    case "refused":
      return {
        ...state,
        ...rest,
        stopped: false,
        defect: null,
        shown: { kind: "refusal", refusal: report.refusal, text: state.outlineText },
      };
    case "stopped":
      return { ...state, ...rest, stopped: true };
    case "missing":
      return { ...state, ...rest, missing: true };
    case "defect":
      return { ...state, ...rest, defect: report.message };
    case "broke":
      return { ...state, ...rest, defect: report.message || "The computation ended without saying why." };
    case "lines":
      return { ...state, missing: false, lines: report.lines };
    case "sheet":
      return state;
  }
}

/** The question, or the first there is; unchanged while none is known. */
export const knownQuestion = (question: string, questions: BenchState["questions"]): string =>
  questions.length === 0 || questions.some(({ id }) => id === question) ? question : (questions[0]?.id ?? question);

/** True while the picture belongs to an older text, because the present one has a problem. */
export const isStale = (state: BenchState): boolean => state.shown !== null && state.problems.length > 0;

/** Id of the question that what is shown answers, or "". */
export const shownQuestion = (state: BenchState): string =>
  state.shown === null
    ? ""
    : state.shown.kind === "answer"
      ? state.shown.answer.question
      : state.shown.refusal.question;
