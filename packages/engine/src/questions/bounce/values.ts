/** The numbers of `bounce` as values of its answer. */
import type { ScalarValue, Value } from "../../answer/answer";
import { divide } from "../../numerics/complex";
import type { BounceFacts } from "../../words/bounce";
import { complexValue, scalarValue } from "../common/values";
import type { BounceStudy } from "./study";

export function bounceValues(study: BounceStudy, f: BounceFacts): Record<string, Value> {
  const { start, end, stepped, moments } = study;
  const line: Record<string, Value> = {
    oneWayTime: scalarValue(1e9 * f.delay, "ns"),
    wavesOnLine: scalarValue(f.waves, "1"),
    characteristicImpedance: complexValue(f.impedance),
    surgeImpedance: scalarValue(f.surgeImpedance, "ohm"),
    sourceResistance: scalarValue(f.source, "ohm"),
    energyResidue: scalarValue(worstResidue(moments), "1"),
    lossDeviation: scalarValue(100 * stepped.worstDeviation, "%"),
  };
  if (f.signal !== "carrier") return { ...line, ...tested(f) };
  return {
    ...line,
    loadImpedance: f.load === null ? none("ohm", "an open end") : complexValue(f.load),
    impedanceAtStart: complexValue(divide(start.voltage, start.current)),
    powerIntoLine: scalarValue(f.powerIn, "W"),
    powerOutOfLine: scalarValue(f.powerOut, "W"),
    heatInLine: scalarValue(f.heat, "W"),
    matchedHeatInLine: scalarValue(f.matchedHeat, "W"),
    forwardPowerAtLoad: scalarValue(f.forwardAtLoad, "W"),
    reflectedPowerAtLoad: scalarValue(f.reflectedAtLoad, "W"),
    crossPowerAtLoad: scalarValue(f.powerOut - f.forwardAtLoad + f.reflectedAtLoad, "W"),
    swrAtLoad: { ...scalarValue(f.swrAtLoad, "1", "without end"), reference: f.impedance.re },
    reflectionAtLoad: scalarValue(f.reflectionAtLoad, "1"),
    reflectionAtSource: scalarValue(f.reflectionAtSource, "1"),
    firstWavePower: scalarValue(f.firstWave, "W"),
    echoesToSettle: scalarValue(f.echoes, "1", "more than 200 echoes"),
    settlingTime: scalarValue(nanoseconds(f.settling?.time ?? null), "ns", "not settled within the film"),
    filmDeviation: scalarValue(f.settling ? 100 * f.settling.deviation : null, "%"),
    voltageAtStart: scalarValue(Math.hypot(start.voltage.re, start.voltage.im), "V"),
    voltageAtEnd: scalarValue(Math.hypot(end.voltage.re, end.voltage.im), "V"),
    ...(f.quality === null ? {} : { loadQuality: scalarValue(f.quality, "1") }),
    ...(f.fitDeviation === null ? {} : { loadFitDeviation: scalarValue(100 * f.fitDeviation, "%") }),
  };
}

const nanoseconds = (s: number | null): number | null => (s === null ? null : 1e9 * s);

const none = (unit: string, reason: string): ScalarValue => ({ value: null, unit, reason });

const tested = ({ home, delay }: BounceFacts): Record<string, Value> => ({
  firstEchoHome: scalarValue(2e9 * delay, "ns"),
  firstEchoShare: scalarValue(home?.share ?? null, "%"),
  seenBeforeEcho: scalarValue(home?.before ?? null, "ohm", "no current"),
  seenAtLast: scalarValue(home?.after ?? null, "ohm", "no current to speak of: an open end"),
});

/** Largest share of the delivered energy that is not accounted for. */
function worstResidue(moments: BounceStudy["moments"]): number {
  const shares = moments.map(({ energy: { residue, delivered } }) =>
    delivered > 0 ? Math.abs(residue) / delivered : 0,
  );
  return Math.max(...shares);
}
