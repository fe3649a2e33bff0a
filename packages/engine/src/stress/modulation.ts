/** What a kind of sending makes of peak envelope power: its highest voltage, and its mean. */

export type Modulation = "SSB" | "AM" | "keyed" | "digital";

export interface ModulationFacts {
  /** Mean over peak envelope power while sending: low, usual, high. */
  readonly mean: { readonly low: number; readonly value: number; readonly high: number };
  readonly says: string;
  readonly source: string;
}

/**
 * The voltage rises to √2 times its rms value at peak envelope power with every one of them; they differ in the mean. AM with
 * full modulation: peak envelope power is 4 carriers, its mean by a tone 1.5 carriers.
 */
export const modulations: Readonly<Record<Modulation, ModulationFacts>> = {
  SSB: {
    mean: { low: 0.1, value: 0.2, high: 0.5 },
    says: "speech on single sideband; half with hard compression",
    source: "common practice, no source",
  },
  AM: {
    mean: { low: 0.25, value: 0.3, high: 0.375 },
    says: "amplitude modulation: a quarter is carrier, a tone that modulates fully makes it three eighths",
    source: "(1 + m²/2)/(1 + m)² for a tone; speech lies between (elementary)",
  },
  keyed: {
    mean: { low: 0.4, value: 0.44, high: 0.5 },
    says: "Morse by hand: the key is down 44 % of the time in the word PARIS",
    source: "22 of 50 units of PARIS (ITU-R M.1677 timing)",
  },
  digital: {
    mean: { low: 1, value: 1, high: 1 },
    says: "one steady carrier at a time: mean is peak",
    source: "constant envelope",
  },
};

/** Peak envelope power over carrier power at modulation depth `m` (0 to 1), and mean over carrier power, both by a tone. */
export const amplitudeModulation = (m: number): { readonly peak: number; readonly mean: number } => ({
  peak: (1 + m) ** 2,
  mean: 1 + m ** 2 / 2,
});
