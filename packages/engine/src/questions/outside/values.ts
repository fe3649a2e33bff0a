/** The values of `outside`, those that carry a range among them. */
import type { Value } from "../../answer/answer";
import { speedOfLight } from "../../numerics/vacuum";
import { bestPlace, type OutsideFacts } from "../../words/outside";
import type { Numbers } from "../common/bounds";
import { complexValue, scalarValue, valuesOf } from "../common/values";
import type { Worked } from "../common/worked";
import type { Case } from "./comparison";
import { type Found, judgedShare } from "./facts";
import { noiseAsField } from "./noise";
import type { OutsideState } from "./state";

export const outsideUnits: Readonly<Record<string, string>> = {
  outsideShare: "%",
  outsideCurrent: "A",
  outsideCurrentAtHouse: "A",
  heatOnOutside: "W",
};

/** What is worked out again when an uncertain input is moved. */
export const outsideNumbers = (state: OutsideState, againstLine: boolean): Numbers => ({
  outsideShare: 100 * judgedShare(state, againstLine),
  outsideCurrent: state.largest.current,
  outsideCurrentAtHouse: state.house.current,
  heatOnOutside: (state.sheathHeat * state.point.powerIntoAntenna) / state.driven.powerIn,
});

export function outsideValues(found: Found, facts: OutsideFacts): Record<string, Value> {
  const { state, study, lengths, end } = found;
  const hottest = Math.max(0, ...facts.chokes.map((c) => c.mean));
  const best = bestPlace(facts);
  return {
    feedCurrent: scalarValue(state.feedCurrent, "A"),
    outsideCurrentAt: scalarValue(state.largest.at, "m"),
    lengthOfOutside: scalarValue(state.run.length, "m"),
    antennaCurrent: scalarValue(state.antennaCurrent, "A"),
    outsideShareOfFeedCurrent: scalarValue((100 * state.largest.current) / state.feedCurrent, "%"),
    heatInEarths: scalarValue(heatInEarths(state), "W"),
    chokeHeatOnAir: scalarValue(facts.chokes.length > 0 ? hottest : null, "W", "no choke is on the outside"),
    voltageAtTransmitter: scalarValue(end.volts, "V", end.reason),
    currentIntoTransmitterEarth: scalarValue(
      state.run.earthed === null ? null : end.current,
      "A",
      "the transmitter's end floats",
    ),
    resistanceNeeded: scalarValue(study?.ohmsNeeded ?? null, "ohm", "no resistance up to 100 kΩ is enough there"),
    bestChokePlace: scalarValue(best?.distance ?? null, "m", "no single choke brings the current below 5 %"),
    resistanceNeededAtBestPlace: scalarValue(
      best?.ohmsNeeded ?? null,
      "ohm",
      "no single choke brings the current below 5 %",
    ),
    worstReactance: scalarValue(study?.worst.reactance ?? null, "ohm", "no choke can be put on this line"),
    shareAtWorstReactance: scalarValue(study && 100 * study.worst.share, "%", "no choke can be put on this line"),
    worstExtraLength: scalarValue(lengths?.worst.extra ?? null, "m", "no other length can be worked out"),
    shareAtWorstLength: scalarValue(lengths && 100 * lengths.worst.share, "%", "no other length can be worked out"),
    gainAtElevation: scalarValue(found.gain, "dBi"),
    ...noiseValues(found),
    ...caseValues("WithPerfectChoke", found.compared.perfect, facts),
    ...caseValues("WithoutChokes", found.compared.none, facts),
  };
}

/** W beyond what the electrodes count as soil; an earth better than its electrode in this soil alone counts negative. */
function heatInEarths({ point, driven }: OutsideState): number {
  const sum = driven.closingHeat.reduce(
    (heat, w, i) => heat + (point.antenna.build.closings[i]!.kind === "earth" ? w : 0),
    0,
  );
  return (sum * point.powerIntoAntenna) / driven.powerIn;
}

function noiseValues({ state, strongestGain }: Found): Record<string, Value> {
  const { point } = state;
  const feed = point.joints.find((j) => j.name.startsWith("feed point"))!;
  const wave = speedOfLight / point.frequency;
  return {
    noiseShare: scalarValue((100 * state.house.current) / state.feedCurrent, "%"),
    noiseAsField: scalarValue(1e3 * noiseAsField(state, feed.impedance.re, strongestGain, wave), "µV/m per mV"),
  };
}

function caseValues(suffix: string, one: Case | null, facts: OutsideFacts): Record<string, Value> {
  if (one === null) return {};
  const { numbers, state } = one;
  const reference = state.point.ratedResistance;
  return {
    [`outsideShare${suffix}`]: scalarValue(100 * judgedShare(state, facts.againstLine), "%"),
    [`feedPointImpedance${suffix}`]: complexValue(one.feedPoint),
    [`swrAtTransmitter${suffix}`]: { ...scalarValue(state.point.swrAtTransmitter, "1", "without end"), reference },
    [`radiatedPower${suffix}`]: scalarValue(numbers.radiatedPower ?? null, "W"),
    [`maximumGain${suffix}`]: scalarValue(numbers.maximumGain ?? null, "dBi"),
    [`azimuthOfMaximum${suffix}`]: scalarValue(numbers.azimuthOfMaximum ?? null, "deg"),
    [`gainAtElevation${suffix}`]: scalarValue(one.gain, "dBi"),
  };
}

/** With their ranges; neither a share nor a current goes below nothing. */
export function rangedValues({ numbers, bounds, point }: Worked): Record<string, Value> {
  const own = Object.fromEntries(Object.keys(outsideUnits).map((name) => [name, numbers[name] ?? null]));
  const values = valuesOf(own, bounds, point, outsideUnits);
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      "low" in value && value.low !== undefined ? { ...value, low: Math.max(0, value.low) } : value,
    ]),
  );
}
