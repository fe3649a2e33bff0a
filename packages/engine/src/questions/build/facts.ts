/** What the sentences of `build` are made of. */
import { lineConstants } from "../../lines/lineConstants";
import type { BuildFacts, BuildWords, SheetWords } from "../../words/buildFacts";
import { geometryOf, pairsEnd } from "./geometry";
import type { LineBounds } from "./lineNumbers";
import { type BuildResult, decibelsPerMetre, optionsOf } from "./study";

export function buildFacts(
  result: BuildResult,
  { nominal, low, high }: LineBounds,
): Omit<BuildFacts, "similar" | "swept"> {
  const { input, main, build, direct, cutOff } = result;
  const split = (build ?? main).parts;
  const whole = split.conductors + split.dielectric;
  const { z0 } = lineConstants((build ?? main).model, result.from, optionsOf(input));
  return {
    designation: input.chosen.entry.designation,
    frequency: input.frequency,
    length: input.length,
    power: input.power,
    powerThrough: nominal.powerThrough,
    attenuation: nominal.attenuation,
    excess: 100 * input.excess,
    conductorShare: whole > 0 ? split.conductors / whole : 0,
    splitByBuild: build !== null && build.model !== main.model,
    z0: main.constants.z0,
    lowest: { frequency: result.from, z0 },
    velocityFactor: {
      value: nominal.velocityFactor,
      low: low.velocityFactor ?? nominal.velocityFactor,
      high: high.velocityFactor ?? nominal.velocityFactor,
    },
    loopResistance: direct?.loop ?? null,
    sheet: sheetWords(result),
    build: buildWords(result),
    cutOff,
    voltages: result.voltages.length > 0,
    measured: measuredWords(result, low.velocityFactor ?? null, high.velocityFactor ?? null),
    temperature: { asked: input.temperature, most: result.greatestTemperature },
  };
}

function measuredWords(
  { measured, main }: BuildResult,
  low: number | null,
  high: number | null,
): BuildFacts["measured"] {
  if (measured === null) return null;
  const { value: found, expected, ...ends } = measured;
  const nominal = main.constants.velocityFactor;
  const at = (end: number | null): number => (expected * (end ?? nominal)) / nominal;
  return { ...ends, value: found, expected: { value: expected, low: at(low), high: at(high) } };
}

function sheetWords({ sheet, input }: BuildResult): SheetWords | null {
  if (sheet === null) return null;
  const top = sheet.points.at(-1)!;
  return {
    from: sheet.fit.from,
    to: sheet.fit.to,
    worstDeviation: sheet.fit.worstDeviation,
    findings: sheet.findings.map(({ says, suggestion, point }) => ({
      says,
      suggestion,
      frequency: point === null ? null : (sheet.line.loss[point]?.frequency ?? null),
    })),
    own: input.chosen.entry.sources.every(({ source }) => source === "the station file"),
    top: { frequency: top.frequency, attenuation: 100 * top.listed },
  };
}

function buildWords({ main, build, input }: BuildResult): BuildWords | null {
  if (build === null) return null;
  const { model, constants } = build;
  const { ratio, permittivity, insulation } = geometryOf(model);
  return {
    kind: model.kind,
    attenuation: 100 * decibelsPerMetre(constants.gamma.re),
    powerThrough: input.power * 10 ** (-((decibelsPerMetre(constants.gamma.re) + input.excess) * input.length) / 10),
    againstSheet: model === main.model ? null : constants.gamma.re / main.constants.gamma.re - 1,
    impedance: constants.z0.re,
    ratio,
    permittivity,
    insulation,
    pairsEnd: pairsEnd(model),
  };
}
