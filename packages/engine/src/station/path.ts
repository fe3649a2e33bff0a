/** The path: parts in order from the transmitter to the feed point(s). Types only. */
import type { LineEntry } from "../lines/lineModel";
import type { Quantity, Spectrum } from "../quantity/quantity";
import type { Place } from "./place";

export interface Path {
  readonly parts: readonly Part[];
  readonly end: PathEnd;
}

export type PathEnd =
  | { readonly kind: "feed"; readonly feed: string }
  | { readonly kind: "load"; readonly resistance: Quantity }
  | {
      readonly kind: "switch";
      readonly name: string;
      readonly positions: Readonly<Record<string, Path>>;
      readonly idle: "open" | "shorted" | Quantity;
      /** Position in use when the band's `set` names none. */
      readonly now: string;
      /** dB through the position in use. */
      readonly loss: Quantity;
      /** dB; null when the file says nothing. Not computed yet: taken as complete. */
      readonly isolation: Quantity | null;
    }
  | { readonly kind: "tee"; readonly name: string; readonly branches: Readonly<Record<string, Path>> }
  | {
      readonly kind: "band splitter";
      readonly name: string;
      readonly branches: Readonly<Record<string, Path>>;
      /** Hz per branch name. */
      readonly passes: Readonly<Record<string, { readonly from: number; readonly to: number }>>;
      readonly loss: Quantity;
    };

interface PartBase {
  /** Unique; by kind and count when the file gives none ("line 1"). */
  readonly name: string;
  readonly note: string;
  readonly state: "in line" | "bypassed";
}

/** How a line lies, which decides how its heat leaves. */
export type Lying = "in air" | "in the sun" | "buried" | "in a conduit" | "on a drum";

export interface LinePart extends PartBase {
  readonly kind: "line";
  readonly line: LineEntry;
  readonly length: Quantity;
  /** Places from the transmitter's end; empty when the file gives none. */
  readonly route: readonly Place[];
  readonly condition: "dry" | "wet" | "unknown";
  /** dB per metre over new. */
  readonly excessLoss: Quantity;
  /** kelvin; null when not given. */
  readonly temperature: Quantity | null;
  /** Left out: the file does not say. */
  readonly lies?: Lying;
}

export interface StubPart extends PartBase {
  readonly kind: "stub";
  readonly line: LineEntry;
  readonly length: Quantity;
  readonly farEnd: "open" | "shorted";
}

export interface ConnectorPart extends PartBase {
  readonly kind: "connector";
  readonly series: string;
  readonly count: number;
  /** dB for each one. */
  readonly loss: Quantity;
}

export interface MeterPart extends PartBase {
  readonly kind: "meter";
  /** dB. */
  readonly directivity: Quantity | null;
}

export interface FilterPart extends PartBase {
  readonly kind: "filter";
  readonly response: string;
  /** dB; null when a file describes it. */
  readonly loss: Quantity | null;
  readonly file: string | null;
}

export interface ArrestorPart extends PartBase {
  readonly kind: "arrestor";
  readonly form: "gas tube" | "gap" | "quarter-wave stub";
  /** F across the line. */
  readonly capacitance: Quantity;
  readonly sparkover: Quantity | null;
  readonly earth: string | null;
}

export interface BondPart extends PartBase {
  readonly kind: "bond";
  readonly earth: string;
  readonly strap: Quantity | null;
}

export interface ChokePart extends PartBase {
  readonly kind: "choke";
  /** Common-mode impedance, ohm. */
  readonly resistance: Spectrum;
  readonly reactance: Spectrum | null;
  readonly heatLimit: Quantity | null;
  /** Length of line wound in it, m; null when not given. */
  readonly length: Quantity | null;
}

export interface BalunPart extends PartBase {
  readonly kind: "balun";
  readonly form: "current" | "voltage";
  readonly transmitterSide: Quantity;
  readonly antennaSide: Quantity;
  readonly choking: Spectrum | null;
  /** dB into the rated resistance. */
  readonly loss: Quantity;
  readonly heatLimit: Quantity | null;
}

export interface TransformerPart extends PartBase {
  readonly kind: "transformer";
  readonly transmitterSide: Quantity;
  readonly antennaSide: Quantity;
  readonly loss: Quantity;
  readonly windingInductance: Quantity | null;
  readonly leakageInductance: Quantity | null;
  readonly capacitor: Quantity | null;
  readonly sides: "joined" | "isolated";
  readonly heatLimit: Quantity | null;
}

export interface Adjustable {
  readonly from: number;
  readonly to: number;
  readonly q: Quantity;
}

export interface TunerPart extends PartBase {
  readonly kind: "tuner";
  readonly network: "L" | "T" | "pi" | "series-section";
  readonly capacitors: Adjustable | null;
  readonly coil: Adjustable | null;
  readonly output: "coaxial" | "balanced";
  /** "least loss", "bypassed", or the values as written. */
  readonly set:
    | "least loss"
    | "bypassed"
    | { readonly capacitors: readonly Quantity[]; readonly coils: readonly Quantity[] };
  readonly voltageLimit: Quantity | null;
}

/** A lumped component. */
export interface Lumped {
  readonly coil: Quantity | null;
  readonly capacitor: Quantity | null;
  readonly resistor: Quantity | null;
  /** Quality factor of the coil or capacitor; Infinity when not given (listed as an assumption). */
  readonly q: Quantity;
}

export interface SeriesPart extends PartBase {
  readonly kind: "series";
  readonly component: Lumped;
}

export interface AcrossPart extends PartBase {
  readonly kind: "across";
  readonly component: Lumped;
}

export interface TwoPortPart extends PartBase {
  readonly kind: "two-port";
  readonly file: string;
}

export type Part =
  | LinePart
  | StubPart
  | ConnectorPart
  | MeterPart
  | FilterPart
  | ArrestorPart
  | BondPart
  | ChokePart
  | BalunPart
  | TransformerPart
  | TunerPart
  | SeriesPart
  | AcrossPart
  | TwoPortPart;
