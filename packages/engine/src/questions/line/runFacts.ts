/** What the run of a candidate weighs, costs and stands: null wherever it is not known. */
import type { LineEntry } from "../../lines/lineModel";
import { powerMargin, voltageUse } from "./bearing";
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
  /** Highest peak voltage along the line over what it stands, in its worst band, and what that limit is. */
  readonly voltageShare: number | null;
  readonly voltageSays: string;
  /** Times the mean power may be raised in the band that heats it most. */
  readonly powerMargin: number | null;
  /** dB of signal to noise that the path takes on receiving, in the band where it takes most. */
  readonly receive: number | null;
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
  const highest = Math.max(...studied.rows.map((row) => row.highestVoltage));
  const voltage = voltageUse(entry, highest, study.around);
  return {
    weight: entry.ratings?.weight ? entry.ratings.weight.value * length : null,
    windArea: jacket === null ? null : jacket * length,
    bendRadius: entry.ratings?.bendRadius?.value ?? null,
    jacket,
    price,
    voltageShare: voltage?.share ?? null,
    voltageSays: voltage?.limit.says ?? "",
    powerMargin: marginOf(study, studied, length),
    receive: worstReceive(studied),
    gained,
    perDecibel: price !== null && gained > leastGain ? price / gained : null,
  };
}

/** The least of all bands. */
function marginOf({ around, excess }: Study, { candidate, rows }: Studied, length: number): number | null {
  const all = rows.map(({ band, wave }) =>
    powerMargin(candidate.entry, around, {
      frequency: band.frequency.value,
      wave,
      length,
      excess: candidate.present ? excess : 0,
    }),
  );
  return all.some((one) => one === null) ? null : Math.min(...all.flatMap((one) => one ?? []));
}

/** Null where one band's noise is not known. */
function worstReceive({ rows }: Studied): number | null {
  const all = rows.map((row) => row.receive);
  return all.some((one) => one === null) ? null : Math.max(...all.flatMap((one) => one ?? []));
}

/** In the worst band of the present line, dB. */
function gainedOver({ present }: Study, studied: Studied): number {
  const at = worstOf(present);
  return 10 * Math.log10(studied.rows[at]!.watts / present.rows[at]!.watts);
}
