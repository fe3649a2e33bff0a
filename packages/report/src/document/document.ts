/** A document as plain data: what stands on a sheet and in which order, without saying how it looks. */
import type { Verdict } from "@feedpath/engine";
import type { Figure } from "@feedpath/figures";

/** A piece of a sentence. `step`: number of the step of the working that explains this number. */
export interface Inline {
  readonly kind: "text" | "number" | "strong" | "idea" | "quiet";
  readonly text: string;
  readonly step?: number;
}

/** Formulas in the LaTeX subset of formula/symbols.ts: as a formula, or with numbers put in; or a result as text. */
export type StepPiece =
  | { readonly kind: "formula" | "put"; readonly latex: string }
  | { readonly kind: "result"; readonly text: string };

/** One step of the working: lines of formulas that may break between pieces, never inside one. */
export interface Step {
  readonly says: readonly Inline[];
  readonly lines: readonly (readonly StepPiece[])[];
  readonly source: string;
}

export interface Fact {
  readonly name: string;
  readonly value: string;
  readonly from: string;
}

export interface DocumentTable {
  readonly caption: string;
  readonly columns: readonly { readonly name: string; readonly unit: string; readonly numeric: boolean }[];
  readonly rows: readonly (readonly string[])[];
}

export type Block =
  | { readonly kind: "section"; readonly title: string; readonly blocks: readonly Block[] }
  | { readonly kind: "columns"; readonly left: readonly Block[]; readonly right: readonly Block[] }
  | { readonly kind: "paragraph"; readonly inlines: readonly Inline[] }
  | { readonly kind: "list"; readonly items: readonly (readonly Inline[])[] }
  | { readonly kind: "steps"; readonly steps: readonly Step[] }
  | { readonly kind: "facts"; readonly facts: readonly Fact[] }
  | { readonly kind: "table"; readonly table: DocumentTable }
  /** A table of numbers that opens on demand and is left out in print. */
  | { readonly kind: "folded"; readonly summary: string; readonly table: DocumentTable }
  /** `narrow` is the same figure drawn for a phone's width, or null. */
  | { readonly kind: "figure"; readonly figure: Figure; readonly narrow: Figure | null; readonly titled: boolean }
  | { readonly kind: "file"; readonly text: string };

export interface Document {
  readonly language: "en";
  readonly title: string;
  /** What the page is; left out: an answer sheet. */
  readonly kind?: string;
  /** Running line at the top: station and frequency. */
  readonly running: string;
  readonly asked: string;
  readonly headline: readonly Inline[];
  readonly verdict: { readonly word: Verdict | null; readonly says: readonly Inline[] };
  readonly next: string | null;
  readonly blocks: readonly Block[];
  /** Last line: what worked it out, and how far the check of the powers closes. */
  readonly provenance: { readonly worked: string; readonly check: string };
}
