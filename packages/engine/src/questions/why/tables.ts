/** Values and curves of `why`. */
import type { Column, ScalarValue, Table } from "../../answer/answer";
import { meansOf } from "../../lines/study/coaxialRatios";
import { amountOf, type StudyPoint, studiedSpan, studyPoint } from "../../lines/study/studyPoint";
import type { MeasureName, Optimum, WhyResult } from "./result";

const ohm = (value: number): ScalarValue => ({ value, unit: "ohm" });
const percent = (value: number): ScalarValue =>
  Number.isFinite(value) ? { value, unit: "%" } : { value: null, unit: "%", reason: "there is no best impedance" };
const none = (unit: string, reason: string): ScalarValue => ({ value: null, unit, reason });

export function whyValues(result: WhyResult): Record<string, ScalarValue> {
  const { optima, limit, heat } = result;
  const { attenuation, voltage, power } = optima;
  const best = (of: (point: StudyPoint) => number, optimum: Optimum | null, unit: string): ScalarValue =>
    optimum === null ? none(unit, noBest) : { value: of(optimum.point), unit };
  const means = whyMeans(result);
  const values: Record<string, ScalarValue> = {
    attenuationOptimum: limit === null ? none("ohm", heldSays) : ohm(limit.impedance),
    attenuationOptimumRatio: limit === null ? none("1", heldSays) : { value: limit.ratio, unit: "1" },
    attenuationOptimumAtFrequency: best((p) => p.impedance, attenuation, "ohm"),
    attenuationOptimumAsBuilt:
      result.asBuilt === null ? none("ohm", "strands and braid are not known, or change nothing") : ohm(result.asBuilt),
    leastAttenuation: best((p) => 100 * p.attenuation, attenuation, "dB/100 m"),
    voltageOptimum: best((p) => p.impedance, voltage, "ohm"),
    greatestPeakVoltage: best((p) => p.peakVoltage, voltage, "V"),
    powerOptimum: best((p) => p.impedance, power, "ohm"),
    greatestPeakPower: best((p) => p.peakPower, power, "W"),
    heatOptimum: best((p) => p.impedance, optima.heat, "ohm"),
    greatestMeanPower: best((p) => heat(p)?.power ?? Number.NaN, optima.heat, "W"),
    arithmeticMean: means === null ? none("ohm", noMeans) : ohm(means.arithmetic),
    geometricMean: means === null ? none("ohm", noMeans) : ohm(means.geometric),
  };
  for (const name of ["attenuation", "voltage", "power", "heat"] as const)
    Object.assign(values, flatValues(name, optima[name]));
  for (const point of result.standards) {
    values[`attenuationAt${point.impedance}`] = { value: 100 * point.attenuation, unit: "dB/100 m" };
    values[`extraAttenuationAt${point.impedance}`] = percent(point.extraAttenuation);
    values[`peakVoltageShareAt${point.impedance}`] = percent(point.voltageShare);
    values[`peakPowerShareAt${point.impedance}`] = percent(point.powerShare);
    if (point.heatShare !== null) values[`meanPowerShareAt${point.impedance}`] = percent(point.heatShare);
  }
  return values;
}

const noBest = "it has no best value between the impedances studied";
const noMeans = "told of coaxial lines with a best for loss and for power only";
const heldSays = "the closed form holds while the size is held";

/** Between these impedances the measure stays within a tenth of its best. */
const flatValues = (name: MeasureName, optimum: Optimum | null): Record<string, ScalarValue> =>
  optimum === null ? {} : { [`${name}FlatFrom`]: ohm(optimum.flat.from), [`${name}FlatTo`]: ohm(optimum.flat.to) };

/** Of the impedances of least loss and of most power of a coaxial line; null where one of them has no best. */
export function whyMeans({ input, optima, limit }: WhyResult): ReturnType<typeof meansOf> | null {
  if (input.study.shape === "pair") return null;
  const loss = limit?.impedance ?? optima.attenuation?.point.impedance;
  const power = optima.power?.point.impedance;
  return loss === undefined || power === undefined ? null : meansOf(loss, power);
}

/** Ohm of the curves. */
const drawn = { coaxial: { from: 10, to: 150, step: 2.5 }, pair: { from: 80, to: 800, step: 10 } } as const;

/** The curves, with the optima and the impedances in use among the points. */
export function whyTable(result: WhyResult): Table {
  const { study, densities } = result.input;
  const { from, to, step } = drawn[study.shape];
  const [least, most] = [Math.max(from, studiedSpan(study)[0]), Math.min(to, studiedSpan(study)[1])];
  const steps = Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + step * i);
  const optima = Object.values(result.optima).flatMap((one) => (one === null ? [] : [one.point.impedance]));
  const standards = result.standards.map((one) => one.impedance);
  const impedances = [...new Set([...steps, ...optima, ...standards])]
    .filter((z) => z >= least && z <= most)
    .sort((a, b) => a - b);
  const points = impedances.map((z) => studyPoint(study, z));
  const column = (unit: string, of: (point: StudyPoint) => number): Column => ({ unit, values: points.map(of) });
  const over = (name: string, of: (point: StudyPoint) => number, optimum: Optimum | null): Record<string, Column> =>
    optimum === null ? {} : { [name]: column("1", (p) => of(p) / of(optimum.point)) };
  const { attenuation, voltage, power, heat } = result.optima;
  return {
    name: "impedanceCompromise",
    axis: "characteristicImpedance",
    columns: {
      characteristicImpedance: column("ohm", (p) => p.impedance),
      diameterRatio: column("1", (p) => p.ratio),
      attenuation: column("dB/100 m", (p) => 100 * p.attenuation),
      peakVoltage: column("V", (p) => p.peakVoltage),
      peakPower: column("W", (p) => p.peakPower),
      ...(heat === null ? {} : { meanPower: column("W", (p) => result.heat(p)?.power ?? Number.NaN) }),
      ...(densities === null
        ? {}
        : { weight: column("kg/100 m", (p) => 100 * amountOf(study.shape, densities, p.innerSize, p.outerSize)) }),
      ...over("relativeAttenuation", (p) => p.attenuation, attenuation),
      ...over("relativePeakVoltage", (p) => p.peakVoltage, voltage),
      ...over("relativePeakPower", (p) => p.peakPower, power),
    },
  };
}
