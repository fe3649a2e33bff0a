/** The station worked out at one frequency: what stands at every joint, and what every part takes. Types only. */
import type { Complex } from "../numerics/complex";
import type { SolvedAntenna } from "./antennaSolver";
import type { Resolved, ResolvedEdge, Side } from "./resolve";

/** Phasors are rms; the scale is peak envelope power. */
export interface WorkedJoint {
  readonly name: string;
  readonly side: Side;
  readonly voltage: Complex;
  /** Towards the antenna. */
  readonly current: Complex;
  readonly impedance: Complex;
  /** Net, towards the antenna, W. */
  readonly power: number;
}

export interface WorkedPart {
  readonly edge: ResolvedEdge;
  readonly from: string;
  readonly to: string;
  readonly powerIn: number;
  readonly powerOut: number;
  readonly heat: number;
  /** dB at the real load; 0 when no power enters. */
  readonly loss: number;
  /** dB it would lose into its own characteristic impedance; null for parts that are not lines. */
  readonly matchedLoss: number | null;
  readonly length: number;
  readonly along: {
    readonly power: readonly number[];
    readonly voltage: readonly number[];
    readonly current: readonly number[];
  };
}

/** What a tuner in the path has to do: the impedance it works into, and the part it stands for. */
export interface TunerTask {
  readonly name: string;
  readonly impedance: Complex;
  readonly target: number;
}

export interface WorkedPoint {
  readonly frequency: number;
  readonly resolved: Resolved;
  readonly joints: readonly WorkedJoint[];
  readonly parts: readonly WorkedPart[];
  /** What the transmitter delivers (its foldback curve applied) and what it would into its rated load, W. */
  readonly powerFromTransmitter: number;
  readonly ratedPower: number;
  /** Rated load of the transmitter, ohm: the reference of every SWR. */
  readonly ratedResistance: number;
  readonly swrAtTransmitter: number;
  /** Net power into all antenna ports, W. */
  readonly powerIntoAntenna: number;
  /** Heat in all parts and in load resistors of the path, W. */
  readonly heatInPath: number;
  /** Voltage at each antenna port, in the order of the antenna's feeds. */
  readonly portVoltages: readonly Complex[];
  readonly antenna: SolvedAntenna;
  readonly tuner: TunerTask | null;
  readonly notes: readonly string[];
}

export interface PointRefused {
  readonly refused: { readonly why: string; readonly mend: string };
}
