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

const steps = 40;

/** Null where no line follows right behind a tuner. */
export function addedLength({ worked: { point } }: Study): AddedLength | null {
  const used = point.parts.filter((part) => part.edge.inUse);
  const tuner = used.findIndex((part) => part.edge.kind === "tuner");
  const line = tuner < 0 ? undefined : used.slice(tuner + 1).find((part) => part.edge.part?.kind === "line");
  const end = line && point.joints.find((joint) => joint.name === line.to);
  if (line?.edge.part?.kind !== "line" || !end) return null;
  const constants = constantsOf(line.edge.part, point.frequency);
  const halfWave = Math.PI / constants.gamma.im;
  const power = used[tuner]!.powerOut;
  const metres = Array.from({ length: steps + 1 }, (_, i) => (halfWave * i) / steps);
  const peaks = metres.map((more) => {
    const state = stateAt(constants, end, line.length + more);
    return Math.SQRT2 * magnitude(state.voltage) * Math.sqrt(power / netPower(state));
  });
  const halved = peaks.findIndex((peak) => peak < peaks[0]! / 2);
  const least = halved >= 0 ? halved : peaks.indexOf(Math.min(...peaks));
  return {
    table: {
      name: "voltageByAddedLine",
      axis: "addedLength",
      columns: {
        addedLength: { unit: "m", values: metres },
        peakVoltage: { unit: "V", values: peaks },
      },
    },
    best: { metres: metres[least]!, volts: peaks[least]!, now: peaks[0]! },
  };
}
