/** Every candidate in every band of the station. */
import { requestAt } from "../../chain/solveRequest";
import { workPoint } from "../../chain/workPoint";
import type { Part } from "../../station/path";
import type { Band } from "../../station/station";
import { greatestAlong } from "../../stress/standingWave";
import type { Progress } from "../common/question";
import { stationNumbers } from "../common/stationNumbers";
import { atEnd } from "./atEnd";
import { type BandRow, type Bench, bandRow } from "./bandRow";
import type { Candidate } from "./candidates";
import { type Around, aroundOf, receivePenalty } from "./surroundings";
import { converted, newLine } from "./swapped";

export interface StudiedRow extends BandRow {
  /** W into the antenna, least and most, with the line's loss (a pair: its spacing) at the ends of what is known of it. */
  readonly low: number;
  readonly high: number;
  /** V rms at peak envelope power, the highest along the line. */
  readonly highestVoltage: number;
  /** dB of signal to noise that the path takes on receiving; null where the noise is not known. */
  readonly receive: number | null;
}

export interface Studied {
  readonly candidate: Candidate;
  /** One for each of the study's bands. */
  readonly rows: readonly StudiedRow[];
}

export interface Study {
  /** Bands in which the path uses the line. */
  readonly bands: readonly Band[];
  readonly around: Around;
  /** dB/m that the present line takes over a new one. */
  readonly excess: number;
  readonly present: Studied;
  /** All candidates that could be worked out in all bands, the present line among them. */
  readonly all: readonly Studied[];
  readonly leftOut: readonly string[];
}

/** What stands in the path with a candidate: the present line as it is, others new. */
export function partsOf(
  { replaced, station }: Bench,
  { entry, present, standing, impedance }: Candidate,
): readonly Part[] {
  if (present) return [replaced.part];
  const line = newLine(replaced.part, entry);
  const transformed = standing === "converted" && replaced.side === "coaxial";
  return transformed ? converted(line, station.transmitter.designedFor.value, impedance) : [line];
}

/** `antennaLoss`: power into the antenna over radiated power. */
interface StudyBand {
  readonly band: Band;
  readonly antennaLoss: number;
}

/** The same for every line: the antenna is kept. */
function antennaLossOf({ station, solver }: Bench, band: Band): number {
  const point = workPoint(station, band, band.frequency.value, solver, { tuner: "matched" });
  if ("refused" in point) return 1;
  return point.powerIntoAntenna / stationNumbers(point).numbers.radiatedPower!;
}

/** Null where the present line is used in no band that can be worked out. */
export function* studyLines(bench: Bench, candidates: readonly Candidate[]): Generator<Progress, Study | null> {
  const { station } = bench;
  const ahead = station.bands.map((band) => requestAt(station, band.frequency.value));
  yield { done: 0, of: station.bands.length, what: "bands", ahead };
  const around = aroundOf(station, bench.replaced.part);
  const used: StudyBand[] = [];
  for (const [i, band] of station.bands.entries()) {
    yield { done: i, of: station.bands.length, what: "bands" };
    if (bandRow(bench, band, [bench.replaced.part])) used.push({ band, antennaLoss: antennaLossOf(bench, band) });
  }
  const all: Studied[] = [];
  const leftOut: string[] = [];
  for (const [i, candidate] of candidates.entries()) {
    yield { done: i, of: candidates.length, what: "lines" };
    const studied = studyOne(bench, used, around, candidate);
    if (studied) all.push(studied);
    else leftOut.push(candidate.entry.designation);
  }
  const present = all.find((s) => s.candidate.present);
  if (!present || used.length === 0) return null;
  return {
    bands: used.map((one) => one.band),
    around,
    excess: bench.replaced.part.excessLoss.value,
    present,
    all,
    leftOut,
  };
}

function studyOne(bench: Bench, bands: readonly StudyBand[], around: Around, candidate: Candidate): Studied | null {
  const rows = bands.map((band) => studiedRow(bench, band, partsOf(bench, candidate), around));
  return rows.every((row) => row !== null) ? { candidate, rows } : null;
}

function studiedRow(
  bench: Bench,
  { band, antennaLoss }: StudyBand,
  parts: readonly Part[],
  around: Around,
): StudiedRow | null {
  try {
    const row = bandRow(bench, band, parts);
    const ends = (["low", "high"] as const).flatMap(
      (end) =>
        bandRow(
          bench,
          band,
          parts.map((part) => atEnd(part, end)),
        )?.watts ?? [],
    );
    return (
      row && {
        ...row,
        low: Math.min(row.watts, ...ends),
        high: Math.max(row.watts, ...ends),
        highestVoltage: Math.sqrt(greatestAlong(row.wave, (squares) => squares.voltage).value),
        receive: receivePenalty(around, band.frequency.value, antennaLoss, row.delivered / row.watts),
      }
    );
  } catch (error) {
    // A frequency that a line's constants do not reach.
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** Index of the band in which a line brings the smallest share of the rated power to the antenna. */
export const worstOf = ({ rows }: Studied): number =>
  rows.reduce((worst, row, i) => (row.watts < rows[worst]!.watts ? i : worst), 0);

export const worstRow = (studied: Studied): StudiedRow => studied.rows[worstOf(studied)]!;
