/** A pair of wires built closer or wider than it is: impedance, watts, and the voltage between its wires. */
import { lineConstants } from "../../lines/lineConstants";
import type { LineEntry } from "../../lines/lineModel";
import { radiationLoss } from "../../lines/radiationLoss";
import { exactly } from "../../quantity/quantity";
import type { Band } from "../../station/station";
import { greatestAlong } from "../../stress/standingWave";
import { type Bench, bandRow } from "./bandRow";

export interface Spacing {
  /** m between the wires' centres. */
  readonly spacing: number;
  /** Ohm at the band's frequency. */
  readonly impedance: number;
  readonly watts: number;
  readonly loss: number;
  readonly swrOnLine: number;
  /** Share of its power that the pair itself radiates, straight and alone. */
  readonly radiated: number;
  /** V rms at peak envelope power, the highest along the line. */
  readonly highestVoltage: number;
}

/** m: what people build, with spreaders from a finger's to a hand's width. */
const tried = [0.025, 0.05, 0.075, 0.1, 0.15, 0.2];

/** In one band; empty where the line is no pair of bare wires known by its build. */
export function studySpacings(bench: Bench, band: Band): Spacing[] {
  const { part } = bench.replaced;
  const { model } = part.line;
  if (model.kind !== "parallel-wire" || model.insulation) return [];
  const diameter = 2 * Math.max(...model.wire.layers.map((layer) => layer.outerRadius));
  return tried
    .filter((spacing) => spacing > 2 * diameter)
    .flatMap((spacing): Spacing[] => {
      const moved = { ...model, spacing: exactly(spacing, "assumed") };
      const line: LineEntry = { ...part.line, model: moved, build: null };
      const row = bandRow(bench, band, [{ ...part, line }]);
      if (!row) return [];
      const { watts, loss, swrOnLine, wave } = row;
      const impedance = lineConstants(moved, band.frequency.value).z0.re;
      const highestVoltage = Math.sqrt(greatestAlong(wave, (squares) => squares.voltage).value);
      const radiated = radiationLoss(moved, band.frequency.value, part.length.value).share;
      return [{ spacing, impedance, watts, loss, swrOnLine, highestVoltage, radiated }];
    });
}
