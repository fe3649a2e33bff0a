/** Headline, verdict and advice of `trim`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { fixedNumber, megahertz, plainNumber, swrText, watts } from "../quantity/format";
import { capital, linked, said } from "./phrases";

export interface TrimFacts {
  /** Wanted frequency, Hz. */
  readonly frequency: number;
  readonly limit: number;
  /** m: as the file has it, and for the lowest SWR at the transmitter, at the feed point, and for X = 0. */
  readonly present: number;
  readonly target: number | null;
  readonly targetAtFeedPoint: number | null;
  readonly resonance: number | null;
  /** Where wire comes off or on, each with its share of the change. */
  readonly ends: readonly { readonly place: string; readonly share: number }[];
  readonly swrNow: number;
  readonly swrBest: number | null;
  readonly wattsNow: number;
  readonly wattsBest: number | null;
  readonly wattsResonant: number | null;
  readonly swrResonant: number | null;
  readonly rated: number;
  /** W from the transmitter at the best length. */
  readonly delivered: number;
  readonly verdict: Verdict | null;
  /** Without a least SWR: the side to which it goes on falling; null where it does not. */
  readonly falls: "longer" | "shorter" | null;
  readonly span: { readonly from: number; readonly to: number };
  readonly tuner: string | null;
  readonly kilohertzPerCentimetre: number | null;
  readonly measured: MeasuredFacts | null;
}

export interface MeasuredFacts {
  readonly dip: number;
  readonly at: string;
  readonly says: string;
  /** Frequency of lowest SWR that was worked out for that joint at the present length, Hz. */
  readonly predicted: number | null;
  /** m, of the whole piece; null where it is too far off or the dip cannot be followed. */
  readonly change: number | null;
  /** m: length at which the model behaves as measured. */
  readonly equivalent: number | null;
  readonly far: boolean;
}

/** "12.6 cm", "84 cm": a tape is read to half a centimetre. */
export function centimetres(length: number): string {
  const cm = Math.abs(100 * length);
  return `${plainNumber(cm, cm < 9.95 ? 1 : 0)} cm`;
}

/** Change of the whole piece: as measured where something was, else as worked out; null without either. */
export function wholeChange(f: TrimFacts): number | null {
  if (f.measured) return f.measured.change;
  return f.target === null ? null : f.target - f.present;
}

/** "cut 12 cm from each leg", "add 3 cm to the first leg and 6 cm to the second leg". */
export function changeWords(change: number, ends: TrimFacts["ends"]): string {
  const [verb, word] = change < 0 ? ["cut", "from"] : ["add", "to"];
  const each = ends.map((e) => `${centimetres(change * e.share)} ${word} ${e.place}`);
  return `${verb} ${each.join(" and ")}`;
}

/** The same with its numbers tied to a value. */
function changePhrases(change: number, ends: TrimFacts["ends"], short: boolean): Phrase[] {
  if (ends.length !== 1) return [said(short ? shortWords(change, ends) : changeWords(change, ends))];
  const [end] = ends;
  const [verb, word] = change < 0 ? ["cut", "from"] : ["add", "to"];
  return [
    said(`${verb} `),
    linked(centimetres(change * end!.share), "changeAtEachEnd"),
    said(` ${word} ${end!.place.replace(/ of .*$/, "")}`),
  ];
}

/** "cut 3 cm and 6 cm": first leg first. */
const shortWords = (change: number, ends: TrimFacts["ends"]): string =>
  `${change < 0 ? "cut" : "add"} ${ends.map((e) => centimetres(change * e.share)).join(" and ")}`;

/** Watts that the best length brings over the present one, as a share of the transmitter's, from which it is worth the climb. Our rule. */
export const worthwhileShare = 0.01;
/** Changes below this share of the length are below what a tape and the wind leave. */
const leastChange = 5e-4;

export const gainedWatts = (f: TrimFacts): number => (f.wattsBest ?? f.wattsNow) - f.wattsNow;
export const leaveIt = (f: TrimFacts): boolean =>
  f.measured === null && f.verdict === "good" && gainedWatts(f) < worthwhileShare * f.delivered;

