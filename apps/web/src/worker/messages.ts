/** What page and worker say to each other. Plain data only; `run` numbers a computation, and a report of an older run is dropped. */
import type { Answer, Problem, Progress, QuestionListing, Refusal } from "@feedpath/engine";
import type { LossStudy } from "@feedpath/figures";
import type { Document, LineComparison, LineUnits, Step } from "@feedpath/report";

export type { QuestionListing };

/** A value of the file with its place in the text, as offsets. */
export interface OutlineValue {
  readonly key: string;
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** One entry of the file in its order: the transmitter, each part of the path, the antenna, the ground. */
export interface OutlineEntry {
  readonly label: string;
  /** What the answer and its picture call it. */
  readonly names: readonly string[];
  readonly line: number;
  readonly values: readonly OutlineValue[];
}

export interface StationOutline {
  readonly title: string;
  /** Names of the bands of the file; a single band is named "". */
  readonly bands: readonly string[];
  readonly entries: readonly OutlineEntry[];
}

/** What stands below the picture, in the sheet's own words: blocks of the document, its steps, formulas as MathML. */
export interface Depth {
  readonly blocks: Document["blocks"];
  readonly steps: readonly Step[];
  readonly provenance: Document["provenance"];
  /** MathML by formula, for every formula of the steps. */
  readonly formulas: Readonly<Record<string, string>>;
}

/** A parameter as typed that could not be used. */
export interface ParameterProblem {
  readonly name: string;
  readonly message: string;
}

/** Parameters as typed, by name; an empty text is the same as none. */
export type TypedParameters = Readonly<Record<string, string>>;

/** What of the feed lines is looked at, as typed; an empty text: as the station has it. */
export interface LinesAsked {
  readonly at: string;
  readonly length: string;
  /** Designations of the lines to draw; null for the station's own line. */
  readonly chosen: readonly string[] | null;
  readonly units: LineUnits;
}

/** Every line that can be looked at, the station's own first, and a study of those chosen. */
export interface LinesListing {
  readonly comparison: LineComparison;
  readonly chosen: readonly string[];
  /** Null while none is chosen. */
  readonly study: LossStudy | null;
  readonly problems: readonly ParameterProblem[];
}

interface StationText {
  readonly text: string;
  readonly fileName: string;
  /** Texts of the measured files beside the station's file, by name. */
  readonly measured: Readonly<Record<string, string>>;
}

export type ToWorker =
  | {
      readonly kind: "ask";
      readonly run: number;
      readonly text: string;
      readonly fileName: string;
      /** Texts of the measured files beside the station's file, by name. */
      readonly measured: Readonly<Record<string, string>>;
      readonly question: string;
      readonly parameters: TypedParameters;
    }
  | { readonly kind: "stop"; readonly run: number }
  | (StationText & {
      /** A listing, or a page of the lines chosen (of all where none is), which comes as a sheet. */
      readonly kind: "lines" | "linesPage";
      readonly run: number;
      readonly lines: LinesAsked;
    })
  | { readonly kind: "sheet"; readonly run: number; readonly answer: Answer; readonly text: string };

export type FromWorker =
  | { readonly kind: "questions"; readonly questions: readonly QuestionListing[] }
  | {
      readonly kind: "read";
      readonly run: number;
      readonly problems: readonly Problem[];
      readonly outline: StationOutline | null;
    }
  | { readonly kind: "wrongParameters"; readonly run: number; readonly problems: readonly ParameterProblem[] }
  | { readonly kind: "progress"; readonly run: number; readonly progress: Progress }
  | { readonly kind: "answered"; readonly run: number; readonly answer: Answer }
  | { readonly kind: "depth"; readonly run: number; readonly depth: Depth }
  | { readonly kind: "refused"; readonly run: number; readonly refusal: Refusal }
  | { readonly kind: "stopped"; readonly run: number }
  | { readonly kind: "sheet"; readonly run: number; readonly html: string }
  | { readonly kind: "lines"; readonly run: number; readonly lines: LinesListing }
  /** A part of the page that is loaded when first needed did not come: no server, and not kept yet. */
  | { readonly kind: "missing"; readonly run: number }
  | { readonly kind: "defect"; readonly run: number; readonly message: string };
