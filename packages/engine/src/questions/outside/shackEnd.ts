/** Volts at the transmitter's end of the outside: across its earth, or between its floating case and a stake below it. */
import { magnitude } from "../../numerics/complex";
import { speedOfLight } from "../../numerics/vacuum";
import { exactly } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { type Asked, isOutside, type OutsideState, workOutside } from "./state";

export interface ShackEnd {
  /** V rms; null where it has no meaning or cannot be told. */
  readonly volts: number | null;
  /** A rms that the earth takes; 0 at a floating end. */
  readonly current: number;
  readonly reason: string;
}

const stake = "stake below the transmitter";
/** Ohm: as good as open. */
const open = 1e8;

export function shackEnd(station: Station, asked: Asked, state: OutsideState): ShackEnd {
  const { run } = state;
  if (!run.fromTransmitter)
    return { volts: null, current: 0, reason: "the outside in the model does not reach the transmitter" };
  return run.earthed === null ? floatingEnd(station, asked, state) : earthedEnd(state, run.earthed);
}

/** The current into the earth times the earth's whole impedance. */
function earthedEnd(state: OutsideState, earth: string): ShackEnd {
  const { build } = state.point.antenna;
  const { structure } = build;
  const gaps = structure.gaps?.length ?? 0;
  const contact = (structure.contacts ?? []).findIndex((c) => c.name === earth);
  if (contact < 0) return { volts: null, current: 0, reason: "its earth is not in the model" };
  const current = magnitude(state.driven.portCurrents[structure.feeds.length + gaps + contact]!);
  const impedance = build.closings[gaps + contact]!.impedance(2 * Math.PI * state.point.frequency);
  if (impedance === "open") return { volts: null, current, reason: "its earth is open" };
  return { volts: current * magnitude(impedance), current, reason: "" };
}

/** A wire straight down from the case to a stake in the soil, joined to nothing: the voltage across the open joint. */
function floatingEnd(station: Station, asked: Asked, { run, point }: OutsideState): ShackEnd {
  const { structure } = point.antenna.build;
  const start = structure.wires[run.wires[0]!]!.from;
  const none = (reason: string): ShackEnd => ({ volts: null, current: 0, reason });
  if (station.ground.kind === "free space") return none("there is no soil to measure against");
  if (start[2] > speedOfLight / asked.frequency / 10)
    return none("it is so high above the soil that a voltage between the two hangs on how it is measured");
  const at = [exactly(start[0]), exactly(start[1]), exactly(0)] as const;
  const earth = {
    name: stake,
    form: "unspecified" as const,
    size: null,
    diameter: null,
    at,
    resistance: exactly(open),
  };
  const probed: Station = {
    ...station,
    earths: [...station.earths, earth],
    transmitter: { ...station.transmitter, earthed: stake },
  };
  const measured = workOutside(probed, asked);
  if (!isOutside(measured)) return none(measured.refused.why);
  const built = measured.point.antenna.build.structure;
  const contact = (built.contacts ?? []).findIndex((c) => c.name === stake);
  if (contact < 0) return none("it stands on another earth");
  const port = built.feeds.length + (built.gaps?.length ?? 0) + contact;
  return { volts: magnitude(measured.driven.portVoltages[port]!), current: 0, reason: "" };
}
