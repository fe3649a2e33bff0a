/** The outside of a feed line as part of the antenna. Types only. */
import type { Complex } from "../../numerics/complex";

/** A choke that opens the outside of the line. */
export interface OutsideChoke {
  /** Parts that open it at this joint, in order: a choke, or a balun that chokes. */
  readonly names: readonly string[];
  /** Index into the structure's gaps. */
  readonly gap: number;
  /** m along the outside from its end at the transmitter. */
  readonly distance: number;
  /** Ohm, of each part; null where nothing at all passes. */
  readonly impedances: readonly (((angularFrequency: number) => Complex) | null)[];
  /** W, of each part; null where the file gives none. */
  readonly heatLimits: readonly (number | null)[];
}

/** One run of routed coaxial lines whose outer surface reaches a feed point. */
export interface OutsideLine {
  readonly lines: readonly string[];
  /** From the transmitter's end to the feed. */
  readonly wires: readonly number[];
  readonly length: number;
  readonly feed: string;
  /** True when the run begins at the transmitter itself. */
  readonly fromTransmitter: boolean;
  /** The earth its transmitter end is tied to; null: floating. */
  readonly earthed: string | null;
  readonly chokes: readonly OutsideChoke[];
  /** Earths it is bonded to on the way, with m along the outside. */
  readonly bonds: readonly { readonly earth: string; readonly distance: number }[];
}
