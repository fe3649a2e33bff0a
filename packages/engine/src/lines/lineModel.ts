/** What a feed line is made of, or what its data sheet says. Types only; lineConstants.ts turns them into Z0 and gamma. */
import type { OuterConductor, RoundConductor } from "../conductors/conductor";
import type { Quantity } from "../quantity/quantity";

export type { Metal, OuterConductor, RoundConductor } from "../conductors/conductor";

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
  readonly outer: OuterConductor;
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
  /** m over the jacket; left out where it is not published. */
  readonly jacketDiameter?: number;
  readonly sources: readonly { readonly value: string; readonly source: string; readonly status: string }[];
}
