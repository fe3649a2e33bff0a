/** What every question is: an id, words, parameters, and a generator that yields progress and returns an answer. */
import type { Answer, Refusal } from "../../answer/answer";
import type { SolutionMemory } from "../../chain/solutionMemory";
import type { SolveRequest } from "../../chain/solveRequest";
import type { LineEntry } from "../../lines/lineModel";
import type { Station } from "../../station/station";

export interface Progress {
  readonly done: number;
  readonly of: number;
  /** "heights", "frequencies": what is counted. */
  readonly what: string;
  /**
   * Solves that will be needed soon. A host that can do several at once puts them into the memory of the context before it
   * resumes the question, which then finds them there; any other host ignores them, and the answer is the same.
   */
  readonly ahead?: readonly SolveRequest[];
}

/** A parameter as asked on the command line (`--swr-below 2`) and on the page. Values arrive in SI units. */
export interface ParameterDefinition {
  /** camelCase: `swrBelow`; the command line writes it `--swr-below`. */
  readonly name: string;
  readonly title: string;
  readonly dimension:
    | "none"
    | "length"
    | "frequency"
    | "angle"
    | "impedance"
    | "temperature"
    | "time"
    | "power"
    | "decibels"
    | "word"
    /** Any text: the name of a part, a line's designation. */
    | "name"
    | "lengthSpan"
    | "frequencySpan";
  /** For `word`: the words allowed. For a quantity: words that may stand in its place. */
  readonly words: readonly string[];
  /** Valid range in SI units, inclusive; spans apply it to both ends. */
  readonly least: number;
  readonly most: number;
  /** Shown as a slider too, between these SI values, in equal steps of the value or of its logarithm. */
  readonly slider?: { readonly from: number; readonly to: number; readonly scale: "linear" | "log" };
  /** Where the value comes from when it is not given, for people. */
  readonly otherwise: string;
}

export type ParameterValue = number | string | { readonly from: number; readonly to: number };
export type Parameters = Readonly<Record<string, ParameterValue>>;

/** What the host brings along. */
export interface Context {
  /** Version of the program, "0.1.0". */
  readonly program: string;
  readonly catalogue: string;
  /** SHA-256 of the normalised station file, hexadecimal. */
  readonly fileHash: string;
  /** Lines of the catalogue the host reads files with; none when left out. */
  readonly lines?: readonly LineEntry[];
  /** Where solutions are kept and looked for; without it the question keeps its own. */
  readonly kept?: SolutionMemory;
}

/** What a question is called, asked as and asked with; enough for lists and menus. */
export interface QuestionListing {
  readonly id: string;
  readonly asked: string;
  /** What people say that leads here: heading of the group on the page. */
  readonly group: string;
  readonly about: string;
  readonly parameters: readonly ParameterDefinition[];
}

export interface Question extends QuestionListing {
  /** `band` (a band's name) is a parameter of every question and always allowed. */
  readonly run: (station: Station, parameters: Parameters, context: Context) => Generator<Progress, Answer | Refusal>;
}
