/** Two equal coaxial lines side by side as one balanced line, in the place of the present one. */
import { lineConstants, matchedLoss } from "../../lines/lineConstants";
import { lineSide } from "../../lines/lineFacts";
import type { Band } from "../../station/station";
import { type Bench, bandRow } from "./bandRow";
import type { Candidate } from "./candidates";
import { sideBySide } from "./derivedLines";
import { converted, newLine } from "./swapped";

export interface Twin {
  readonly name: string;
  /** Ohm between the two inner conductors. */
  readonly impedance: number;
  /** dB of the run, closed with its own impedance and at the real load, transformers at both ends included where there are any. */
  readonly matched: number;
  readonly loss: number;
  /** W into the antenna. */
  readonly watts: number;
  readonly swrSeen: number;
}

/** Every coaxial candidate of the transmitter's impedance or of 75 ohm doubled, in one band. */
export function studyTwins(bench: Bench, candidates: readonly Candidate[], band: Band): Twin[] {
  const frequency = band.frequency.value;
  const { part, side } = bench.replaced;
  const rated = bench.station.transmitter.designedFor.value;
  return candidates.flatMap(({ entry, impedance }): Twin[] => {
    if (lineSide(entry.model) !== "coaxial") return [];
    const twin = sideBySide(entry, impedance, frequency);
    const line = newLine(part, twin);
    const row = bandRow(bench, band, side === "coaxial" ? converted(line, rated, 2 * impedance) : [line]);
    if (!row) return [];
    return [
      {
        name: entry.designation,
        impedance: 2 * impedance,
        matched: matchedLoss(lineConstants(twin.model, frequency), part.length.value),
        loss: row.loss,
        watts: row.watts,
        swrSeen: row.swrSeen,
      },
    ];
  });
}
