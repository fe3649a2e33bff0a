/** Readings of the file held against the prediction at their joint. */
import type { ReadingComparison } from "../../answer/answer";
import type { AntennaSolver } from "../../chain/antennaSolver";
import { resolveStation } from "../../chain/resolve";
import { requestAt } from "../../chain/solveRequest";
import { workPoint } from "../../chain/workPoint";
import { meterMayShow, reflectionOfSwr, swr, swrOfReflection } from "../../lines/reflection";
import { isTunerAtWork } from "../../networks/partTwoPort";
import type { Band, Reading, Station } from "../../station/station";
import { readingSentence } from "../../words/readings";
import { moveInputs, movesOf } from "./bounds";
import type { Progress } from "./question";

export interface ComparedReadings {
  readonly readings: readonly ReadingComparison[];
  readonly notComputed: readonly string[];
}

/** SWR readings whose frequency lies in the band asked about; sweeps in files are told as not computed yet. */
export function* compareReadings(
  station: Station,
  band: Band,
  solver: AntennaSolver,
): Generator<Progress, ComparedReadings> {
  const readings: ReadingComparison[] = [];
  const notComputed: string[] = [];
  for (const reading of station.readings) {
    if (reading.file !== null)
      notComputed.push(`Not computed yet: the sweep in ${reading.file} against the prediction.`);
    if (reading.swr === null || reading.frequency === null) continue;
    const frequency = reading.frequency.value;
    if (
      frequency < Math.min(band.sweep.from, band.frequency.value) ||
      frequency > Math.max(band.sweep.to, band.frequency.value)
    )
      continue;
    const against = incomparable(station, band, reading);
    const compared = against === null ? yield* compareOne(station, band, solver, reading, frequency) : null;
    if (compared) readings.push(compared);
    else
      notComputed.push(
        `The reading at "${reading.at}" could not be held against a prediction: ${against ?? "that joint is not in use"}.`,
      );
  }
  return { readings, notComputed };
}

/** Why a reading tells nothing about the station as it is predicted; null where it does. */
function incomparable(station: Station, band: Band, { at, farEnd, frequency }: Reading): string | null {
  if (farEnd !== "antenna") return `it was taken with the far end ${farEnd}`;
  const { joints, edges } = resolveStation(station, band, frequency?.value ?? band.frequency.value);
  const tuner = edges.find((e) => e.part !== null && isTunerAtWork(e.part) && e.inUse);
  const meter = edges.find((e) => e.kind === "meter" && e.name === at);
  const joint = meter ? meter.from : joints.findIndex((j) => j.name === at);
  // Joints are numbered in path order: one up to where the tuner starts sees what the tuner makes of the rest.
  return tuner && joint >= 0 && joint <= tuner.from ? `how ${tuner.name} behind it was set is not known` : null;
}

/** The joint of a reading: its own name, or the joint a meter of that name stands at. */
function predictedSwr(
  station: Station,
  band: Band,
  solver: AntennaSolver,
  at: string,
  frequency: number,
): number | null {
  const point = workPoint(station, band, frequency, solver, { tuner: "through" });
  if ("refused" in point) return null;
  const meter = point.parts.find((p) => p.edge.name === at && p.edge.kind === "meter");
  const joint = point.joints.find((j) => j.name === (meter?.from ?? at));
  return joint ? swr(joint.impedance, point.ratedResistance) : null;
}

function* compareOne(
  station: Station,
  band: Band,
  solver: AntennaSolver,
  reading: Reading,
  frequency: number,
): Generator<Progress, ReadingComparison | null> {
  const moved = movesOf(station).flatMap(({ low, high }) => [low, high]);
  const ahead = [station, ...moved].map((one) => requestAt(one, frequency));
  yield { done: 0, of: 1, what: "readings", ahead };
  const predicted = predictedSwr(station, band, solver, reading.at, frequency);
  if (predicted === null || !Number.isFinite(predicted) || reading.swr === null) return null;
  const evaluate = (moved: Station) => {
    const value = predictedSwr(moved, band, solver, reading.at, frequency);
    return value === null ? null : { swr: value };
  };
  const bounds = yield* moveInputs(station, { swr: predicted }, evaluate, "readings");
  const low = Math.max(1, bounds.low.swr ?? predicted);
  const high = bounds.high.swr ?? predicted;
  const part = station.path.parts.find((p) => p.name === reading.at);
  const directivity = part?.kind === "meter" && part.directivity ? part.directivity : null;
  // The worst directivity the file allows gives the widest honest window.
  const shown = directivity && {
    low: leastShown(predicted, directivity.low),
    high: meterMayShow(predicted, directivity.low).high,
  };
  const window = {
    low: directivity ? leastShown(low, directivity.low) : low,
    high: directivity ? meterMayShow(high, directivity.low).high : high,
  };
  const measured = reading.swr.value;
  const { low: least, high: most } = reading.swr;
  const agrees = most >= window.low - halfDigit && (window.high === null || least <= window.high + halfDigit);
  return {
    at: reading.at,
    frequency,
    measured,
    predicted,
    predictedLow: low,
    predictedHigh: high,
    meterMayShow: shown && directivity ? { ...shown, directivity: directivity.low } : null,
    agrees,
    says: readingSentence({
      at: reading.at,
      measured,
      predicted,
      low,
      high,
      shown,
      directivity: directivity?.low ?? null,
      agrees,
    }),
  };
}

/** Least SWR a meter of at least this directivity (dB) may show: a leak of that size or a smaller one against the reflection. */
const leastShown = (trueSwr: number, directivity: number): number =>
  swrOfReflection(Math.max(0, reflectionOfSwr(trueSwr) - 10 ** (-directivity / 20)));

/** A meter is read to one decimal: half of that is its reading error (common practice, no source). */
const halfDigit = 0.05;
