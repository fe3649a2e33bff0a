/** The numbers of `build` as values, with low and high where the line is known within bounds. */
import type { ScalarValue, Value } from "../../answer/answer";
import type { AttenuationParts } from "../../lines/attenuationParts";
import type { LineEntry } from "../../lines/lineModel";
import { scalarValue } from "../common/values";
import { measuredValue } from "./dip";
import { type LineBounds, type LineNumbers, lineUnits } from "./lineNumbers";
import { type BuildResult, per100m } from "./study";

export function buildValues(result: BuildResult, bounds: LineBounds): Record<string, Value> {
  const { main, input } = result;
  return {
    powerInto: { value: input.power, unit: "W" },
    characteristicImpedance: { re: main.constants.z0.re, im: main.constants.z0.im, unit: "ohm" },
    ...Object.fromEntries(
      Object.entries(lineUnits).map(([name, unit]) => [name, spanned(bounds, name as keyof LineNumbers, unit)]),
    ),
    ...splitValues(result),
    ...sheetValues(result),
    ...endValues(result),
    ...leakValues(result),
    ...(result.measured ? { measuredVelocityFactor: measuredValue(result.measured) } : {}),
    ...ratedValues(input.chosen.entry, main.constants.z0.re),
  };
}

function spanned({ nominal, low, high }: LineBounds, name: keyof LineNumbers, unit: string): ScalarValue {
  const [value, from, to] = [nominal[name], low[name] ?? null, high[name] ?? null];
  const plain = scalarValue(value, unit);
  if (from === null || to === null || to - from <= 1e-6 * Math.abs(value)) return plain;
  return { ...plain, low: from, high: to };
}

const noBuild = "the build of this line is not known";

function splitValues({ main, build, input }: BuildResult): Record<string, ScalarValue> {
  const split = build ?? main;
  const share = (name: keyof AttenuationParts, reason = noBuild): ScalarValue => {
    const nepers = split.parts[name];
    return scalarValue(nepers === null ? null : per100m(nepers), "dB/100 m", reason);
  };
  const apart = build !== null && build.model !== main.model;
  return {
    attenuationInConductors: share("conductors"),
    attenuationInInner: share("inner"),
    attenuationInOuter: share("outer"),
    attenuationInDielectric: share("dielectric"),
    ...(input.excess > 0 ? { attenuationOverNew: { value: 100 * input.excess, unit: "dB/100 m" } } : {}),
    ...(apart && {
      attenuationByBuild: { value: per100m(build.constants.gamma.re), unit: "dB/100 m" },
      characteristicResistanceByBuild: { value: build.constants.z0.re, unit: "ohm" },
      velocityFactorByBuild: { value: build.constants.velocityFactor, unit: "1" },
      buildAgainstSheet: { value: 100 * (build.constants.gamma.re / main.constants.gamma.re - 1), unit: "%" },
    }),
  };
}

function sheetValues({ sheet }: BuildResult): Record<string, ScalarValue> {
  if (sheet === null) return {};
  const { fit, surfaceFactor, impliedImpedance } = sheet;
  return {
    fitDeviation: { value: 100 * fit.worstDeviation, unit: "%" },
    fittedSurfaceFactor: scalarValue(surfaceFactor, "1", "the size of this line is not known"),
    fittedSteadyResistance: { value: 1e3 * fit.steadyResistance, unit: "mΩ/m" },
    fittedLossTangent: { value: fit.lossTangent, unit: "1" },
    impliedImpedance: scalarValue(impliedImpedance, "ohm", "the sheet gives no capacitance"),
  };
}

function leakValues({ leak, sends, input }: BuildResult): Record<string, ScalarValue> {
  const unknown = "no shield, a closed one that lets nothing measurable through, or a braid not known in detail";
  return {
    transferImpedance: scalarValue(leak === null ? null : 1e3 * leak.transferImpedance, "mΩ/m", unknown),
    screeningAttenuation:
      leak === null
        ? { value: null, unit: "dB", reason: unknown }
        : {
            value: leak.screening,
            unit: "dB",
            low: Math.min(leak.screening, leak.otherScreening),
            high: Math.max(leak.screening, leak.otherScreening),
          },
    ...(sends === null ? {} : { sentByPair: { value: sends * input.power, unit: "W" } }),
  };
}

function voltageValue(voltages: BuildResult["voltages"], kind: "glow" | "breakdown"): ScalarValue {
  const found = voltages.find((one) => one.kind === kind);
  if (!found)
    return { value: null, unit: "V", reason: "the build of this line, or what its insulation bears, is not known" };
  return { value: found.peak, low: found.low, high: found.high, unit: "V", says: found.says };
}

function endValues({ cutOff, direct, voltages, input }: BuildResult): Record<string, ScalarValue> {
  const open = "the outer conductor's wall is not known, or nothing of the build";
  return {
    loopResistance: scalarValue(direct === null ? null : 1e3 * direct.loop, "mΩ/m", open),
    loopResistanceOfLength: scalarValue(direct === null ? null : direct.loop * input.length, "ohm", open),
    cutOff: scalarValue(
      cutOff === null ? null : cutOff.frequency / 1e9,
      "GHz",
      "only a coaxial line of known build has one",
    ),
    cutOffEstimate: scalarValue(
      cutOff === null ? null : cutOff.usualEstimate / 1e9,
      "GHz",
      "only a coaxial line of known build has one",
    ),
    glowVoltage: voltageValue(voltages, "glow"),
    breakdownVoltage: voltageValue(voltages, "breakdown"),
  };
}

function ratedValues({ ratings, jacketDiameter }: LineEntry, impedance: number): Record<string, ScalarValue> {
  const volts = ratings?.voltage;
  const given = (name: string, value: number | undefined, unit: string): Record<string, ScalarValue> =>
    value === undefined ? {} : { [name]: { value, unit, basis: "catalogue" } };
  return {
    ...given("ratedVoltage", volts?.value, "V"),
    ...given("powerAtRatedVoltage", volts === undefined ? undefined : volts.value ** 2 / impedance, "W"),
    ...given(
      "ratedTemperature",
      ratings?.temperature === undefined ? undefined : ratings.temperature.value - 273.15,
      "°C",
    ),
    ...given("weight", ratings?.weight?.value, "kg/m"),
    ...given("bendRadius", ratings?.bendRadius && 1000 * ratings.bendRadius.value, "mm"),
    ...given("jacketDiameter", jacketDiameter && 1000 * jacketDiameter, "mm"),
  };
}
