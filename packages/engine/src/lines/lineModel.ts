/** What a feed line is made of, or what its data sheet says. Types only; lineConstants.ts turns them into Z0 and gamma. */
import type { Metal, OuterConductor, RoundConductor } from "../conductors/conductor";
import type { Dielectric } from "../dielectrics/dielectric";
import type { Quantity } from "../quantity/quantity";

export type { Metal, OuterConductor, RoundConductor } from "../conductors/conductor";
export type { Braid, Foil, Shield } from "../conductors/shield";
export type { Dielectric } from "../dielectrics/dielectric";

/** Data-sheet line: nominal impedance (ohm), velocity factor, matched loss in dB/m at frequencies in Hz. */
export interface DataSheetLine {
  readonly kind: "data sheet";
  readonly side: "coaxial" | "balanced";
  readonly impedance: Quantity;
  readonly velocityFactor: Quantity;
  readonly loss: readonly { readonly frequency: number; readonly decibelsPerMetre: Quantity }[];
  /** Ohm/m at direct current, both ways together, where the sheet gives it: what the resistance ends at towards low frequency. */
  readonly loopResistance?: Quantity;
}

/** Coaxial line by its build. */
export interface CoaxialLine {
  readonly kind: "coaxial";
  readonly inner: RoundConductor;
  readonly outer: OuterConductor;
  readonly dielectric: Dielectric;
}

/** What holds two wires apart, or covers them; the rest of the field lies in air. */
export type PairInsulation =
  /** A sleeve round each wire. */
  | { readonly form: "sleeves"; readonly outerRadius: number; readonly dielectric: Dielectric }
  /** A flat web between sleeves, m thick; of its length the share `filled` is there, the rest are windows. */
  | {
      readonly form: "web";
      readonly outerRadius: number;
      readonly thickness: number;
      readonly filled: number;
      readonly dielectric: Dielectric;
    };

/** Two equal parallel round wires. Spacing between centres in metres. */
export interface ParallelWireLine {
  readonly kind: "parallel-wire";
  readonly wire: RoundConductor;
  readonly spacing: Quantity;
  /** Effective relative permittivity and loss tangent of all that lies around (1 and 0 for air). */
  readonly dielectric: Dielectric;
  /** Where the insulation is known by its shape: `dielectric` is then what lies around it. */
  readonly insulation?: PairInsulation;
}

/** Two insulated wires twisted with each other, m for one full turn. */
export interface TwistedPairLine {
  readonly kind: "twisted pair";
  readonly wire: RoundConductor;
  readonly sleeve: { readonly outerRadius: number; readonly dielectric: Dielectric };
  readonly turn: number;
}

/** A round wire over a wide plane of metal, m from the plane to its axis. */
export interface WireOverPlaneLine {
  readonly kind: "wire over plane";
  readonly wire: RoundConductor;
  readonly height: Quantity;
  readonly plane: Metal;
  readonly dielectric: Dielectric;
}

/** Four equal wires at the corners of a square; side of the square in m. Joined in pairs: across the diagonals, or neighbours. */
export interface FourWireLine {
  readonly kind: "four-wire";
  readonly wire: RoundConductor;
  readonly side: Quantity;
  readonly joined: "diagonals" | "neighbours";
  readonly dielectric: Dielectric;
}

/** Two equal wires in one shield, driven in opposition. */
export interface ShieldedPairLine {
  readonly kind: "shielded pair";
  readonly wire: RoundConductor;
  readonly spacing: Quantity;
  readonly outer: OuterConductor;
  readonly dielectric: Dielectric;
}

/** Lines known by what they are built of. */
export type BuiltLine =
  | CoaxialLine
  | ParallelWireLine
  | TwistedPairLine
  | WireOverPlaneLine
  | FourWireLine
  | ShieldedPairLine;

export type LineModel = DataSheetLine | BuiltLine;

/** What a line stands and how it handles, each where it is published; its source stands among the entry's `sources`. */
export interface LineRatings {
  /** V rms between the conductors for long. */
  readonly voltage?: Quantity;
  /** K of the inner conductor for long. */
  readonly temperature?: Quantity;
  /** kg/m. */
  readonly weight?: Quantity;
  /** m, least radius of a bend, laid once. */
  readonly bendRadius?: Quantity;
  /** F/m as the sheet gives it, and ohm/m at direct current, both ways together. */
  readonly capacitance?: Quantity;
  readonly loopResistance?: Quantity;
  /** W of mean power a published curve gives at a frequency (Hz), with its words for the conditions. Shown beside, never used. */
  readonly publishedPower?: readonly { readonly frequency: number; readonly power: number; readonly says: string }[];
}

/** A catalogue line keeps both: data-sheet points decide its constants, the build (where published) serves `why` and `build`. */
export interface LineEntry {
  readonly designation: string;
  /** The catalogue line that this one repeats, with what its owner adds. */
  readonly like?: string;
  /** A phrase for people: size, insulation, what it is used for. */
  readonly about?: string;
  readonly model: LineModel;
  readonly build: BuiltLine | null;
  /** m over the jacket; left out where it is not published. */
  readonly jacketDiameter?: number;
  readonly ratings?: LineRatings;
  /** The asker's own price a metre, in the asker's own money; the word is shown as written ("EUR"). */
  readonly price?: { readonly perMetre: number; readonly money: string };
  readonly sources: readonly { readonly value: string; readonly source: string; readonly status: string }[];
}
