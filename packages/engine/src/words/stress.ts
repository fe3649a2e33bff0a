/** The sentences of `limits`: what fails first, at what power, and what to do. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { plainNumber, significantNumber, withPrefix } from "../quantity/format";
import { capital, linked, said } from "./phrases";

export interface FirstFacts {
  /** "line 1", "the tuner"; "" for the antenna's wires. */
  readonly name: string;
  readonly of: "voltage" | "glow" | "sparkover" | "temperature" | "heat";
  readonly happens: string;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  /** m from the part's end towards the transmitter; null without length. */
  readonly at: number | null;
  /** m, of the part. */
  readonly length: number;
  readonly source: string;
}

export interface StressFacts {
  /** W, peak envelope, as it is. */
  readonly power: number;
  /** Mean over peak envelope power while sending. */
  readonly duty: number;
  readonly first: FirstFacts;
  /** W at which it happens: as taken, and the ends of what is uncertain. */
  readonly failing: number;
  readonly failingLow: number;
  readonly failingHigh: number;
  readonly verdict: Verdict;
  readonly endless: boolean;
  /** The line that gets hottest for its insulation; null where none is worked out. */
  readonly hot: HotFacts | null;
  /** SWR on the part's own line; null where it is none. */
  readonly swrOnLine: number | null;
  /** What the arrestor or connector should stand. */
  readonly peak: number;
  /** The least change of the line behind the tuner (m, negative: shorter) that halves its voltage, or makes it least; null without a tuner on a line. */
  readonly added: { readonly metres: number; readonly volts: number; readonly now: number } | null;
}

export interface HotFacts {
  readonly name: string;
  readonly designation: string;
  /** °C of conductor, jacket, air. */
  readonly conductor: number;
  readonly jacket: number;
  readonly limit: number;
  /** m from the line's end at the transmitter. */
  readonly at: number;
  readonly length: number;
  /** °C with the same power and its far end matched. */
  readonly matched: number;
  /** W/m at the hottest place, mean while sending. */
  readonly watts: number;
  /** W of peak envelope power that bring it to its limit. */
  readonly failing: number;
  /** s. */
  readonly timeConstant: number;
}

/** "480 W", "1.2 kW": two figures, as such limits are known. */
export const roughWatts = (watts: number): string => withPrefix(Number(watts.toPrecision(2)), "W", 2);

export const volts = (value: number): string =>
  value >= 999.5 ? `${significantNumber(value / 1000, 2)} kV` : `${plainNumber(value, 0)} V`;

/** Beyond 500 °C no cable is left to be told of. */
export const celsius = (degrees: number): string =>
  degrees > 500 ? "more than 500 °C" : `${plainNumber(degrees, 0)} °C`;

export function minutes(seconds: number): string {
  if (seconds < 90) return `${plainNumber(seconds, 0)} s`;
  return seconds < 5400 ? `${plainNumber(seconds / 60, 0)} min` : `${plainNumber(seconds / 3600, 1)} h`;
}

const verbs: Readonly<Record<FirstFacts["of"], string>> = {
  voltage: "may arc",
  glow: "begins to glow",
  sparkover: "fires",
  temperature: "overheats",
  heat: "overheats",
};

const wires = "the antenna wire";
/** A part as a sentence names it. */
export const nameOf = (first: FirstFacts): string => (first.name === "" ? wires : first.name);

/** What never gets near a limit is told only up to here, W. */
const beyondTelling = 1e6;

export function stressHeadline(f: StressFacts): Phrase[] {
  const near = Math.abs(f.failing / f.power - 1) < 0.1;
  const at = linked(near ? withPrefix(f.failing, "W", 3) : roughWatts(f.failing), "powerAtFirstLimit");
  if (f.failing < f.power)
    return [
      linked(withPrefix(f.power, "W", 3), "powerFromTransmitter"),
      said(" is too much: above "),
      at,
      said(` ${nameOf(f.first)} ${verbs[f.first.of]}.`),
    ];
  if (f.failing > beyondTelling) return [said("Nothing with a known limit comes anywhere near it.")];
  return [said("Below "), at, said(" peak nothing with a known limit arcs or overheats.")];
}

/** "3.1 m from its start", "at its start", "at its far end". */
export const placeOn = (at: number, length: number): string =>
  at < 0.02 * length
    ? "at its end towards the transmitter"
    : at > 0.98 * length
      ? "at its end towards the antenna"
      : `${plainNumber(at, 1)} m from its end towards the transmitter`;

function wherePhrase({ at, length }: FirstFacts): string {
  return at === null || length === 0 ? "" : `, ${placeOn(at, length)}`;
}

/** What warms is the mean: said where heat comes first. */
function meanSays({ first, duty }: StressFacts): string {
  if (first.of !== "temperature" && first.of !== "heat") return "";
  return duty > 0.995 ? ", a steady carrier," : `, ${plainNumber(100 * duty, 0)} % of it in the mean while sending,`;
}

export function stressVerdict(f: StressFacts): Phrase[] {
  const { first } = f;
  const span =
    f.failingHigh - f.failingLow > 0.1 * f.failing
      ? ` (${roughWatts(f.failingLow)} to ${roughWatts(f.failingHigh)} with what is not known)`
      : "";
  const now = `now ${amount(first.value, first.unit)} of ${amount(first.limit, first.unit)}`;
  const who = first.name === "" ? "The antenna's own wires come" : `${capital(first.name)} comes`;
  return [
    said(`${who} first: at `),
    linked(roughWatts(f.failing), "powerAtFirstLimit"),
    said(` peak envelope${span}${meanSays(f)} ${first.happens}${wherePhrase(first)}; ${now}.`),
  ];
}

/** "230 V peak", "52 °C", "0.3 W". */
export function amount(value: number, unit: string): string {
  if (unit === "°C") return celsius(value);
  if (unit === "V peak") return `${volts(value)} peak`;
  const figures = value >= 100 ? plainNumber(value, 0) : significantNumber(value, 2);
  return `${figures} ${unit}`;
}
