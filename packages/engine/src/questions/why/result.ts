/** The numbers of `why`: optima, what 50 and 75 ohm give away, and the curves. */
import type { Column, ScalarValue, Table } from "../../answer/answer";
import {
  conductorLoss,
  impedanceOfLeastAttenuation,
  impedanceOfRatio,
  ratioOfGreatestPower,
  ratioOfGreatestVoltage,
  ratioOfLeastLoss,
  type StudyPoint,
  studyPoint,
  surfaceRatio,
} from "../../lines/impedanceStudy";
import type { WhyInput } from "./parameters";

export interface WhyResult {
  readonly input: WhyInput;
  readonly surfaceRatio: number;
  /** At the least conductor loss in the limit of small skin depth. */
  readonly attenuation: StudyPoint;
  readonly voltage: StudyPoint;
  readonly power: StudyPoint;
  /** Least attenuation at this frequency, true skin depth. */
  readonly least: StudyPoint;
  /** With strands and braid of the station's line, ohm; null where they change nothing or are not known. */
  readonly asBuilt: number | null;
  readonly arithmeticMean: number;
  readonly geometricMean: number;
  readonly standards: readonly StandardPoint[];
}

export interface StandardPoint extends StudyPoint {
  /** Percent of attenuation (in dB) over the least. */
  readonly extraAttenuation: number;
  /** Percent of the greatest. */
  /** Percent of conductor loss over the least, in the limit of small skin depth. */
  readonly extraConductorLoss: number;
  readonly voltageShare: number;
  readonly powerShare: number;
}

export function whyResult(input: WhyInput): WhyResult {
  const { study, line } = input;
  const { permittivity } = study.dielectric;
  const r = surfaceRatio(study);
  const impedance = (ratio: number): number => impedanceOfRatio(ratio, permittivity);
  const at = (ratio: number): StudyPoint => studyPoint(study, impedance(ratio));
  const [attenuation, voltage, power] = [at(ratioOfLeastLoss(r)), at(ratioOfGreatestVoltage), at(ratioOfGreatestPower)];
  const least = studyPoint(study, impedanceOfLeastAttenuation(study));
  const factor = line ? line.build.outer.resistanceFactor / line.build.inner.resistanceFactor : 1;
  return {
    input,
    surfaceRatio: r,
    attenuation,
    voltage,
    power,
    least,
    asBuilt: factor === 1 ? null : impedance(ratioOfLeastLoss(r * factor)),
    arithmeticMean: (attenuation.impedance + power.impedance) / 2,
    geometricMean: Math.sqrt(attenuation.impedance * power.impedance),
    standards: [50, 75].map((ohms) => {
      const point = studyPoint(study, ohms);
      return {
        ...point,
        extraAttenuation: 100 * (point.attenuation / least.attenuation - 1),
        extraConductorLoss: 100 * (conductorLoss(point.ratio, r) / conductorLoss(attenuation.ratio, r) - 1),
        voltageShare: (100 * point.peakVoltage) / voltage.peakVoltage,
        powerShare: (100 * point.peakPower) / power.peakPower,
      };
    }),
  };
}

export function whyValues(result: WhyResult): Record<string, ScalarValue> {
  const ohm = (value: number): ScalarValue => ({ value, unit: "ohm" });
  const values: Record<string, ScalarValue> = {
    attenuationOptimum: ohm(result.attenuation.impedance),
    attenuationOptimumRatio: { value: result.attenuation.ratio, unit: "1" },
    attenuationOptimumAtFrequency: ohm(result.least.impedance),
    attenuationOptimumAsBuilt:
      result.asBuilt === null
        ? { value: null, unit: "ohm", reason: "strands and braid are not known, or change nothing" }
        : ohm(result.asBuilt),
    leastAttenuation: { value: 100 * result.least.attenuation, unit: "dB/100 m" },
    voltageOptimum: ohm(result.voltage.impedance),
    greatestPeakVoltage: { value: result.voltage.peakVoltage, unit: "V" },
    powerOptimum: ohm(result.power.impedance),
    greatestPeakPower: { value: result.power.peakPower, unit: "W" },
    arithmeticMean: ohm(result.arithmeticMean),
    geometricMean: ohm(result.geometricMean),
  };
  for (const point of result.standards) {
    values[`attenuationAt${point.impedance}`] = { value: 100 * point.attenuation, unit: "dB/100 m" };
    values[`extraAttenuationAt${point.impedance}`] = { value: point.extraAttenuation, unit: "%" };
    values[`peakVoltageShareAt${point.impedance}`] = { value: point.voltageShare, unit: "%" };
    values[`peakPowerShareAt${point.impedance}`] = { value: point.powerShare, unit: "%" };
  }
  return values;
}

/** The curves from 10 to 150 ohm, with the optima among the points. */
export function whyTable(result: WhyResult): Table {
  const steps = Array.from({ length: 57 }, (_, i) => 10 + 2.5 * i);
  const optima = [result.least, result.voltage, result.power].map((p) => p.impedance);
  const impedances = [...new Set([...steps, ...optima])].filter((z) => z >= 10 && z <= 150).sort((a, b) => a - b);
  const points = impedances.map((z) => studyPoint(result.input.study, z));
  const column = (unit: string, of: (point: StudyPoint) => number): Column => ({ unit, values: points.map(of) });
  return {
    name: "impedanceCompromise",
    axis: "characteristicImpedance",
    columns: {
      characteristicImpedance: column("ohm", (p) => p.impedance),
      diameterRatio: column("1", (p) => p.ratio),
      attenuation: column("dB/100 m", (p) => 100 * p.attenuation),
      peakVoltage: column("V", (p) => p.peakVoltage),
      peakPower: column("W", (p) => p.peakPower),
      relativeAttenuation: column("1", (p) => p.attenuation / result.least.attenuation),
      relativePeakVoltage: column("1", (p) => p.peakVoltage / result.voltage.peakVoltage),
      relativePeakPower: column("1", (p) => p.peakPower / result.power.peakPower),
    },
  };
}
