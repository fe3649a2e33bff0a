/** Headline, verdict and advice of `line`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { decibels, metres, plainNumber, significantNumber, swrText, wholeWatts } from "../quantity/format";
import { linked, said } from "./phrases";
import { asSUnits } from "./sUnits";

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

/** A name of at most four words fits into a headline. */
const shortName = (name: string): string => (name.split(/\s+/).length <= 4 ? `the ${name}` : "the line");
const bare = (name: string): string => (shortName(name) === "the line" ? "another line" : name);
export const onBand = (f: LineFacts): string => (f.worstBand === null ? "" : ` on ${f.worstBand}`);

export function lineHeadline(f: LineFacts): Phrase[] {
  if (f.matters !== "watts")
    return [
      said(`By ${f.matters} ${bare(f.first.name)} comes first: `),
      linked(wholeWatts(f.first.watts), "wattsOfFirst"),
      said(" arrive."),
    ];
  const { proposal } = f;
  if (proposal && proposal.gained > 0)
    return [
      said(`With ${bare(proposal.name)} `),
      linked(wholeWatts(proposal.watts - f.present.watts), "wattsMoreFromProposed"),
      said(" more reach the antenna."),
    ];
  return [
    said(`Keep ${shortName(f.present.name)}: `),
    linked(plainWatts(f.present.watts, f.delivered), "wattsOfPresent"),
    said(` of ${wholeWatts(f.delivered)} arrive.`),
  ];
}

/** The unit stands behind the second number; with it where the two differ in size. */
const plainWatts = (watts: number, of: number): string =>
  of >= 9.95 && watts >= 9.95 ? plainNumber(watts, 0) : wholeWatts(watts);

export function lineVerdict(f: LineFacts): Phrase[] {
  const { present } = f;
  const takes = `${f.worstBand === null ? "T" : `On ${f.worstBand}, its worst band, t`}he ${metres(f.length)} of ${present.name} take `;
  const mismatch = present.added > 0.05 ? `, ${decibels(present.added)} of it by mismatch` : "";
  return [
    said(takes),
    linked(wholeWatts(f.heat), "heatInPresent"),
    said(` of ${wholeWatts(f.delivered)} (${decibels(present.loss)}${mismatch}). `),
    ...cheapPhrases(f),
    said(lineAdvice(f)),
  ];
}

/** What the cheap line of another impedance really costs. */
function cheapPhrases(f: LineFacts): Phrase[] {
  const { cheap } = f;
  if (!cheap || cheap.name === f.present.name) return [];
  const differs =
    Math.abs(cheap.gained) < 0.05
      ? "the same"
      : `${decibels(Math.abs(cheap.gained))} ${cheap.gained > 0 ? "more" : "less"}`;
  const down =
    cheap.delivered < 0.97 * f.delivered ? `, for which the set gives only ${wholeWatts(cheap.delivered)}` : "";
  const share =
    cheap.powerMargin === null
      ? ". How much power it bears is not known"
      : `, and would bear ${significantNumber(cheap.powerMargin, 2)} times this power`;
  return [
    said(`${capitalName(cheap.name)} would bring `),
    linked(wholeWatts(cheap.watts), "wattsOfCheap"),
    said(` (${differs}), with SWR `),
    linked(swrText(cheap.swrSeen), "swrOfCheap"),
    said(` at the ${f.behindTuner ? "tuner" : "set"}${down}${share}. `),
  ];
}

export const sharePhrase = (share: number): string => `${significantNumber(100 * share, 2)} %`;
const capitalName = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

/** "3.1 kg, bends to 0.12 m, 45 EUR": what is known of a run. */
export function runWords(line: LineInPath, money: string | null): string {
  const known = [
    line.weight === null ? "" : `${significantNumber(line.weight, 2)} kg`,
    line.bendRadius === null ? "" : `bends to ${metres(line.bendRadius)}`,
    line.price === null || money === null ? "" : `${plainNumber(line.price, 0)} ${money}`,
  ].filter((text) => text !== "");
  return known.join(", ");
}

const measureNames: Readonly<Record<string, string>> = { bend: "least bend", wind: "diameter", receive: "noise" };

/** The one thing to do. */
export const lineAdvice = (f: LineFacts): string =>
  f.notKnown === null
    ? advice(f)
    : `${advice(f)} No line has a ${measureNames[f.notKnown] ?? f.notKnown} here, so watts decide: write it under \`lines\` in the file.`;

function advice(f: LineFacts): string {
  const { proposal } = f;
  if (proposal) {
    const run = runWords(proposal, f.money);
    const stands = proposal.voltageShare === null ? " What voltage it stands is not known here: look it up first." : "";
    return `Lay ${metres(f.length)} of ${proposal.name}${run === "" ? "" : ` (${run})`}: ${decibels(proposal.gained)} more${onBand(f)}, ${asSUnits(proposal.gained)}, on sending${receiveWords(f, proposal)}.${stands}`;
  }
  if (f.matters !== "watts") return byMeasure(f);
  if (f.others === 0) return "Keep it; name other lines to hold it against.";
  const { best } = f;
  if (!best) return `Keep it: no other line of the ${f.others} looked at would stand here as it is.`;
  return best.gained > 0.05
    ? `Keep it: even ${best.name}, which brings most of the ${f.others} others, would give ${decibels(best.gained)} more, ${asSUnits(best.gained)}.`
    : `Keep it: none of the ${f.others} other lines looked at brings more.`;
}

/** What it does for receiving: noise from outside falls with the signal. */
function receiveWords(f: LineFacts, other: LineInPath): string {
  if (f.present.receive === null || other.receive === null) return "";
  const gained = f.present.receive - other.receive;
  return gained < 0.1
    ? "; nothing that could be heard on receiving"
    : `, and ${decibels(gained)} less noise on receiving`;
}

function byMeasure(f: LineFacts): string {
  const { first } = f;
  if (first.name === f.present.name) return "Keep it: by that measure nothing comes before it.";
  const run = runWords(first, f.money);
  const differs =
    Math.abs(first.gained) < 0.05
      ? "no watts"
      : `${decibels(Math.abs(first.gained))} ${first.gained > 0 ? "more" : "less"}`;
  return `Take ${metres(f.length)} of ${first.name}${run === "" ? "" : ` (${run})`} if that is what matters: ${differs === "no watts" ? "it costs no watts" : `it brings ${differs}${onBand(f)}`}.`;
}