export function trimHeadline(f: TrimFacts): Phrase[] {
  if (f.measured?.far) return [said("What was measured lies too far off to be trimmed.")];
  const change = wholeChange(f);
  const own = f.tuner === null ? "" : "Without the tuner: ";
  if (change === null)
    return [
      said(
        f.measured
          ? "What was measured cannot be turned into a length here."
          : `${own || "With these parts "}no length near this one gives a lowest SWR.`,
      ),
    ];
  if (f.measured) {
    if (Math.abs(change) < leastChange * f.present) return [said("As measured it is right: leave the length.")];
    return [said("As measured: "), ...changePhrases(change, f.ends, true), said(".")];
  }
  const length = linked(`${plainNumber(f.target!, 1)} m`, "lengthForLowestSwr");
  if (leaveIt(f)) {
    const more = gainedWatts(f);
    if (more < 0.05) return [said("Leave it: no other length brings more watts.")];
    return [said("Leave it: "), length, said(" would bring "), linked(watts(more), "wattsGained"), said(" more.")];
  }
  if (Math.abs(change) < leastChange * f.present) return [said("Leave it: "), length, said(" is right.")];
  const make = own === "" ? "Make it " : `${own}make it `;
  if (own !== "") return [said(make), length, said(" long.")];
  return [said(make), length, said(" long: "), ...changePhrases(change, f.ends, true), said(".")];
}

export function trimVerdict(f: TrimFacts): Phrase[] {
  return [...measuredPhrases(f), ...lengthPhrases(f), said(trimAdvice(f))];
}

function measuredPhrases(f: TrimFacts): Phrase[] {
  const { measured } = f;
  if (!measured) return [];
  const predicted =
    measured.predicted === null ? "" : `; worked out for ${metres3(f.present)}: ${megahertz(measured.predicted)}`;
  return [said(`Lowest SWR ${measured.says} at ${megahertz(measured.dip)}${predicted}. `)];
}

/** Lengths are told to the centimetre. */
export const metres3 = (length: number): string => `${fixedNumber(length, length < 1 ? 3 : 2)} m`;

function lengthPhrases(f: TrimFacts): Phrase[] {
  if (f.target === null || f.swrBest === null) {
    const span = `from ${metres3(f.span.from)} to ${metres3(f.span.to)}`;
    const where = f.falls === null ? "" : `; it goes on falling towards ${f.falls} wire`;
    return [said(`At ${megahertz(f.frequency)} the SWR has no lowest place ${span}${where}. `)];
  }
  const resonant = f.resonance === null ? "" : `; X = 0 at the wire is at ${metres3(f.resonance)}`;
  return [
    said(`At ${megahertz(f.frequency)} the SWR is `),
    f.measured?.equivalent == null
      ? linked(swrText(f.swrNow), "swrAtTransmitter")
      : linked(swrText(f.swrNow), "swrAsMeasured"),
    said(f.measured?.equivalent == null ? " now and " : " with a wire that behaves like that, and "),
    linked(swrText(f.swrBest), "lowestSwrByTrimming"),
    said(` at ${metres3(f.target)}${resonant}. `),
  ];
}

/** Share of a cut that is done at first. */
export const firstStep = 2 / 3;
/** Wire added beyond what is worked out, to be folded back. */
const spare = 1.5;

export function trimAdvice(f: TrimFacts): string {
  if (f.measured?.far)
    return "Do not cut: look for another cause first, such as a leg that has come off, another resonance, or a length that is not as in the file.";
  if (f.measured && f.measured.change === null)
    return "Do not cut yet: sweep at the feed point, or measure where the SWR is lowest nearer to the wanted frequency.";
  if (leaveIt(f)) return "Leave it.";
  const change = wholeChange(f);
  if (change === null)
    return f.tuner === null
      ? "Change what lies between: this is a task for a transformer or another line, not for the cutters."
      : "Leave the length: the tuner does the matching here.";
  if (Math.abs(change) < leastChange * f.present) return "Leave the length.";
  if (f.tuner !== null) return "Leave the length unless the tuner finds no match: then change it and tune again.";
  const limit =
    f.swrBest !== null && f.swrBest >= f.limit
      ? ` Trimming alone does not bring it below ${plainNumber(f.limit, 1)}: that takes a match.`
      : "";
  return `${stepAdvice(change, f.ends)}${limit}`;
}

/** Masts, loops and tubes are not folded back. */
const foldable = (ends: TrimFacts["ends"]): boolean =>
  ends.every(({ place }) => !/^the (top|loop)$|driven element$/.test(place));

function stepAdvice(change: number, ends: TrimFacts["ends"]): string {
  const rest = "measure again, and take the rest from the table.";
  if (change < 0) {
    const first = changeWords(change * firstStep, ends);
    if (!foldable(ends)) return `First ${first}, two thirds of it; ${rest}`;
    const fold = first.replace("cut", "fold back").replaceAll(" from ", " at ");
    return `First ${fold}, two thirds of it, without cutting; ${rest}`;
  }
  if (!foldable(ends)) return `${capital(changeWords(change, ends))}; ${rest}`;
  const more = changeWords(change * spare, ends);
  return `First ${more}, half as much again as worked out, and fold back what is too long; measure before anything is cut.`;
}

export const trimReasons = (f: TrimFacts): string =>
  `SWR at the transmitter at ${megahertz(f.frequency)} as the wire is now`;
