/** How flat the optima are, what lies between them, and what the impedances in use give away. */
import type { WorkingStep } from "../../answer/answer";
import { fixedNumber, plainNumber } from "../../quantity/format";
import type { MeasureName, Optimum, StandardPoint, WhyResult } from "./result";
import { whyMeans } from "./tables";

const flatNames: Readonly<Record<MeasureName, string>> = {
  attenuation: "attenuation",
  voltage: "voltage",
  power: "peak power",
  heat: "mean power",
};

export function flatSteps({ optima }: WhyResult): WorkingStep[] {
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

export function meanStep(result: WhyResult): WorkingStep[] {
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

export function standardStep({ optima, limit }: WhyResult, point: StandardPoint): WorkingStep {
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
