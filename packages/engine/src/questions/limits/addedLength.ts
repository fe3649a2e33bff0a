/** What more line behind the tuner would make of its voltage: the wave moves along, its SWR does not. */
import type { Table } from "../../answer/answer";
import { constantsOf } from "../../chain/edges";
import { netPower, stateAt } from "../../lines/alongLine";
import { magnitude } from "../../numerics/complex";
import type { Study } from "./study";

export interface AddedLength {
  readonly table: Table;
  readonly best: { readonly metres: number; readonly volts: number; readonly now: number };
}

/** Steps over the half wave within which everything repeats. */
const steps = 40;
/** Of a line's length, what may be taken away. */
const mayGo = 0.8;

/** Null where no line follows right behind a tuner. Lengths are shorter (negative) or longer than now. */
export function addedLength({ worked: { point } }: Study): AddedLength | null {
  const used = point.parts.filter((part) => part.edge.inUse);
  const tuner = used.findIndex((part) => part.edge.kind === "tuner");
  const line = tuner < 0 ? undefined : used.slice(tuner + 1).find((part) => part.edge.part?.kind === "line");
  const end = line && point.joints.find((joint) => joint.name === line.to);
  if (line?.edge.part?.kind !== "line" || !end) return null;
  const constants = constantsOf(line.edge.part, point.frequency);
  const halfWave = Math.PI / constants.gamma.im;
  const power = used[tuner]!.powerOut;
  const step = halfWave / steps;
  const shorter = Math.min(steps / 2, Math.floor((mayGo * line.length) / step));
  const metres = Array.from({ length: steps + 1 }, (_, i) => (i - shorter) * step);
  const peaks = metres.map((more) => {
    const state = stateAt(constants, end, line.length + more);
    return Math.SQRT2 * magnitude(state.voltage) * Math.sqrt(power / netPower(state));
  });
  const now = peaks[shorter]!;
  const best = bestOf(peaks, shorter);
  return {
    table: {
      name: "voltageByAddedLine",
      axis: "addedLength",
      columns: {
        addedLength: { unit: "m", values: metres },
        peakVoltage: { unit: "V", values: peaks },
      },
    },
    best: { metres: metres[best]!, volts: peaks[best]!, now },
  };
}

/** The least change that halves the voltage; where none does, the one that makes it least. */
function bestOf(peaks: readonly number[], present: number): number {
  const halved = peaks.flatMap((peak, i) => (peak < peaks[present]! / 2 ? [i] : []));
  const nearest = halved.sort((a, b) => Math.abs(a - present) - Math.abs(b - present))[0];
  return nearest ?? peaks.indexOf(Math.min(...peaks));
}
