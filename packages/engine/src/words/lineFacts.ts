/** The facts that the sentences of `line` are made of. */
import type { Verdict } from "../answer/answer";

/** A line in the path, in the band where the present one brings least. */
export interface LineInPath {
  readonly name: string;
  /** W into the antenna. */
  readonly watts: number;
  /** dB at the real load, and of it what the mismatch adds. */
  readonly loss: number;
  readonly added: number;
  /** At the set, or at the tuner before the line. */
  readonly swrSeen: number;
  /** W that the set delivers into it. */
  readonly delivered: number;
  /** dB more than the present line. */
  readonly gained: number;
  /** Of the voltage it stands, in its worst band, and what happens there; null where that is not known. */
  readonly voltageShare: number | null;
  readonly voltageSays: string;
  /** Times the mean power may be raised; dB of signal to noise that the path takes on receiving. Worst bands; null: not known. */
  readonly powerMargin: number | null;
  readonly receive: number | null;
  /** Of the whole run, and the least radius of a bend; null where it is not known. kg, m, as written. */
  readonly weight: number | null;
  readonly bendRadius: number | null;
  readonly price: number | null;
  /** Price of each dB it brings more. */
  readonly perDecibel: number | null;
}

export interface LineFacts {
  readonly verdict: Verdict;
  readonly matters: string;
  /** What was asked for instead, of which nothing is known; null elsewhere. */
  readonly notKnown: string | null;
  /** First by what matters. */
  readonly first: LineInPath;
  readonly present: LineInPath;
  /** The one that brings most of those that would stand there, and the least that is worth the change. */
  readonly best: LineInPath | null;
  readonly worth: LineInPath | null;
  /** The same, or the first by what else matters. */
  readonly proposal: LineInPath | null;
  /** The cheap line of another impedance; null where the list has none, or pairs lie there. */
  readonly cheap: LineInPath | null;
  /** The usual coaxial line where a pair lies; null elsewhere. */
  readonly coaxial: LineInPath | null;
  /** Name of the band where the present line brings least; null for a station of one band. */
  readonly worstBand: string | null;
  /** W in the present line there, and the band in which it takes least. */
  readonly heat: number;
  readonly quietest: { readonly band: string; readonly swrOnLine: number; readonly heat: number } | null;
  /** W from the transmitter there, and SWR on the line's own impedance at the antenna. */
  readonly delivered: number;
  readonly swrOnLine: number;
  readonly behindTuner: boolean;
  /** m */
  readonly length: number;
  readonly money: string | null;
  readonly others: number;
  /** SWR at the set by length alone, and watts into the antenna, on the length studied. */
  readonly byLength: ByLength | null;
}

export interface ByLength {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly onRatedLow: number;
  readonly onRatedHigh: number;
  /** dB that the mismatch adds at most at any of the lengths; W that the set delivers at the worst, and into its rated load. */
  readonly mostAdded: number;
  readonly leastDelivered: number;
  readonly ratedPower: number;
  readonly rated: number;
  /** m */
  readonly halfWave: number;
  /** The line that lies there now. */
  readonly present: boolean;
  /** What reads the SWR: the set, or the tuner. */
  readonly behindTuner: boolean;
}

/** dB from which another line is told as worth it, and from which the present one is trouble: our rules. */
export const worthBuying = 1;
export const troubleFrom = 3;

/** The present line is asked for more than it stands or bears. */
export const isOverloaded = ({ present }: LineFacts): boolean =>
  (present.voltageShare ?? 0) > 1 || (present.powerMargin ?? 1) < 1;

export const onBand = (f: LineFacts): string => (f.worstBand === null ? "" : ` on ${f.worstBand}`);
