/** An antenna to begin with: its usual dimensions at a frequency, and how it is usually fed. Types only. */
import type { Antenna } from "../station/antennaDescription";

/** What leads to the feed point. */
export type Feeding =
  /** Coaxial line and a choke. */
  | { readonly kind: "line" }
  /** The same with a balun or a transformer from 50 ohm to `ohms` at the feed point. */
  | { readonly kind: "balun" | "transformer"; readonly ohms: number }
  | { readonly kind: "tuner at the antenna" }
  /** A balanced tuner indoors and a pair line up to the antenna. */
  | { readonly kind: "tuner and pair line" }
  /** Coaxial line to the feed of this name; the others hang on it by lines of their own. */
  | { readonly kind: "line to one feed"; readonly feed: string }
  /** A tee, and from it a line of so many electrical wavelengths to each feed. */
  | { readonly kind: "tee"; readonly wavelengths: Readonly<Record<string, number>> };

export interface Starter {
  /** The trade's plain term. */
  readonly name: string;
  /** What it is, in one sentence. */
  readonly says: string;
  /** Where the usual dimensions come from. */
  readonly rule: string;
  readonly feeding: Feeding;
  /** The antenna with the usual dimensions for a frequency in Hz. */
  readonly at: (frequency: number) => Antenna;
}
