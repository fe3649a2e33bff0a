/** How the outer conductor of a coaxial line is made. Types only. */
import type { Metal } from "./metal";

/** A braid: `carriers` bundles of `ends` wires each, half of them either way round. What is not known is null. */
export interface Braid {
  /** Optical coverage, 0 to 1; from the others where they are known. */
  readonly coverage: number | null;
  readonly carriers: number | null;
  readonly ends: number | null;
  /** m, diameter of one wire. */
  readonly wire: number | null;
  /** Radians between a carrier and the axis. */
  readonly angle: number | null;
  /** Braids over each other, 1 or 2. */
  readonly layers: number;
}

/** A foil or tape of metal laid on: closed (bonded) or overlapping. */
export interface Foil {
  readonly metal: Metal;
  /** m of metal. */
  readonly thickness: number;
}

export type Shield =
  | { readonly form: "tube" }
  /** Depth and pitch of the corrugation in m. */
  | { readonly form: "corrugated"; readonly depth: number; readonly pitch: number }
  | { readonly form: "braid"; readonly braid: Braid }
  | { readonly form: "foil"; readonly foil: Foil }
  | { readonly form: "foil and braid"; readonly foil: Foil; readonly braid: Braid };
