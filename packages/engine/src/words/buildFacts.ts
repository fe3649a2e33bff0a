/** What the sentences of `build` are made of, and words they share. English. */
import { significantNumber, withPrefix } from "../quantity/format";

export interface BuildFacts {
  readonly designation: string;
  /** Hz, m, W. */
  readonly frequency: number;
  readonly length: number;
  readonly power: number;
  readonly powerThrough: number;
  /** dB/100 m. */
  readonly attenuation: number;
  /** dB/100 m over a new line, as the file says. */
  readonly excess: number;
  /** Of the attenuation, 0 to 1, in the conductors: of the route that splits it. */
  readonly conductorShare: number;
  readonly splitByBuild: boolean;
  readonly z0: { readonly re: number; readonly im: number };
  /** At the lowest frequency shown, by the route that reaches it. */
  readonly lowest: { readonly frequency: number; readonly z0: { readonly re: number; readonly im: number } };
  readonly velocityFactor: { readonly value: number; readonly low: number; readonly high: number };
  readonly loopResistance: number | null;
  readonly sheet: SheetWords | null;
  readonly build: BuildWords | null;
  readonly cutOff: { readonly frequency: number; readonly usualEstimate: number } | null;
  /** Whether voltages at which it fails are told. */
  readonly voltages: boolean;
  /** Velocity factor from a dip; null where nothing was measured. */
  readonly measured: {
    readonly value: number;
    readonly low: number;
    readonly high: number;
    /** By what is known of the line, at the dip. */
    readonly expected: { readonly value: number; readonly low: number; readonly high: number };
  } | null;
  /** K; `most` null where it is not known. */
  readonly temperature: { readonly asked: number; readonly most: number | null };
  /** Lines of the catalogue that measure alike, nearest first. */
  readonly similar: readonly string[];
  /** From two sweeps of the file, Hz, ohm, dB/m; null without. */
  readonly swept: {
    readonly frequency: number;
    readonly z0: { readonly re: number; readonly im: number };
    readonly attenuation: number;
    readonly velocityFactor: number;
  } | null;
}

export interface SheetWords {
  /** Hz. */
  readonly from: number;
  readonly to: number;
  /** The file's own, not of the catalogue. */
  readonly own: boolean;
  /** Relative. */
  readonly worstDeviation: number;
  readonly findings: readonly {
    readonly says: string;
    readonly suggestion: string | null;
    /** Hz, of the point it is about; null where it is about none or all. */
    readonly frequency: number | null;
  }[];
  /** Loss of the highest point, dB/100 m, and its frequency: what the root rule starts from. */
  readonly top: { readonly frequency: number; readonly attenuation: number };
}

export interface BuildWords {
  readonly kind: "coaxial" | "parallel-wire" | "twisted pair" | "wire over plane" | "four-wire" | "shielded pair";
  /** dB/100 m, and over the sheet's, relative; null where there is no sheet. */
  readonly attenuation: number;
  readonly powerThrough: number;
  readonly againstSheet: number | null;
  readonly impedance: number;
  /** Outer over inner diameter, or width over diameter, as measured with a caliper. */
  readonly ratio: number;
  /** Null where it does not fill all the field. */
  readonly permittivity: number | null;
  readonly insulation: string;
  /** Hz up to which a pair is followed; null for a coaxial line. */
  readonly pairsEnd: number | null;
}

/** What a nominal sheet is taken for, relative: MIL-DTL-17 lists. */
const nominalSheet = 0.15;

export const per100 = (attenuation: number): string => `${significantNumber(attenuation, 2)} dB per 100 m`;
export const hertz = (frequency: number): string => withPrefix(frequency, "Hz", 4);
export const lengthSays = (metres: number): string => `${significantNumber(metres, 3)} m`;

/** Whether the two routes part by more than a nominal sheet allows. */
export const routesPart = ({ againstSheet }: BuildWords): boolean =>
  againstSheet !== null && Math.abs(againstSheet) > nominalSheet;
