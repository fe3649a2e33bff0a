/** A line of another impedance with a transformer of line at each end: a quarter wave, or two short sections. */
import { lineConstants } from "../../lines/lineConstants";
import type { LineEntry } from "../../lines/lineModel";
import { swr } from "../../lines/reflection";
import { lineTwoPort } from "../../networks/lineTwoPort";
import { cascade, transformedImpedance } from "../../networks/twoPort";
import { complex } from "../../numerics/complex";
import type { LinePart } from "../../station/path";
import type { Band } from "../../station/station";
import { type BandRow, type Bench, bandRow } from "./bandRow";
import { derivedLine } from "./derivedLines";
import { newLine } from "./swapped";

export type Ends = "plain" | "quarter-wave" | "two short sections";
const endings: readonly Ends[] = ["plain", "quarter-wave", "two short sections"];

/** Lines of the rated impedance and of the other one; their impedances in ohm. */
export interface EndsInput {
  readonly rated: LineEntry;
  readonly ratedImpedance: number;
  readonly other: LineEntry;
  readonly otherImpedance: number;
  /** Hz the sections are cut for. */
  readonly frequency: number;
  /** SWR at the set up to which a band counts as covered. */
  readonly swrBelow: number;
}

export interface MatchedEnds {
  readonly ends: Ends;
  /** The sections at one end, from the transmitter: name, impedance (ohm), length (m). */
  readonly sections: readonly { readonly name: string; readonly impedance: number; readonly length: number }[];
  /** One for each band. */
  readonly rows: readonly (BandRow | null)[];
  /** Into the rated load in place of the antenna: Hz between which the SWR at the set stays below the limit, looked for up to an octave away; null: nowhere. */
  readonly width: { readonly from: number; readonly to: number } | null;
}

/**
 * Length in radians of each of two sections, of impedances Z1 and Z2 and in the order Z2, Z1 seen from Z1, that join lines of Z1
 * and Z2: tan^2 = 1/(B + 1 + 1/B), B = Z2/Z1. Near 30 degrees, a twelfth of a wave, for ratios near 1. Exact without loss.
 * Source: derivation, the two-section transformer of equal lengths; from memory in the literature of the 1960s and 70s.
 */
export const shortSection = (ratio: number): number => Math.atan(Math.sqrt(1 / (ratio + 1 + 1 / ratio)));

/** Part names are those of the replaced line with what they are. */
function sectionsOf(ends: Ends, input: EndsInput): readonly { readonly line: LineEntry; readonly length: number }[] {
  const { rated, other, ratedImpedance, otherImpedance, frequency } = input;
  if (ends === "plain") return [];
  if (ends === "two short sections") {
    const angle = shortSection(otherImpedance / ratedImpedance);
    return [other, rated].map((line) => ({ line, length: angle / lineConstants(line.model, frequency).gamma.im }));
  }
  const impedance = Math.sqrt(ratedImpedance * otherImpedance);
  const line = derivedLine(rated, {
    frequency,
    impedance,
    side: "coaxial",
    designation: `${impedance.toFixed(0)} Ω line`,
  });
  return [{ line, length: Math.PI / 2 / lineConstants(line.model, frequency).gamma.im }];
}

/** The line with its ends. The run keeps its length: the sections lengthen it. */
export function studyEnds(bench: Bench, input: EndsInput, bands: readonly Band[]): MatchedEnds[] {
  const { part } = bench.replaced;
  const main = input.other === part.line ? part : newLine(part, input.other);
  return endings.map((ends) => {
    const sections = sectionsOf(ends, input);
    const named = (at: string) =>
      sections.map(
        ({ line, length }, i): LinePart => ({
          ...newLine(part, line, length),
          name: `${part.name}, ${at} section ${i + 1}`,
          route: [],
        }),
      );
    const parts = [...named("first"), main, ...named("last").reverse()];
    return {
      ends,
      sections: sections.map(({ line, length }) => ({
        name: line.designation,
        impedance: lineConstants(line.model, input.frequency).z0.re,
        length,
      })),
      rows: bands.map((band) => bandRow(bench, band, parts)),
      width: widthOf(parts, input),
    };
  });
}

/** SWR up to which the width of a transformer is told: the asker's limit, 1.5 at most. */
export const widthSwr = (swrBelow: number): number => Math.min(swrBelow, 1.5);

const stepsOfWidth = 600;

/** Outwards from the frequency they are cut for, at most an octave either way. */
function widthOf(parts: readonly LinePart[], { frequency, swrBelow, ratedImpedance }: EndsInput): MatchedEnds["width"] {
  const limit = widthSwr(swrBelow);
  const swrAt = (f: number): number => {
    const chain = cascade(...parts.map((p) => lineTwoPort(lineConstants(p.line.model, f), p.length.value)));
    return swr(transformedImpedance(chain, complex(ratedImpedance)), ratedImpedance);
  };
  if (swrAt(frequency) > limit) return null;
  const edge = (octaves: number): number => {
    for (let i = 1; i <= stepsOfWidth; i++) {
      const f = frequency * 2 ** ((octaves * i) / stepsOfWidth);
      if (swrAt(f) > limit) return f;
    }
    return frequency * 2 ** octaves;
  };
  return { from: edge(-1), to: edge(1) };
}
