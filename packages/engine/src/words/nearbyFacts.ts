/** What the sentences of `nearby` are made of. Types only. */
import type { Verdict } from "../answer/answer";

export interface CaseFacts {
  /** At the transmitter, or what the tuner has to match. */
  readonly swr: number;
  /** dBi at the angle looked at. */
  readonly gain: number;
  readonly feedPoint: { readonly re: number; readonly im: number };
  /** W to the sky. */
  readonly radiated: number;
  /** dBi and degrees. */
  readonly strongest: { readonly gain: number; readonly elevation: number; readonly azimuth: number };
}

export interface RemedyFacts {
  readonly kind: "insulator" | "choke" | "open" | "shorted";
  /** m along a conductor. */
  readonly at: number | null;
  readonly ohms: number | null;
  readonly state: CaseFacts;
  /** What is left of the thing's effect; below 1 it is not worth naming. */
  readonly left: number;
}

export interface ThingFacts {
  readonly name: string;
  readonly kind: "conductor" | "sheet" | "antenna";
  readonly says: string;
  readonly length: number;
  readonly standing: boolean;
  /** m between the nearest wires. */
  readonly distance: number;
  readonly without: CaseFacts;
  /** Of a change of either sign, and of one for the worse; 1 is just worth naming. */
  readonly effect: number;
  readonly harm: number;
  readonly induced: { readonly current: number; readonly at: number; readonly heat: number };
  /** Null: not looked at closely. `distance` null: it still matters at the last one, `upTo`. */
  readonly clear: {
    readonly distance: number | null;
    readonly towards: number;
    readonly upTo: number;
    readonly count: number;
  } | null;
  readonly resonance: { readonly frequency: number | null; readonly resistance: number | null } | null;
  readonly remedies: readonly RemedyFacts[];
  readonly openedAt: number | null;
}

export interface DipFacts {
  readonly lowestSwr: number | null;
  readonly resonance: number | null;
}

export interface NearbyFacts {
  readonly verdict: Verdict;
  readonly limit: number;
  readonly asIs: CaseFacts;
  readonly withoutAll: CaseFacts;
  readonly effect: number;
  readonly aim: { readonly elevation: number; readonly azimuth: number };
  /** W from the transmitter. */
  readonly whole: number;
  /** Name of the tuner that matches; null without one. */
  readonly atTuner: string | null;
  readonly wave: number;
  readonly frequency: number;
  readonly antennaCurrent: number;
  readonly feedCurrent: number;
  readonly dips: { readonly asIs: DipFacts | null; readonly without: DipFacts | null };
  /** The one that changes most first. */
  readonly things: readonly ThingFacts[];
  readonly own: readonly string[];
  readonly roofs: readonly {
    readonly covering: string;
    readonly low: number;
    readonly high: number;
    readonly wattsLow: number;
    readonly wattsHigh: number;
  }[];
  readonly failed: readonly { readonly name: string; readonly why: string }[];
  readonly bounded: readonly string[];
}
