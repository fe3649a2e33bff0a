/** The numbers of a line by one route, and how far its uncertain values move them. */
import type { Uncertainty } from "../../answer/answer";
import { combine, type Numbers } from "../common/bounds";
import { lineMoves } from "./moves";
import { type BuildResult, decibelsPerMetre, per100m, type Route, routeOf } from "./study";

/** What uncertain inputs of the line move; units beside. */
export const lineUnits = {
  characteristicResistance: "ohm",
  characteristicReactance: "ohm",
  velocityFactor: "1",
  attenuation: "dB/100 m",
  powerThrough: "W",
  lossOfLength: "dB",
  delay: "ns/m",
  wavelengthOnLine: "m",
  capacitance: "pF/m",
  inductance: "nH/m",
  resistance: "mΩ/m",
  conductance: "µS/m",
} as const;

export type LineNumbers = Readonly<Record<keyof typeof lineUnits, number>>;

export function lineNumbers({ input }: BuildResult, { constants }: Route): LineNumbers {
  const loss = (decibelsPerMetre(constants.gamma.re) + input.excess) * input.length;
  const delay = constants.gamma.im / (2 * Math.PI * input.frequency);
  return {
    characteristicResistance: constants.z0.re,
    characteristicReactance: constants.z0.im,
    velocityFactor: constants.velocityFactor,
    attenuation: per100m(constants.gamma.re),
    powerThrough: input.power * 10 ** (-loss / 10),
    lossOfLength: loss,
    delay: 1e9 * delay,
    wavelengthOnLine: (2 * Math.PI) / constants.gamma.im,
    capacitance: 1e12 * constants.capacitance,
    inductance: 1e9 * constants.inductance,
    resistance: 1e3 * constants.resistance,
    conductance: 1e6 * constants.conductance,
  };
}

export interface LineBounds {
  readonly nominal: LineNumbers;
  readonly low: Numbers;
  readonly high: Numbers;
  readonly uncertainties: readonly Uncertainty[];
}

/** Each uncertain value of the line alone to its ends, joined as the root of the sum of squares. */
export function lineBounds(result: BuildResult): LineBounds {
  const nominal = lineNumbers(result, result.main);
  const moves = lineMoves(result.main.model).map(({ name, says, low, high }) => {
    const input = { name: name.startsWith("the ") ? name : `the ${name}`, place: "", places: [], quantities: [] };
    const at = (model: typeof low): LineNumbers => lineNumbers(result, routeOf(model, result.input));
    return { input, says, atLow: at(low), atHigh: at(high) };
  });
  const moved = moves.filter((m) => Math.abs(m.atHigh.attenuation - m.atLow.attenuation) > 0.002 * nominal.attenuation);
  return {
    nominal,
    ...combine(nominal, moves),
    uncertainties: moved.map(({ input, says, atLow, atHigh }) => ({
      input: input.name,
      place: "",
      says,
      atLow: atLow.attenuation,
      atHigh: atHigh.attenuation,
    })),
  };
}
