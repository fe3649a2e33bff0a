/** The first limit on every band of the station: what is fine on one may fail on the next. */
import type { Table } from "../../answer/answer";
import { driveSolved } from "../../chain/driveSolved";
import { requestAt } from "../../chain/solveRequest";
import { workPoint } from "../../chain/workPoint";
import type { Band } from "../../station/station";
import type { Progress } from "../common/question";
import { firstToFail, type LimitFact, marginOf } from "./limitFact";
import { limitsOf } from "./limitsOf";
import type { Study } from "./study";

export interface OnBand {
  readonly band: Band;
  /** W from the transmitter there, peak envelope. */
  readonly power: number;
  readonly first: LimitFact;
}

/** In file order, the band asked for among them; none for a station of one band. Bands that cannot be worked out are left out. */
export function* onEveryBand({ worked, conditions }: Study): Generator<Progress, OnBand[]> {
  const { station, solver } = worked;
  if (station.bands.length < 2) return [];
  const found: OnBand[] = [];
  const ahead = station.bands.map((band) => requestAt(station, band.frequency.value));
  for (const [done, band] of station.bands.entries()) {
    yield { done, of: station.bands.length, what: "bands", ahead };
    const point =
      band === worked.band
        ? worked.point
        : workPoint(station, band, band.frequency.value, solver, { tuner: "matched" });
    if ("refused" in point) continue;
    const driven = driveSolved(point.antenna, point.portVoltages);
    const [first] = driven ? firstToFail(limitsOf(point, driven, conditions)) : [];
    if (first) found.push({ band, power: point.powerFromTransmitter, first });
  }
  return found;
}

/** None for a station of one band. */
export function bandTables(found: readonly OnBand[]): Table[] {
  if (found.length < 2) return [];
  const column = (unit: string, of: (one: OnBand) => number) => ({ unit, values: found.map(of) });
  return [
    {
      name: "firstLimitByBand",
      axis: "frequency",
      columns: {
        frequency: column("MHz", ({ band }) => band.frequency.value / 1e6),
        powerAtFirstLimit: column("W", ({ power, first }) => power * 10 ** (marginOf(first.times) / 10)),
        leastMargin: column("dB", ({ first }) => marginOf(first.times)),
        powerFromTransmitter: column("W", ({ power }) => power),
      },
    },
  ];
}
