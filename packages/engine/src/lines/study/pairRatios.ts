/** Two equal round wires by spacing over diameter, x: impedance, and the ratios that are best for a fixed spacing. */
import { rootBetween } from "../../numerics/crossings";
import { vacuumImpedance } from "../../numerics/vacuum";

/** Impedance (ohm) without loss: eta0/(pi sqrt(eps)) arcosh x. */
export const impedanceOfPair = (ratio: number, permittivity: number): number =>
  (vacuumImpedance / (Math.PI * Math.sqrt(permittivity))) * Math.acosh(ratio);

/** x from the impedance (ohm). */
export const ratioOfPair = (impedance: number, permittivity: number): number =>
  Math.cosh((Math.PI * Math.sqrt(permittivity) * impedance) / vacuumImpedance);

/** Conductor loss for a fixed spacing, up to a factor, in the limit of small skin depth: x^2/(sqrt(x^2 - 1) arcosh x). */
export const pairConductorLoss = (ratio: number): number =>
  ratio ** 2 / (Math.sqrt(ratio ** 2 - 1) * Math.acosh(ratio));

/** The wires' strongest field times the diameter, over the voltage: sqrt((x + 1)/(x - 1))/arcosh x, where they face. */
export const pairFieldFactor = (ratio: number): number => Math.sqrt((ratio + 1) / (ratio - 1)) / Math.acosh(ratio);

/** Slopes of the logarithms of conductor loss, voltage and power for a fixed spacing; each optimum is its zero. */
const slopes = {
  loss: (x: number) => 2 / x - x / (x * x - 1) - arcosh(x),
  voltage: (x: number) => arcosh(x) - 1 / x + 1 / (x * x - 1),
  power: (x: number) => arcosh(x) - 2 / x + 2 / (x * x - 1),
};

/** Slope of ln arcosh x. */
const arcosh = (x: number): number => 1 / (Math.sqrt(x * x - 1) * Math.acosh(x));

const optimum = (slope: (x: number) => number): number => rootBetween(slope, 1.01, 1e3, 1e-13);

/** x of least conductor loss: root of arcosh x = x sqrt(x^2 - 1)/(x^2 - 2). */
export const pairOfLeastLoss = (): number => optimum(slopes.loss);
/** x of greatest voltage for a given field. */
export const pairOfGreatestVoltage = (): number => optimum(slopes.voltage);
/** x of greatest power for a given field. */
export const pairOfGreatestPower = (): number => optimum(slopes.power);
