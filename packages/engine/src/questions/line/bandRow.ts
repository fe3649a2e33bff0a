/** One line in one band: watts into the antenna, loss, SWR, and the wave on it. */
import type { AntennaSolver } from "../../chain/antennaSolver";
import { constantsOf } from "../../chain/edges";
import { workPoint } from "../../chain/workPoint";
import { swr } from "../../lines/reflection";
import type { Complex } from "../../numerics/complex";
import type { Part } from "../../station/path";
import type { Band, Station } from "../../station/station";
import { type StandingWave, standingWave } from "../../stress/standingWave";
import type { Replaced } from "./replaced";
import { withParts } from "./swapped";

export interface Bench {
  readonly station: Station;
  readonly replaced: Replaced;
  /** Keeps the antenna. */
  readonly solver: AntennaSolver;
}

export interface BandRow {
  readonly band: Band;
  /** W, peak envelope: from the transmitter and into the antenna. */
  readonly delivered: number;
  readonly watts: number;
  /** W in the run. */
  readonly heat: number;
  /** dB at the real load: of the run, with what stands at its ends; of the line alone closed with its own impedance; added by mismatch. */
  readonly loss: number;
  readonly matched: number;
  readonly added: number;
  /** What the transmitter sees, or the tuner before the line; its SWR on the rated load. */
  readonly seen: Complex;
  readonly swrSeen: number;
  /** At the antenna's end, on the line's own impedance. */
  readonly swrOnLine: number;
  /** On the line, at peak envelope power. */
  readonly wave: StandingWave;
}

/** `parts` stand where the line stood; one of them bears its name. Null where the path cannot be worked out, or does not use it. */
export function bandRow({ station, replaced, solver }: Bench, band: Band, parts: readonly Part[]): BandRow | null {
  const name = replaced.part.name;
  const point = workPoint(withParts(station, name, parts), band, band.frequency.value, solver, { tuner: "matched" });
  if ("refused" in point) return null;
  const run = point.parts.filter((p) => p.edge.inUse && parts.some((one) => one.name === p.edge.name));
  const line = run.find((p) => p.edge.name === name);
  if (line?.edge.part?.kind !== "line") return null;
  const end = point.joints.find((j) => j.name === line.to)!;
  const constants = constantsOf(line.edge.part, band.frequency.value);
  const seen = replaced.behindTuner && point.tuner ? point.tuner.impedance : point.joints[0]!.impedance;
  const [powerIn, powerOut] = [run[0]!.powerIn, run.at(-1)!.powerOut];
  return {
    band,
    delivered: point.powerFromTransmitter,
    watts: point.powerIntoAntenna,
    heat: powerIn - powerOut,
    loss: 10 * Math.log10(powerIn / powerOut),
    matched: line.matchedLoss ?? 0,
    added: line.loss - (line.matchedLoss ?? 0),
    seen,
    swrSeen: swr(seen, point.ratedResistance),
    swrOnLine: swr(end.impedance, constants.z0.re),
    wave: standingWave(constants, line.length, end),
  };
}
