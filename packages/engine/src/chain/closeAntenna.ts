/** A solved antenna seen at its feeds, its gaps and contacts closed as the station says. */
import type { AntennaBuild } from "../antenna/antennaStructure";
import { joinedAdmittance } from "../antenna/joinedLines";
import { behindTransformers, capacitorImpedance, type LoopSetting } from "../antenna/loopTuning";
import { add, type Complex, conjugate, multiply, scale, subtract } from "../numerics/complex";
import { invertComplexMatrix } from "../numerics/invertComplexMatrix";
import type { AntennaSolution } from "../wires/antennaSolution";
import { coarseTwin } from "../wires/coarseTwin";
import type { Soil } from "../wires/structure";
import { type ClosedPorts, type Closing, closePorts } from "./closePorts";

export interface SolvedAntenna {
  readonly build: AntennaBuild;
  readonly soil: Soil;
  /** Feed names, and the admittance between them in siemens with all other ports closed and joined lines in parallel. */
  readonly feeds: readonly string[];
  readonly admittance: readonly (readonly Complex[])[];
  /** The part of it that is lines between the feeds; null without any. */
  readonly joined: readonly (readonly Complex[])[] | null;
  /** Volts at all ports of the solution for 1 V at each feed in turn. */
  readonly portVoltages: readonly (readonly Complex[])[];
  /** The same on the mesh of doubled elements; null where that gives none, or the antenna was interpolated. */
  readonly coarsePortVoltages: readonly (readonly Complex[])[] | null;
  /** Ohm: step by which the extrapolation moved the impedances between the feeds; null where it cannot be told. */
  readonly extrapolationStep: readonly (readonly Complex[])[] | null;
  /** Null where the admittance was interpolated between solved frequencies: no currents, no fields. */
  readonly solution: AntennaSolution | null;
}

export interface AntennaRefused {
  readonly refused: { readonly why: string; readonly mend: string };
}

/** Between all ports, at one frequency (Hz): solved, or interpolated (then without a fine mesh and a solution). */
export interface PortState {
  readonly frequency: number;
  readonly soil: Soil;
  readonly admittance: readonly (readonly Complex[])[];
  readonly fineAdmittance: readonly (readonly Complex[])[] | null;
  readonly electrodes: readonly Complex[];
  readonly solution: AntennaSolution | null;
}

export const noSingleState = {
  why: "the outside of the line and its earths have no single state here",
  mend: "another choke, bond or route",
};

/** `settings` of the structure's small loops, in their order (loopSettings.ts). */
export function closeAntenna(
  build: AntennaBuild,
  state: PortState,
  settings: readonly LoopSetting[] = [],
): SolvedAntenna | AntennaRefused {
  const closings = closingsOf(build, state, settings);
  const best = closePorts(state.admittance, closings);
  const fine = state.fineAdmittance ? closePorts(state.fineAdmittance, closings) : best;
  if (!best || !fine) return { refused: noSingleState };
  const feeds = build.structure.feeds.map((f) => f.name);
  const joined = build.joined.length > 0 ? joinedAdmittance(build.joined, feeds, state.frequency) : null;
  const ratios = feeds.map((_, feed) => settings[build.loops.findIndex((loop) => loop.feed === feed)]?.ratio ?? 1);
  const whole = (y: readonly (readonly Complex[])[]): Complex[][] =>
    behindTransformers(y, ratios).map((row, i) => row.map((x, k) => (joined ? add(x, joined[i]![k]!) : x)));
  const admittance = whole(best.admittance);
  const twin = state.solution && closePorts(coarseTwin(state.solution).admittance, closings);
  const perFeed = ({ voltages }: ClosedPorts): Complex[][] =>
    voltages.map((row, feed) => row.map((v) => scale(v, 1 / ratios[feed]!)));
  const zBest = invertComplexMatrix(admittance);
  const zFine = state.fineAdmittance && invertComplexMatrix(whole(fine.admittance));
  return {
    build,
    soil: state.soil,
    feeds,
    admittance,
    joined,
    portVoltages: perFeed(fine),
    coarsePortVoltages: twin && perFeed(twin),
    extrapolationStep: zBest && zFine && zBest.map((row, i) => row.map((z, k) => subtract(z, zFine[i]![k]!))),
    solution: state.solution,
  };
}

/** W taken by the lines between feeds under these voltages at the feeds. */
export const heatInJoined = ({ joined }: SolvedAntenna, voltages: readonly Complex[]): number =>
  (joined ?? []).reduce(
    (sum, row, i) =>
      row.reduce((part, y, k) => part + multiply(conjugate(voltages[i]!), multiply(y, voltages[k]!)).re, sum),
    0,
  );

/** A contact's electrode is in the solution already: what is added is the earth's impedance less the electrode's own. */
export function closingsOf(
  build: AntennaBuild,
  { frequency, electrodes }: PortState,
  settings: readonly LoopSetting[],
): Closing[] {
  const firstContact = build.structure.gaps?.length ?? 0;
  const w = 2 * Math.PI * frequency;
  return build.closings.map((closing, i) => {
    const loop = build.loops.findIndex(({ gap }) => gap === i);
    const setting = settings[loop];
    if (setting) return capacitorImpedance(build.loops[loop]!, setting.capacitance, w);
    const impedance = closing.impedance(w);
    const electrode = electrodes[i - firstContact];
    return impedance === "open" || !electrode ? impedance : subtract(impedance, electrode);
  });
}
