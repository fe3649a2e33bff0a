/** The one measurement that would narrow the margin most. */
import type { Uncertainty } from "../../answer/answer";
import { celsius, minutes, placeOn, type StressFacts, volts } from "../../words/stress";
import { wouldSettle } from "../common/settle";
import type { Study } from "./study";

/** A reading of the jacket says nothing below this rise, K. */
const readable = 5;

export function settleLimits(study: Study, unknown: Uncertainty | undefined, f: StressFacts): string | null {
  if (!unknown) return null;
  const own = study.doubts.some((doubt) => doubt.place === unknown.place);
  if (!own) return wouldSettle(study.worked, unknown);
  const { hot } = f;
  const air = study.conditions.air.temperature - 273.15;
  if (f.first.of === "temperature" && hot && hot.jacket - air > readable)
    return `Tape a thermometer to the jacket of ${hot.name} ${placeOn(hot.at, hot.length)} and send for ${minutes(3 * hot.timeConstant)}: with air of ${celsius(air)} this answer expects ${celsius(hot.jacket)} there.`;
  if (unknown.place === "transmitter.duty")
    return "Read the mean power with a meter that averages, or the current the set takes, while sending as usual.";
  // What hardly warms, or is far from its limit, no thermometer tells.
  if (f.verdict === "good" || (f.first.of === "glow" && f.first.name === "")) return null;
  if (f.first.of === "temperature" || f.first.of === "heat")
    return "Send as usual for half an hour, switch off, and read with a thermometer how warm it has become.";
  return `Only a test of the part itself at ${volts(f.first.limit)} would: its maker's figure for voltage is the next best.`;
}
