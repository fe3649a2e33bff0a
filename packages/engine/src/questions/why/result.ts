/** The numbers of `why`: each optimum with its flatness, and what the impedances in use give away. */
import {
  conductorLoss,
  impedanceOfRatio,
  ratioOfGreatestPower,
  ratioOfGreatestVoltage,
  ratioOfLeastLoss,
  surfaceRatio,
} from "../../lines/study/coaxialRatios";
import { type Cost, flatSpan, impedanceOfLeast } from "../../lines/study/optima";
import {
  impedanceOfPair,
  pairConductorLoss,
  pairOfGreatestPower,
  pairOfGreatestVoltage,
  pairOfLeastLoss,
} from "../../lines/study/pairRatios";
import { type StudyInput, type StudyPoint, studyPoint } from "../../lines/study/studyPoint";
import { type HeatPoint, heatPower } from "./heat";
import type { WhyInput } from "./input";

export type MeasureName = "attenuation" | "voltage" | "power" | "heat";

/** Where a measure is best, and between which impedances it stays within a tenth of that. */
export interface Optimum {
  readonly point: StudyPoint;
  readonly flat: { readonly from: number; readonly to: number };
}

export interface WhyResult {
  readonly input: WhyInput;
  readonly surfaceRatio: number;
  /** Impedance and ratio of least conductor loss in the limit of small skin depth; null where weight or cost is held. */
  readonly limit: { readonly impedance: number; readonly ratio: number } | null;
  readonly optima: Readonly<Record<MeasureName, Optimum | null>>;
  /** W of mean power at the best impedance for heat; null where it cannot be worked out. */
  readonly heat: (point: StudyPoint) => HeatPoint | null;
  /** With strands and braid of the station's line, ohm; null where they change nothing or are not known. */
  readonly asBuilt: number | null;
  readonly standards: readonly StandardPoint[];
}

export interface StandardPoint extends StudyPoint {
  /** Percent of attenuation (in dB) over the least. */
  readonly extraAttenuation: number;
  /** Percent of conductor loss over the least, in the limit of small skin depth; null where weight or cost is held. */
  readonly extraConductorLoss: number | null;
  /** Percent of the greatest. */
  readonly voltageShare: number;
  readonly powerShare: number;
  readonly heatShare: number | null;
}

/** Impedances in use, ohm. */
const standardImpedances = { coaxial: [50, 75], pair: [300, 450, 600] } as const;

/** A tenth more loss, or a tenth less of what is wanted great. */
const flatShare = 0.1;

/** Told to the user, as `values` and in words. */
export const costs: Readonly<Record<Exclude<MeasureName, "heat">, Cost>> = {
  attenuation: (p) => p.attenuation,
  voltage: (p) => 1 / p.peakVoltage,
  power: (p) => 1 / p.peakPower,
};

export function whyResult(input: WhyInput): WhyResult {
  const { study } = input;
  const heat = (point: StudyPoint) => heatPower(study, point);
  const optima = {
    attenuation: optimumOf(study, costs.attenuation),
    voltage: optimumOf(study, costs.voltage, closedForm(study, "voltage")),
    power: optimumOf(study, costs.power, closedForm(study, "power")),
    heat: heatOptimum(study, heat),
  };
  return {
    input,
    surfaceRatio: surfaceRatio(study),
    limit: limitOf(study),
    optima,
    heat,
    asBuilt: asBuiltOf(input),
    standards: standardImpedances[study.shape].map((ohms) => standardPoint(study, optima, heat, ohms)),
  };
}

function optimumOf(study: StudyInput, cost: Cost, known: number | null = null): Optimum | null {
  const impedance = known ?? impedanceOfLeast(study, cost);
  if (impedance === null) return null;
  return { point: studyPoint(study, impedance), flat: flatSpan(study, cost, impedance, flatShare) };
}

function heatOptimum(study: StudyInput, heat: WhyResult["heat"]): Optimum | null {
  if (heat(studyPoint(study, standardImpedances[study.shape][0])) === null) return null;
  return optimumOf(study, (p) => 1 / (heat(p)?.power ?? Number.NaN));
}

/** Ohm of the closed forms, which hold while the size is held. */
function closedForm({ shape, held, dielectric }: StudyInput, of: "voltage" | "power"): number | null {
  if (held.by !== "size") return null;
  const { permittivity } = dielectric;
  if (shape === "pair") {
    return impedanceOfPair(of === "voltage" ? pairOfGreatestVoltage() : pairOfGreatestPower(), permittivity);
  }
  return impedanceOfRatio(of === "voltage" ? ratioOfGreatestVoltage : ratioOfGreatestPower, permittivity);
}

function limitOf(study: StudyInput): WhyResult["limit"] {
  if (study.held.by !== "size") return null;
  const { permittivity } = study.dielectric;
  if (study.shape === "pair") {
    const ratio = pairOfLeastLoss();
    return { ratio, impedance: impedanceOfPair(ratio, permittivity) };
  }
  const ratio = ratioOfLeastLoss(surfaceRatio(study));
  return { ratio, impedance: impedanceOfRatio(ratio, permittivity) };
}

function asBuiltOf({ line, study }: WhyInput): number | null {
  if (line === null || study.held.by !== "size") return null;
  const factor = line.build.outer.resistanceFactor / line.build.inner.resistanceFactor;
  if (factor === 1) return null;
  return impedanceOfRatio(ratioOfLeastLoss(surfaceRatio(study) * factor), study.dielectric.permittivity);
}

function standardPoint(
  study: StudyInput,
  { attenuation, voltage, power, heat: best }: WhyResult["optima"],
  heat: WhyResult["heat"],
  ohms: number,
): StandardPoint {
  const point = studyPoint(study, ohms);
  const share = (of: number, best: number): number => (100 * of) / best;
  const [most, here] = [best === null ? null : heat(best.point), heat(point)];
  return {
    ...point,
    extraAttenuation: attenuation === null ? Number.NaN : share(point.attenuation, attenuation.point.attenuation) - 100,
    extraConductorLoss: extraConductorLoss(study, point.ratio),
    voltageShare: voltage === null ? Number.NaN : share(point.peakVoltage, voltage.point.peakVoltage),
    powerShare: power === null ? Number.NaN : share(point.peakPower, power.point.peakPower),
    heatShare: most === null || here === null ? null : share(here.power, most.power),
  };
}

function extraConductorLoss(study: StudyInput, ratio: number): number | null {
  const limit = limitOf(study);
  if (limit === null) return null;
  const r = surfaceRatio(study);
  const at = (x: number): number => (study.shape === "pair" ? pairConductorLoss(x) : conductorLoss(x, r));
  return 100 * (at(ratio) / at(limit.ratio) - 1);
}
