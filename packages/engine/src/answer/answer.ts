/** An answer as data (docs/answer.md). Plain JSON: no methods, no NaN, no infinities. Units as named; names are stable. */

export type Verdict = "good" | "workable" | "trouble";

/** A scalar result. `value` null: infinite or does not apply, and `reason` says why. */
export interface ScalarValue {
  readonly value: number | null;
  readonly unit: string;
  readonly low?: number;
  readonly high?: number;
  readonly basis?: string;
  /** SWR only: the reference, ohm. */
  readonly reference?: number;
  readonly reason?: string;
  /** What it is the value of, where that is more than its name says: "wires and coils" of `heatInWires`. */
  readonly says?: string;
}

export interface ComplexValue {
  readonly re: number;
  readonly im: number;
  readonly unit: string;
}

export type Value = ScalarValue | ComplexValue;

export interface Joint {
  readonly name: string;
  readonly side: "coaxial" | "balanced";
  readonly impedance: ComplexValue;
  readonly swr: { readonly value: number | null; readonly reference: number };
  /** Net real power towards the antenna, W (peak envelope). */
  readonly power: number;
  readonly voltage: { readonly rms: number; readonly peak: number };
  readonly current: { readonly rms: number; readonly peak: number };
}

/** One part in path order. `from` and `to` are joint names; `branch` the branch it lies in ("" before any). */
export interface PartResult {
  readonly name: string;
  readonly kind: string;
  /** What the file says of it, for people: "28 m of RG-213/U". */
  readonly says: string;
  readonly from: string;
  readonly to: string;
  readonly branch: string;
  /** dB at the real load. */
  readonly loss: number;
  /** W, peak envelope. */
  readonly heat: number;
  /** dB by which the power may rise until the part's first limit, negative beyond it; null where none is known or asked (`limits`). */
  readonly margin: number | null;
  /** Metres, for lines; 0 otherwise. */
  readonly length: number;
  /** Net power (W), rms voltage and current at equal steps from `from` to `to`; empty for parts without length. */
  readonly along: {
    readonly power: readonly number[];
    readonly voltage: readonly number[];
    readonly current: readonly number[];
  };
}

export interface Column {
  readonly unit: string;
  readonly values: readonly (number | null)[];
  readonly low?: readonly number[];
  readonly high?: readonly number[];
}

/** `axis` names the column that is the independent variable; all columns have its length. */
export interface Table {
  readonly name: string;
  readonly axis: string;
  /** What each row is, where the axis only counts them: names of lines, things, parts. Left out: the axis says it. */
  readonly labels?: readonly string[];
  readonly columns: Readonly<Record<string, Column>>;
}

export interface GridAxis {
  readonly name: string;
  readonly unit: string;
  readonly values: readonly number[];
}

/** Something swept in two axes: `values` has one row for each value of `rows`, in it one for each of `columns`. */
export interface Grid {
  readonly name: string;
  readonly rows: GridAxis;
  readonly columns: GridAxis;
  readonly value: string;
  readonly unit: string;
  readonly values: readonly (readonly (number | null)[])[];
}

export interface Lobe {
  /** Degrees. */
  readonly elevation: number;
  readonly azimuth: number;
  /** dBi. */
  readonly gain: number;
  /** Degrees in elevation within 3 dB; null when it does not close. */
  readonly width: number | null;
}

export interface RuleOfThumb {
  readonly rule: string;
  readonly ruleValue: string;
  readonly computed: string;
  readonly holds: string;
  readonly source: string;
}

/** One step of the working. `formula` in the notation of docs/conventions.md (LaTeX subset), `substituted` with numbers put in. */
export interface WorkingStep {
  readonly text: string;
  readonly formula?: string;
  readonly substituted?: string;
  readonly result?: { readonly value: number; readonly unit: string };
  readonly source: string;
  /** Names of `values` this step explains. */
  readonly explains: readonly string[];
}

/** A sentence made of text and values: `value` names an entry of `values` (or null), `text` what stands there. */
export interface Phrase {
  readonly text: string;
  readonly value?: string;
}

export interface FigureListing {
  readonly name: string;
  readonly title: string;
  readonly description: string;
}

