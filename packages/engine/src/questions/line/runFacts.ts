/** What the run of a candidate weighs, costs and stands: null wherever it is not known. */
import type { LineEntry } from "../../lines/lineModel";
import type { Studied, Study } from "./study";
import { worstOf } from "./study";

export interface RunFacts {
  /** kg, m² seen by the wind, m (least radius), m over the jacket. */
  readonly weight: number | null;
  readonly windArea: number | null;
  readonly bendRadius: number | null;
  readonly jacket: number | null;
  /** Of the whole run, in the money of `PricedRuns`. */
  readonly price: number | null;
  /** Highest rms voltage along the line over the published rating, in its worst band; and the band's index. */
  readonly voltageShare: number | null;
  /** dB that it brings more than the present line in the band where that one brings least. */
  readonly gained: number;
  /** Price of one of these; null where it brings nothing, or has no price. */
  readonly perDecibel: number | null;
}

/** dB below which a gain is no ground for a price. */
const leastGain = 0.05;

/** Money of the first price there is: prices in another money are not compared. */
export const moneyOf = ({ all }: Study): string | null =>
  all.flatMap(({ candidate: { entry } }) => entry.price ?? [])[0]?.money ?? null;

export const priceOf = ({ price }: LineEntry, money: string | null, length: number): number | null =>
  price && price.money === money ? price.perMetre * length : null;

/** `length` in m. */
export function runFacts(study: Study, studied: Studied, length: number): RunFacts {
  const { entry, present } = studied.candidate;
  const jacket = entry.jacketDiameter ?? null;
  const gained = present ? 0 : gainedOver(study, studied);
  const price = priceOf(entry, moneyOf(study), length);
  const rating = entry.ratings?.voltage?.value ?? null;
  const highest = Math.max(...studied.rows.map((row) => row.highestVoltage));
  return {
    weight: entry.ratings?.weight ? entry.ratings.weight.value * length : null,
    windArea: jacket === null ? null : jacket * length,
    bendRadius: entry.ratings?.bendRadius?.value ?? null,
    jacket,
    price,
    voltageShare: rating === null ? null : highest / rating,
    gained,
    perDecibel: price !== null && gained > leastGain ? price / gained : null,
  };
}

/** In the worst band of the present line, dB. */
export function gainedOver({ present }: Study, studied: Studied): number {
  const at = worstOf(present);
  return 10 * Math.log10(studied.rows[at]!.watts / present.rows[at]!.watts);
}
