/** Both ends of a stepped line: where waves turn round. */
import { type LossNodes, takeAt } from "./lossNodes";
import type { SteppedLine } from "./steppedLine";
import type { SteppedTermination } from "./termination";

/** What the ends need of a running film, and the sums they add to: W times steps. */
export interface RunningEnds {
  readonly line: SteppedLine;
  /** Wave in each section that will come to its end at the source's side next. */
  readonly left: Float64Array;
  readonly endShunt: LossNodes;
  readonly sourcePort: SteppedTermination;
  readonly loadPort: SteppedTermination;
  /** Volts at even places, index place / 2. */
  readonly volts: Float64Array;
  delivered: number;
  intoLoad: number;
}

export interface AtEnd {
  readonly voltage: number;
  /** Towards the load. */
  readonly current: number;
  /** Wave that sets out into the line. */
  readonly departing: number;
}

/** Source in series with its impedance, half a place's shunt loss, and the line. */
export function sourceEnd(running: RunningEnds, emf: number): AtEnd {
  const { line, left, endShunt, sourcePort, volts } = running;
  const z = line.surgeImpedance;
  const back = left[0]!;
  const held = endShunt.held[0]!;
  const g = endShunt.slope + 1 / z;
  // Current into line and shunt: g V + held - 2 back / z.
  const other = held - (2 * back) / z;
  let voltage: number;
  let current: number;
  if (sourcePort.form === "in series") {
    current = (g * (emf - sourcePort.held()) + other) / (1 + g * sourcePort.slope);
    voltage = emf - sourcePort.held() - sourcePort.slope * current;
    sourcePort.take(current);
  } else {
    // i = slope (emf - V) + held of the source's own branch.
    voltage = (sourcePort.slope * emf + sourcePort.held() - other) / (g + sourcePort.slope);
    current = g * voltage + other;
    sourcePort.take(emf - voltage);
  }
  takeAt(endShunt, 0, voltage);
  running.delivered += voltage * current;
  volts[0] = voltage;
  return { voltage, current, departing: voltage - back };
}

/** The line, half a place's shunt loss, and the load. */
export function loadEnd(running: RunningEnds, incoming: number): AtEnd {
  const { line, left, endShunt, loadPort, volts } = running;
  const z = line.surgeImpedance;
  const held = endShunt.held[1]!;
  const g = endShunt.slope + 1 / z;
  // Current left for the load at a voltage V: (2 incoming / z - held) - g V.
  const offered = (2 * incoming) / z - held;
  let voltage: number;
  let current: number;
  if (loadPort.form === "in series") {
    current = (offered - g * loadPort.held()) / (1 + g * loadPort.slope);
    voltage = loadPort.slope * current + loadPort.held();
    loadPort.take(current);
  } else {
    voltage = (offered - loadPort.held()) / (g + loadPort.slope);
    current = loadPort.slope * voltage + loadPort.held();
    loadPort.take(voltage);
  }
  takeAt(endShunt, 1, voltage);
  running.intoLoad += voltage * current;
  volts[line.sections / 2] = voltage;
  left[line.sections - 1] = voltage - incoming;
  return { voltage, current, departing: voltage - incoming };
}