/** What stages draw: the station to scale. Metres; azimuths and elevations in degrees. */
export interface Drawing {
  readonly wires: readonly {
    readonly name: string;
    readonly from: readonly number[];
    readonly to: readonly number[];
  }[];
  readonly surroundings: readonly { readonly name: string; readonly points: readonly (readonly number[])[] }[];
  readonly people: readonly { readonly name: string; readonly at: readonly number[] }[];
  readonly antennaName: string;
  readonly antennaSays: string;
  readonly feedPoint: readonly number[];
  /** Places of the line from the transmitter; when the file gives none: plumb below the feed point, then level (an assumption). */
  readonly lineRoute: readonly (readonly number[])[];
  readonly soil: {
    readonly kind: string;
    readonly says: string;
    readonly penetrationDepth: number | null;
    /** Depths of the boundaries between layers, m, from the top; left out for one soil. */
    readonly layerDepths?: readonly number[];
  };
  /** Azimuth of the vertical cut that `elevationCut` shows. */
  readonly cutAzimuth: number;
}

export interface Uncertainty {
  /** Input in words, and its place in the station. */
  readonly input: string;
  readonly place: string;
  readonly says: string;
  /** Value of the judged result (see `parameters.judged`) with this input alone at its low and high end. */
  readonly atLow: number;
  readonly atHigh: number;
}

export interface ReadingComparison {
  readonly at: string;
  readonly frequency: number;
  readonly measured: number;
  readonly predicted: number;
  readonly predictedLow: number;
  readonly predictedHigh: number;
  /** What a meter of the stated directivity may show for the predicted true value; null without a directivity. */
  readonly meterMayShow: { readonly low: number; readonly high: number | null; readonly directivity: number } | null;
  readonly agrees: boolean;
  readonly says: string;
}

export interface Provenance {
  readonly program: string;
  readonly catalogue: string;
  readonly kernels: string;
  /** SHA-256 of the normalised file. */
  readonly file: string;
  readonly methods: readonly { readonly name: string; readonly says: string }[];
}

export interface Answer {
  readonly schema: "feedpath-answer-1";
  readonly question: string;
  /** "Where does my power go?" */
  readonly asked: string;
  readonly station: string;
  readonly band: string;
  /** Hz. */
  readonly frequency: number;
  readonly parameters: Readonly<Record<string, number | string | null>>;
  readonly headline: string;
  /** The headline again, with its numbers linked to `values`. */
  readonly headlinePhrases: readonly Phrase[];
  readonly verdict: Verdict | null;
  /** One or two sentences after the verdict word. */
  readonly verdictPhrases: readonly Phrase[];
  readonly reasons: readonly {
    readonly says: string;
    readonly value: number;
    readonly limit: number;
    readonly unit: string;
    readonly source: string;
  }[];
  readonly next: string;
  readonly wouldSettle: string | null;
  readonly values: Readonly<Record<string, Value>>;
  readonly joints: readonly Joint[];
  readonly parts: readonly PartResult[];
  readonly tables: readonly Table[];
  /** Left out: none. */
  readonly grids?: readonly Grid[];
  readonly lobes: readonly Lobe[];
  readonly rulesOfThumb: readonly RuleOfThumb[];
  readonly mistakenIdea: { readonly idea: string; readonly refutation: string } | null;
  readonly assumptions: readonly {
    readonly name: string;
    readonly value: string;
    readonly reason: string;
    readonly place: string;
  }[];
  readonly uncertainties: readonly Uncertainty[];
  readonly readings: readonly ReadingComparison[];
  readonly cautions: readonly string[];
  readonly notCovered: readonly string[];
  readonly working: readonly WorkingStep[];
  readonly figures: readonly FigureListing[];
  readonly drawing: Drawing | null;
  readonly provenance: Provenance;
}

/** The question cannot be answered for this station (exit 3). */
export interface Refusal {
  readonly schema: "feedpath-answer-1";
  readonly question: string;
  readonly asked: string;
  readonly station: string;
  readonly refused: { readonly why: string; readonly wouldMakeItAnswerable: string };
}
