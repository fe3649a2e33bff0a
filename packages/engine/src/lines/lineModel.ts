/** What a feed line is made of, or what its data sheet says. Types only; constants.ts turns them into Z0 and gamma. */
import type { Quantity } from "../quantity/quantity";

/** Bulk metal. Conductivity in S/m (Infinity for a perfect conductor), relative permeability. */
export interface Metal {
  readonly name: string;
  readonly conductivity: number;
  readonly permeability: number;
}

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
}

export interface Dielectric {
  readonly name: string;
  readonly permittivity: number;
  readonly lossTangent: number;
}

/** Data-sheet line: nominal impedance (ohm), velocity factor, matched loss in dB/m at frequencies in Hz. */
export interface DataSheetLine {
  readonly kind: "data sheet";
  readonly side: "coaxial" | "balanced";
  readonly impedance: Quantity;
  readonly velocityFactor: Quantity;
  readonly loss: readonly { readonly frequency: number; readonly decibelsPerMetre: Quantity }[];
}

/** Coaxial line by its build. */
export interface CoaxialLine {
  readonly kind: "coaxial";
  readonly inner: RoundConductor;
  /** Inner diameter of the outer conductor in metres, its metal, its wall (Infinity: many skin depths). */
  readonly outer: {
    readonly innerRadius: number;
    readonly wall: number;
    readonly metal: Metal;
    /** Braid factor: surface resistance over that of a smooth tube. */
    readonly resistanceFactor: number;
  };
  readonly dielectric: Dielectric;
}

/** Two equal parallel round wires. Spacing between centres in metres. */
export interface ParallelWireLine {
  readonly kind: "parallel-wire";
  readonly wire: RoundConductor;
  readonly spacing: Quantity;
  /** Effective relative permittivity and loss tangent of what lies between (1 and 0 for air). */
  readonly dielectric: Dielectric;
}

export type LineModel = DataSheetLine | CoaxialLine | ParallelWireLine;

/** A catalogue line keeps both: data-sheet points decide its constants, the build (where published) serves `why` and `build`. */
export interface LineEntry {
  readonly designation: string;
  readonly model: LineModel;
  readonly build: CoaxialLine | ParallelWireLine | null;
  readonly sources: readonly { readonly value: string; readonly source: string; readonly status: string }[];
}
