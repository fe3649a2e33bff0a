/** What the bench knows at one moment. Plain data; `bench.ts` changes it, the ui shows it. */
import type { Answer, Problem, Progress, Refusal } from "@feedpath/engine";
import type {
  Depth,
  LinesListing,
  ParameterProblem,
  QuestionListing,
  StationOutline,
  TypedParameters,
} from "../worker/messages";
import type { TextHistory } from "./history";

/** The last result, with the text and the question it belongs to. */
export type Shown =
  | {
      readonly kind: "answer";
      readonly answer: Answer;
      readonly text: string;
      /** Made soon after the answer; null until then. */
      readonly depth: Depth | null;
    }
  | { readonly kind: "refusal"; readonly refusal: Refusal; readonly text: string };

export interface BenchState {
  readonly history: TextHistory;
  readonly fileName: string;
  /** True until the first change of a first visit: the page says that the station is an example. */
  readonly firstVisit: boolean;
  readonly questions: readonly QuestionListing[];
  readonly question: string;
  /** Question asked before the current one: its group stays open. */
  readonly questionBefore: string;
  readonly parameters: Readonly<Record<string, TypedParameters>>;
  readonly parameterProblems: readonly ParameterProblem[];
  readonly problems: readonly Problem[];
  /** Outline of `outlineText`, the last text that could be read. */
  readonly outline: StationOutline | null;
  readonly outlineText: string;
  /** Text of the run that goes on, or went on last. */
  readonly askedText: string;
  readonly shown: Shown | null;
  readonly running: boolean;
  /** A run that takes long enough to say so. */
  readonly slow: boolean;
  readonly progress: Progress | null;
  /** Feed lines as they were looked at last; null before they are. */
  readonly lines: LinesListing | null;
  /** The person stopped the last run. */
  readonly stopped: boolean;
  readonly defect: string | null;
  /** A part of the page could not be loaded; what is shown lacks its depth. */
  readonly missing: boolean;
  readonly storage: { readonly refused: boolean; readonly reason: string };
  /** Lines changed by the page's own hand a moment ago: they are marked. */
  readonly marked: { readonly from: number; readonly to: number } | null;
}

export const beginState = (history: TextHistory, fileName: string, question: string): BenchState => ({
  history,
  fileName,
  firstVisit: false,
  questions: [],
  question,
  questionBefore: "",
  parameters: {},
  parameterProblems: [],
  problems: [],
  outline: null,
  outlineText: "",
  askedText: "",
  shown: null,
  running: false,
  slow: false,
  progress: null,
  lines: null,
  stopped: false,
  defect: null,
  missing: false,
  storage: { refused: false, reason: "" },
  marked: null,
});
