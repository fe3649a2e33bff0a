/** What `listen` does not know beside the station: the place, the hour, the receiver. */
import type { Uncertainty } from "../../answer/answer";
import { externalNoise } from "../../noise/externalNoise";
import { plainNumber } from "../../quantity/format";
import { between, isUncertain } from "../../quantity/quantity";
import { combine, type InputEffect, type Numbers } from "../common/bounds";
import type { Worked } from "../common/worked";
import type { Listening } from "./parameters";
import { externalOf, type Heard, receptionOf, systemOf } from "./reception";

interface Doubt {
  readonly name: string;
  readonly place: string;
  readonly says: string;
  readonly low: Heard;
  readonly high: Heard;
}

function doubtsOf(listening: Listening, frequency: number): Doubt[] {
  const hour = externalNoise(listening.place, frequency);
  const decibels = (x: number): string => plainNumber(x, 0);
  const doubts: Doubt[] = [
    {
      name: "the noise within an hour",
      place: "site.noise.hour",
      says: `${decibels(hour.lower - hour.total)} to +${decibels(hour.upper - hour.total)} dB, deciles of ITU-R P.372`,
      low: { decile: "lower" },
      high: { decile: "upper" },
    },
  ];
  if (listening.places.length > 1) {
    const sorted = [...listening.places].sort(
      (a, b) => externalOf(listening, frequency, { place: a }) - externalOf(listening, frequency, { place: b }),
    );
    const [quietest, loudest] = [sorted[0]!, sorted.at(-1)!];
    const says = `${quietest} to ${loudest}`;
    const ends = { low: { place: quietest }, high: { place: loudest } };
    doubts.push({ name: "the kind of place", place: "site.noise", says, ...ends });
  }
  const { receiver } = listening;
  if (isUncertain(receiver)) {
    const says = `${decibels(receiver.low)} to ${decibels(receiver.high)} dB`;
    const ends = { low: { receiver: receiver.low }, high: { receiver: receiver.high } };
    doubts.push({ name: "the noise figure of the receiver", place: "transmitter.noiseFigure", says, ...ends });
  }
  return doubts;
}

/** The worked station with these doubts among its bounds, and what each says. */
export function withDoubt(worked: Worked, listening: Listening): { worked: Worked; says: ReadonlyMap<string, string> } {
  const { point, frequency, bounds } = worked;
  const radiated = worked.numbers.radiatedPower!;
  const of = (heard: Heard): Numbers => receptionOf(listening, frequency, systemOf(listening, point, radiated, heard));
  const doubts = doubtsOf(listening, frequency);
  const effects = doubts.map(
    ({ name, place, low, high }): InputEffect => ({
      input: { name, place, places: [], quantities: [between(0, 1)] },
      atLow: of(low),
      atHigh: of(high),
    }),
  );
  const all = [...bounds.effects, ...effects];
  return {
    worked: { ...worked, bounds: { ...bounds, ...combine(worked.numbers, all), effects: all } },
    says: new Map(doubts.map(({ place, says }) => [place, says])),
  };
}

/** Uncertainties of the frame, those of this file in their own words. */
export const inOwnWords = (uncertainties: readonly Uncertainty[], says: ReadonlyMap<string, string>): Uncertainty[] =>
  uncertainties.map((one) => ({ ...one, says: says.get(one.place) ?? one.says }));
