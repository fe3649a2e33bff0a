/** How the optima of `why` were found, with the numbers put in. */
import type { WorkingStep } from "../../answer/answer";
import { fixedNumber, plainNumber, significantNumber, withPrefix } from "../../quantity/format";
import { impedanceTexts, lossTexts, powerTexts, typeset, voltageTexts } from "./formulas";
import { emissivitySays, heatAir, hottest, insulationHeat } from "./heat";
import type { MeasureName, Optimum, StandardPoint, WhyResult } from "./result";
import { whyMeans } from "./tables";

const ohm = (value: number): { value: number; unit: string } => ({ value, unit: "ohm" });

export function whyWorking(result: WhyResult): WorkingStep[] {
  return [
    impedanceStep(result),
    ...limitStep(result),
    ...skinStep(result),
    ...asBuiltStep(result),
    ...voltageStep(result),
    ...powerStep(result),
    ...heatStep(result),
    ...flatSteps(result),
    ...meanStep(result),
    ...result.standards.map((point) => standardStep(result, point)),
  ];
}

function impedanceStep({ input, limit, standards }: WhyResult): WorkingStep {
  const { dielectric, shape } = input.study;
  const at = limit ?? standards[0]!;
  const texts = impedanceTexts[shape];
  return {
    text: `With ${dielectric.name} between them, ${texts.sizes} alone decide the impedance; x stands for ${texts.ratio}.`,
    formula: texts.formula,
    substituted: texts.substituted(dielectric.permittivity, at.ratio, at.impedance),
    source: `elementary; permittivity: ${input.dielectricSource}`,
    explains: ["attenuationOptimum", "attenuationOptimumRatio"],
  };
}

function limitStep({ input, surfaceRatio, limit }: WhyResult): WorkingStep[] {
  if (limit === null) return [];
  const { inner, outer, shape } = input.study;
  const texts = lossTexts[shape];
  return [
    {
      text: texts.says(inner.name, outer.name),
      formula: texts.formula,
      substituted: texts.substituted(surfaceRatio, limit.ratio),
      result: ohm(limit.impedance),
      source: texts.source,
      explains: ["attenuationOptimum", "attenuationOptimumRatio"],
    },
  ];
}

/** What stays the same where the size does not. */
const heldSays = (result: WhyResult): string => {
  const { held } = result.input.study;
  if (held.by === "size") return "That holds in the limit of small skin depth.";
  return `At equal ${held.by} a line of another impedance has another size, so that its least loss has no closed form.`;
};

function skinStep(result: WhyResult): WorkingStep[] {
  const { input, optima } = result;
  if (optima.attenuation === null) return [];
  const { point } = optima.attenuation;
  return [
    {
      text:
        `${heldSays(result)} At ${withPrefix(input.study.frequency, "Hz")}, skin depth and inner reactance as they are, ` +
        `the least attenuation is ${significantNumber(100 * point.attenuation, 3)} dB/100 m, at`,
      result: ohm(point.impedance),
      source:
        "telegrapher's equations, conductors after Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532; golden section",
      explains: ["attenuationOptimumAtFrequency", "leastAttenuation"],
    },
  ];
}

function asBuiltStep({ asBuilt, input }: WhyResult): WorkingStep[] {
  if (asBuilt === null || input.line === null) return [];
  const { inner, outer } = input.line.build;
  return [
    {
      text:
        `Strands and braid of ${input.line.designation} raise the resistance ${significantNumber(inner.resistanceFactor, 3)} times inside and ` +
        `${significantNumber(outer.resistanceFactor, 3)} times outside. A worse outer conductor asks for a thinner inner one:`,
      formula: "r' = r \\, \\frac{k_{\\mathrm{outer}}}{k_{\\mathrm{inner}}}",
      result: ohm(asBuilt),
      source: "factors of the build; for catalogue lines common practice, no source",
      explains: ["attenuationOptimumAsBuilt"],
    },
  ];
}

