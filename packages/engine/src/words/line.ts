/** Headline, verdict and advice of `line`. English. */
import type { Phrase } from "../answer/answer";
import { decibels, metres, plainNumber, significantNumber, swrText, wholeWatts } from "../quantity/format";
import { lineAdvice } from "./lineAdvice";
import { isOverloaded, type LineFacts } from "./lineFacts";
import { linked, said } from "./phrases";

/** A name of at most four words fits into a headline. */
const shortName = (name: string): string => (name.split(/\s+/).length <= 4 ? `the ${name}` : "the line");
const bare = (name: string): string => (shortName(name) === "the line" ? "another line" : name);

export function lineHeadline(f: LineFacts): Phrase[] {
  if (isOverloaded(f)) return overloadHeadline(f);
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

function overloadHeadline({ present }: LineFacts): Phrase[] {
  const name = shortName(present.name) === "the line" ? "This line" : present.name;
  if ((present.powerMargin ?? 1) < 1)
    return [
      said(`${name} bears only `),
      linked(present.powerMargin! < 0.01 ? "under 1 % of" : sharePhrase(present.powerMargin!), "powerMargin"),
      said(" this power: replace it."),
    ];
  return [
    said(`${name} gets `),
    linked(sharePhrase(present.voltageShare!), "voltageUsed"),
    said(" its voltage: replace it."),
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
      : `, and would bear ${timesSay(cheap.powerMargin)} this power`;
  return [
    said(`${capitalName(cheap.name)} would bring `),
    linked(wholeWatts(cheap.watts), "wattsOfCheap"),
    said(` (${differs}), with SWR `),
    linked(swrText(cheap.swrSeen), "swrOfCheap"),
    said(` at the ${f.behindTuner ? "tuner" : "set"}${down}${share}. `),
  ];
}

/** "60 % of"; from twice on as a multiple: "3 times". */
export const sharePhrase = (share: number): string =>
  share < 1.995 ? `${significantNumber(100 * share, 2)} % of` : timesSay(share);
/** "33 times"; beyond a thousand the number means nothing. */
const timesSay = (times: number): string => (times < 1000 ? `${significantNumber(times, 2)} times` : "over 1000 times");
const capitalName = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);
