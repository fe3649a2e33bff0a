/** What conductors are made of. Types only; the sibling files turn them into impedances. */
import type { Metal } from "./metal";
import type { Shield } from "./shield";

export type { Metal } from "./metal";

/** Round conductor seen from outside, layers from the core outwards; outer radii in metres, increasing. */
export interface RoundConductor {
  readonly form: "solid" | "stranded" | "tube";
  readonly layers: readonly { readonly metal: Metal; readonly outerRadius: number }[];
  /** Tube: radius of the hole in metres; 0 otherwise. */
  readonly holeRadius: number;
  /** Stranded: effective over geometric radius for the field between the conductors (1 when solid). */
  readonly effectiveRadiusRatio: number;
  /** Multiplies the surface resistance: strands, braid wires, roughness (1 for a smooth solid). */
  readonly resistanceFactor: number;
  /** Stranded: how many, m across one, and m of the strand for a turn of the outer layer (straight when left out). */
  readonly strands?: { readonly count: number; readonly diameter: number; readonly turn?: number };
}

/** Outer conductor of a coaxial line; its return flows inside it. */
export interface OuterConductor {
  /** Inner radius in metres, and the wall in metres (Infinity: many skin depths). */
  readonly innerRadius: number;
  readonly wall: number;
  readonly metal: Metal;
  /** What it is plated with on its inner side, m thick: tin or silver on the wires of a braid. */
  readonly coating?: { readonly metal: Metal; readonly thickness: number };
  /** Braid factor: surface resistance over that of a smooth tube. */
  readonly resistanceFactor: number;
  /** Ohm/m more at every frequency: contacts between the wires of a braid that corroded (lines/wetCoaxialLine). None when left out. */
  readonly addedResistance?: number;
  /** How it is made; a smooth tube when left out. What leaks through it comes from here. */
  readonly shield?: Shield;
}
