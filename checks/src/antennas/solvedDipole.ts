/** Centre-fed dipoles in free space with the current they really carry, in wavelengths. */
import { type AntennaSolution, solveAntenna } from "@feedpath/engine";
import { portImpedance } from "./portImpedance";
import { dipoles, level } from "./thinWires";

/** A frequency at which the wavelength is 10 m; ratios do not depend on it. */
const frequency = 29_979_245.8;
const wavelength = 10;

export const solveDipole = (lengthInWavelengths: number, radiusInWavelengths: number): AntennaSolution =>
  solveAntenna(
    dipoles({
      length: lengthInWavelengths * wavelength,
      radius: radiusInWavelengths * wavelength,
      middle: [0, 0, 0],
      along: level,
    }),
    { kind: "free space" },
    frequency,
  );

const reactance = (length: number, lengthOverDiameter: number): number =>
  portImpedance(solveDipole(length, length / lengthOverDiameter / 2)).im;

/** Length in wavelengths near a half at which the reactance vanishes, for a given length over diameter; false position. */
export function resonantLength(lengthOverDiameter: number): number {
  let [low, high] = [0.42, 0.5];
  let [atLow, atHigh] = [reactance(low, lengthOverDiameter), reactance(high, lengthOverDiameter)];
  let middle = low;
  for (let step = 0; step < 20; step++) {
    middle = low - (atLow * (high - low)) / (atHigh - atLow);
    const here = reactance(middle, lengthOverDiameter);
    if (Math.abs(here) < 1e-3) break;
    if (here > 0) [high, atHigh] = [middle, here];
    else [low, atLow] = [middle, here];
  }
  return middle;
}
