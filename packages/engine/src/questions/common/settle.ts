/** The one measurement that would narrow an answer most; for the soil, with what it would show. */
import type { Uncertainty } from "../../answer/answer";
import { workPoint } from "../../chain/workPoint";
import { plainNumber } from "../../quantity/format";
import type { Station } from "../../station/station";
import { movedStation } from "../../station/uncertainInputs";
import { settledBy, soilSettledBy } from "../../words/inputs";
import { presentHeight, usualHeights } from "./heights";
import type { Worked } from "./worked";

/** Ohms by which the ends must differ for the reading to tell them apart with ordinary means. */
const tellable = 3;

/** `dominant` is the uncertainty that matters most, or nothing. */
export function wouldSettle(worked: Worked, dominant: Uncertainty | undefined): string | null {
  if (!dominant) return null;
  const effect = worked.bounds.effects.find((e) => e.input.place === dominant.place);
  if (!effect || !dominant.place.startsWith("ground")) return settledBy(dominant);
  const now = presentHeight(worked);
  const onRadials = worked.station.antennas.some((a) => a.radials !== null);
  const at = onRadials ? now : Math.min(now, Math.ceil(2 * usualHeights(worked).from) / 2);
  const read = (station: Station) => feedResistance(worked, station, at - now);
  const [low, taken, high] = [
    read(movedStation(worked.station, effect.input, "low")),
    read(worked.station),
    read(movedStation(worked.station, effect.input, "high")),
  ];
  if (low === null || taken === null || high === null || Math.abs(high - low) < tellable) return settledBy(dominant);
  const ohm = (r: number) => `${plainNumber(r, 0)} Ω`;
  return soilSettledBy({ height: at < now ? at : null, low: ohm(low), taken: ohm(taken), high: ohm(high) });
}

function feedResistance(worked: Worked, station: Station, lift: number): number | null {
  const band = station.bands[worked.station.bands.indexOf(worked.band)]!;
  const point = workPoint(station, band, worked.frequency, worked.solver, { tuner: "through", lift });
  return "refused" in point ? null : point.joints.find((j) => j.name.startsWith("feed point"))!.impedance.re;
}
