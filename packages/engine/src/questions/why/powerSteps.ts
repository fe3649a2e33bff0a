/** How the impedances of greatest voltage, peak power and mean power were found. */
import type { WorkingStep } from "../../answer/answer";
import { fixedNumber, plainNumber, significantNumber, withPrefix } from "../../quantity/format";
import { ohm, powerTexts, typeset, voltageTexts } from "./formulas";
import { emissivitySays, heatAir, hottest, insulationHeat } from "./heat";
import type { WhyResult } from "./result";

/** The closed form where the size is held, else that the maximum was searched for. */
const found = (result: WhyResult, closed: string): string =>
  result.input.study.held.by === "size" ? closed : "greatest over all impedances, by golden section";

export function voltageStep(result: WhyResult): WorkingStep[] {
  const { input, optima } = result;
  if (optima.voltage === null) return [];
  const { point } = optima.voltage;
  const texts = voltageTexts[input.study.shape];
  return [
    {
      text: `The field is strongest at the inner conductor and may not pass ${withPrefix(input.study.breakdown, "V/m", 3)}:`,
      formula: texts.formula,
      substituted: texts.substituted(input.study.breakdown, point),
      result: ohm(point.impedance),
      source: `${found(result, texts.optimum)}; breakdown field: ${input.breakdownSource}`,
      explains: ["voltageOptimum", "greatestPeakVoltage"],
    },
  ];
}

export function powerStep(result: WhyResult): WorkingStep[] {
  const { power } = result.optima;
  if (power === null) return [];
  const { point } = power;
  return [
    {
      text: "Peak envelope power at that voltage, matched:",
      formula: powerTexts.formula,
      substituted: `P = \\frac{(${typeset(point.peakVoltage, "V")})^2}{2 \\times ${fixedNumber(point.impedance, 1)} \\; \\Omega} = ${typeset(point.peakPower, "W")}`,
      result: ohm(point.impedance),
      source: found(result, powerTexts.optimum[result.input.study.shape]),
      explains: ["powerOptimum", "greatestPeakPower"],
    },
  ];
}

export function heatStep(result: WhyResult): WorkingStep[] {
  const { heat: optimum } = result.optima;
  const heat = optimum && result.heat(optimum.point);
  if (!(optimum && heat)) return [];
  const { study } = result.input;
  const celsius = (kelvin: number): string => `${plainNumber(kelvin - 273.15, 0)} °C`;
  const [limit, surface] = [celsius(hottest(study)), celsius(heat.surface)];
  const inside =
    study.shape === "pair" ? "" : ` The inner conductor may reach ${limit}; the outer one is then at ${surface}.`;
  const texts = [
    `Mean power that warms it to ${limit} in still air of ${celsius(heatAir.temperature)}, matched.${inside}`,
    ` ${significantNumber(heat.heat, 3)} W leave each metre; the conductors are taken that warm.`,
  ];
  const material = insulationHeat(study);
  return [
    {
      text: texts.join(""),
      formula: "P = \\frac{q}{2\\alpha}",
      substituted: `P = \\frac{${typeset(heat.heat, "W/m")}}{2\\alpha} = ${typeset(heat.power, "W")}`,
      result: ohm(optimum.point.impedance),
      source: `free convection: Churchill and Chu 1975, radiation: ${emissivitySays(study)}; insulation: ${material?.source ?? "none"}`,
      explains: ["heatOptimum", "greatestMeanPower", "heatFlatFrom", "heatFlatTo"],
    },
  ];
}
