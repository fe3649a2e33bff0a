/** What `listen` takes from the question, from the file, or for granted. */

import type { NoiseClass } from "../../noise/externalNoise";
import { noiseClassNames } from "../../noise/externalNoise";
import { referenceTemperature } from "../../noise/systemNoise";
import { fixedNumber, plainNumber, withPrefix } from "../../quantity/format";
import { between, exactly, type Quantity } from "../../quantity/quantity";
import type { Assumption, Station } from "../../station/station";
import type { ParameterDefinition, Parameters } from "../common/question";

export interface Listening {
  readonly place: NoiseClass;
  /** Kinds of place it may be: one where it is known. */
  readonly places: readonly NoiseClass[];
  /** dB. */
  readonly receiver: Quantity;
  /** Hz. */
  readonly bandwidth: number;
  /** dB both. */
  readonly preamplifier: { readonly noise: number; readonly gain: number };
  /** S-units that the asker's meter shows as noise; null where nothing is said. */
  readonly seen: number | null;
  /** K of antenna, soil and lines that say nothing of their own. */
  readonly temperature: number;
  readonly assumed: readonly Assumption[];
}

/** dB: what receivers have between a good one with its own preamplifier and a poor one (common practice, no source). */
const usualReceiver = between(5, 15, "assumed");
/** Hz: one voice channel. */
const usualBandwidth = 2400;
const usualPreamplifier = { noise: 1, gain: 18 };

const assumption = (place: string, name: string, value: string, reason: string): Assumption => ({
  place,
  name,
  value,
  reason,
});

export function listening(station: Station, parameters: Parameters): Listening {
  const number = (name: string): number | null => {
    const value = parameters[name];
    return typeof value === "number" ? value : null;
  };
  const assumed: Assumption[] = [];
  const place = placeOf(station, parameters, assumed);
  const asked = number("receiverNoiseFigure");
  const stated = asked === null ? station.transmitter.noiseFigure : exactly(asked);
  if (stated === null) {
    assumed.push(
      assumption(
        "transmitter.noiseFigure",
        "noise figure of the receiver",
        `${plainNumber(usualReceiver.value, 0)} dB (${plainNumber(usualReceiver.low, 0)} to ${plainNumber(usualReceiver.high, 0)} dB)`,
        "not given: what receivers usually have (common practice, no source); write noise figure under transmitter",
      ),
    );
  }
  const air = station.site?.airTemperature ?? null;
  if (air === null) {
    assumed.push(
      assumption(
        "site.airTemperature",
        "temperature of antenna, soil and lines",
        `${fixedNumber(referenceTemperature - 273.15, 0)} °C`,
        "not given: the reference temperature of noise figures",
      ),
    );
  }
  return {
    ...place,
    receiver: stated ?? usualReceiver,
    bandwidth: number("bandwidth") ?? usualBandwidth,
    preamplifier: {
      noise: number("noiseFigureOfPreamplifier") ?? usualPreamplifier.noise,
      gain: number("gainOfPreamplifier") ?? usualPreamplifier.gain,
    },
    seen: number("meterReading"),
    temperature: air?.value ?? referenceTemperature,
    assumed,
  };
}

function placeOf(station: Station, parameters: Parameters, assumed: Assumption[]): Pick<Listening, "place" | "places"> {
  const asked = noiseClassNames.find((name) => name === parameters.noisePlace);
  const known = asked ?? station.site?.noise ?? null;
  if (known !== null) return { place: known, places: [known] };
  const reason =
    "not given: the middle of four kinds (ITU-R P.372); the answer's range holds all of them. Write noise under site";
  assumed.push(assumption("site.noise", "kind of place by its radio noise", "residential", reason));
  return { place: "residential", places: noiseClassNames };
}

export const listenParameters: readonly ParameterDefinition[] = [
  {
    name: "noisePlace",
    title: "kind of place",
    dimension: "word",
    words: noiseClassNames,
    least: 0,
    most: 0,
    otherwise: "the file's `site`, else residential",
  },
  {
    name: "receiverNoiseFigure",
    title: "noise figure of the receiver",
    dimension: "decibels",
    words: [],
    least: 0,
    most: 40,
    otherwise: "the file's `transmitter`, else 10 dB, between 5 dB and 15 dB",
  },
  {
    name: "bandwidth",
    title: "bandwidth listened with",
    dimension: "frequency",
    words: [],
    least: 1,
    most: 1e6,
    otherwise: withPrefix(usualBandwidth, "Hz"),
  },
  {
    name: "meterReading",
    title: "noise on your S-meter, in S-units",
    dimension: "none",
    words: [],
    least: 0,
    most: 20,
    otherwise: "nothing read",
  },
  {
    name: "noiseFigureOfPreamplifier",
    title: "noise figure of a preamplifier",
    dimension: "decibels",
    words: [],
    least: 0,
    most: 20,
    otherwise: `${usualPreamplifier.noise} dB`,
  },
  {
    name: "gainOfPreamplifier",
    title: "gain of that preamplifier",
    dimension: "decibels",
    words: [],
    least: 3,
    most: 50,
    otherwise: `${usualPreamplifier.gain} dB`,
  },
];
