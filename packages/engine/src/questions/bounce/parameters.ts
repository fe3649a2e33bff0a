/** What `bounce` is asked with. */
import type { ParameterDefinition, Parameters } from "../common/question";

export type Signal = "carrier" | "step" | "pulse";
export type SourceWord = "matched" | "low" | "high";
export type LoadWord = "open" | "shorted";

const signals: readonly Signal[] = ["carrier", "step", "pulse"];
const sourceWords: readonly SourceWord[] = ["matched", "low", "high"];
const loadWords: readonly LoadWord[] = ["open", "shorted"];

/** A source called low or high has the line's impedance over or times this: three quarters of the voltage of a wave that comes home is sent out again. */
export const lowOver = 7;

const ohms = { dimension: "impedance" as const, least: 0.01, most: 1e6 };
const reactance = { dimension: "impedance" as const, words: [], least: -1e5, most: 1e5, otherwise: "none" };

export const bounceParameters: readonly ParameterDefinition[] = [
  {
    name: "signal",
    title: "what is switched on",
    dimension: "word",
    words: signals,
    least: 0,
    most: 0,
    otherwise: "carrier, at the frequency of the band",
  },
  {
    name: "line",
    title: "which line, by its name in the path",
    dimension: "name",
    words: [],
    least: 0,
    most: 0,
    otherwise: "the longest of the path",
  },
  {
    name: "lineLength",
    title: "length tried for it",
    dimension: "length",
    words: [],
    least: 0.01,
    most: 1e5,
    slider: { from: 1, to: 60, scale: "linear" },
    otherwise: "that of the file",
  },
  {
    name: "load",
    title: "what is tried at the end of the line",
    ...ohms,
    words: loadWords,
    otherwise: "what the rest of the path and the antenna show",
  },
  { name: "loadReactance", title: "reactance of the load tried, at the frequency", ...reactance },
  {
    name: "source",
    title: "impedance that feeds the line",
    ...ohms,
    words: sourceWords,
    otherwise:
      "low, a seventh of the line's own, for a carrier; matched for a step or a pulse. No transmitter's is known",
  },
  { name: "sourceReactance", title: "reactance of the source, at the frequency", ...reactance },
];

export interface BounceAsked {
  readonly signal: Signal;
  readonly line: string | null;
  /** m; null: as in the file. */
  readonly length: number | null;
  readonly load: LoadWord | number | null;
  readonly loadReactance: number;
  readonly source: SourceWord | number;
  readonly sourceReactance: number;
  /** True where the asker said nothing of the source. */
  readonly sourceAssumed: boolean;
}

const oneOf = <T extends string>(words: readonly T[], value: unknown): T | null =>
  words.find((w) => w === value) ?? null;
const numberOr = (value: unknown, otherwise: number): number => (typeof value === "number" ? value : otherwise);

export function bounceAsked(parameters: Parameters): BounceAsked {
  const { load, source, line, lineLength } = parameters;
  const signal = oneOf(signals, parameters.signal) ?? "carrier";
  return {
    signal,
    line: typeof line === "string" && line.trim() !== "" ? line.trim() : null,
    length: typeof lineLength === "number" ? lineLength : null,
    load: typeof load === "number" ? load : oneOf(loadWords, load),
    loadReactance: numberOr(parameters.loadReactance, 0),
    source:
      typeof source === "number" ? source : (oneOf(sourceWords, source) ?? (signal === "carrier" ? "low" : "matched")),
    sourceReactance: numberOr(parameters.sourceReactance, 0),
    sourceAssumed: source === undefined,
  };
}