/** The closed form where the size is held, else that the maximum was searched for. */
const found = (result: WhyResult, closed: string): string =>
  result.input.study.held.by === "size" ? closed : "greatest over all impedances, by golden section";

function voltageStep(result: WhyResult): WorkingStep[] {
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

function powerStep(result: WhyResult): WorkingStep[] {
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

function heatStep(result: WhyResult): WorkingStep[] {
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

const flatNames: Readonly<Record<MeasureName, string>> = {
  attenuation: "attenuation",
  voltage: "voltage",
  power: "peak power",
  heat: "mean power",
};

function flatSteps({ optima }: WhyResult): WorkingStep[] {
  const entries = Object.entries(optima) as [MeasureName, Optimum | null][];
  const flat = entries.flatMap(([name, one]) => (one === null ? [] : [{ name, ...one.flat }]));
  if (flat.length === 0) return [];
  const each = flat.map(
    ({ name, from, to }) => `${flatNames[name]} ${plainNumber(from, 0)} to ${plainNumber(to, 0)} Ω`,
  );
  return [
    {
      text: `None of these optima is sharp. Within a tenth of the best lies: ${each.join(", ")}.`,
      source: "roots of the measure less its best by a tenth",
      explains: flat.flatMap(({ name }) => [`${name}FlatFrom`, `${name}FlatTo`]),
    },
  ];
}

function meanStep(result: WhyResult): WorkingStep[] {
  const means = whyMeans(result);
  const loss = result.limit?.impedance ?? result.optima.attenuation?.point.impedance;
  const power = result.optima.power?.point.impedance;
  if (means === null || loss === undefined || power === undefined) return [];
  const [a, p] = [fixedNumber(loss, 1), fixedNumber(power, 1)];
  return [
    {
      text: "Between the best for loss and the best for power lie their means:",
      formula: "\\frac{Z_\\alpha + Z_P}{2}, \\quad \\sqrt{Z_\\alpha Z_P}",
      substituted: `\\frac{${a} + ${p}}{2} = ${fixedNumber(means.arithmetic, 1)}, \\quad \\sqrt{${a} \\times ${p}} = ${fixedNumber(means.geometric, 1)} \\; \\Omega`,
      source: "arithmetic; that 50 Ω was chosen this way is told without a source",
      explains: ["arithmeticMean", "geometricMean"],
    },
  ];
}

function standardStep({ optima, limit }: WhyResult, point: StandardPoint): WorkingStep {
  const z = point.impedance;
  const shares = [
    `${plainNumber(point.voltageShare, 1)} % of the greatest voltage`,
    `${plainNumber(point.powerShare, 1)} % of the greatest peak power`,
    ...(point.heatShare === null ? [] : [`${plainNumber(point.heatShare, 1)} % of the greatest mean power`]),
  ];
  const conductors =
    point.extraConductorLoss === null || limit === null
      ? ""
      : ` Conductors alone, in the limit of small skin depth, would add ${plainNumber(point.extraConductorLoss, 2)} %.`;
  const least = optima.attenuation?.point.attenuation;
  return {
    text: `What ${z} Ω gives away: it bears ${shares.slice(0, -1).join(", ")} and ${shares.at(-1)}.${conductors}`,
    ...(least === undefined
      ? {}
      : {
          formula: "\\frac{\\alpha}{\\alpha_{\\mathrm{least}}} - 1",
          substituted: `\\frac{${fixedNumber(100 * point.attenuation, 3)}}{${fixedNumber(100 * least, 3)}} - 1 = ${fixedNumber(point.extraAttenuation, 2)} \\; \\%`,
          result: { value: point.extraAttenuation, unit: "%" },
        }),
    source: "exact attenuation of smooth conductors: Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532",
    explains: [
      `attenuationAt${z}`,
      `extraAttenuationAt${z}`,
      `peakVoltageShareAt${z}`,
      `peakPowerShareAt${z}`,
      ...(point.heatShare === null ? [] : [`meanPowerShareAt${z}`]),
    ],
  };
}
