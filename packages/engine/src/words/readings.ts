/** A reading against its prediction, in one or two sentences. English. */
import { plainNumber, swrText } from "../quantity/format";

export interface ReadingFacts {
  readonly at: string;
  readonly measured: number;
  readonly predicted: number;
  readonly low: number;
  readonly high: number;
  readonly shown: { readonly low: number; readonly high: number | null } | null;
  readonly directivity: number | null;
  readonly agrees: boolean;
}

export function readingSentence(f: ReadingFacts): string {
  const span = f.high - f.low > 0.05 ? ` (${swrText(f.low)} to ${swrText(f.high)} with what is not known)` : "";
  const prediction = `The ${f.at} reads ${swrText(f.measured)}; worked out for this joint: ${swrText(f.predicted)}${span}.`;
  const meter =
    f.shown && f.directivity !== null
      ? ` A meter of ${plainNumber(f.directivity, 0)} dB directivity may show ${swrText(f.shown.low)} to ${swrText(f.shown.high)} for that.`
      : "";
  const verdict = f.agrees
    ? " They agree within what is known."
    : f.directivity === null
      ? " They differ by more than the file explains; how well the meter reads is not known (`directivity`)."
      : " They do not agree: the station is not quite as the file says, or something is missing from it.";
  return `${prediction}${meter}${verdict}`;
}
