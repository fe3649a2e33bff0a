/** Water by frequency, temperature and salinity: Recommendation ITU-R P.527-4 (2017), two Debye relaxations and ions. */
import { vacuumPermittivity } from "../numerics/vacuum";
import type { SoilNumbers } from "./soilMedium";

/** Values of two relaxations: static, between them and above; frequencies in GHz. */
export interface Relaxations {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly first: number;
  readonly second: number;
}

/** Equations 12 to 17; `t` in degrees Celsius, -4 to 40. */
export function pureWater(t: number): Relaxations {
  const theta = 300 / (t + 273.15) - 1;
  const low = 77.66 + 103.3 * theta;
  const first = 20.2 - 146.4 * theta + 316 * theta * theta;
  return { low, middle: 0.0671 * low, high: 3.52 - 7.52 * theta, first, second: 39.8 * first };
}

/** Equations 19 to 24: what salt changes; `s` in g/kg. */
function saltWater(t: number, s: number): Relaxations {
  const pure = pureWater(t);
  return {
    low: pure.low * Math.exp(-3.56417e-3 * s + 4.74868e-6 * s * s + 1.15574e-5 * t * s),
    middle: pure.middle * Math.exp(-6.28908e-3 * s + 1.76032e-4 * s * s - 9.22144e-5 * t * s),
    high: pure.high * (1 + s * (-2.04265e-3 + 1.57883e-4 * t)),
    first: pure.first * (1 + s * (2.39357e-3 - 3.1353e-5 * t + 2.52477e-7 * t * t)),
    second: pure.second * (1 + s * (-1.99723e-2 + 1.81176e-4 * t)),
  };
}

/** Conductivity of the ions of sea water in S/m, after Stogryn; `t` in degrees Celsius, `s` in g/kg. */
function ionicConductivity(t: number, s: number): number {
  const at35 = 2.903602 + 8.607e-2 * t + 4.738817e-4 * t ** 2 - 2.991e-6 * t ** 3 + 4.3047e-9 * t ** 4;
  const bySalt = (s * (37.5109 + 5.45216 * s + 1.4409e-2 * s * s)) / (1004.75 + 182.283 * s + s * s);
  const slope = (6.9431 + 3.2841 * s - 9.9486e-2 * s * s) / (84.85 + 69.024 * s + s * s);
  const offset = 49.843 - 0.2276 * s + 0.198e-2 * s * s;
  return at35 * bySalt * (1 + (slope * (t - 15)) / (offset + t));
}

/** What water is at one frequency; `dielectricLoss` is the imaginary part of the permittivity, ions included, positive. */
export interface Water extends SoilNumbers {
  readonly dielectricLoss: number;
  /** Of the ions alone, S/m. */
  readonly ionicConductivity: number;
}

/**
 * Water at a frequency in Hz, `temperature` in degrees Celsius (-4 to 40), `salinity` in g/kg (0 for pure water, up to 40).
 * `conductivity` holds all loss at this frequency. Model to 1000 GHz; RangeError outside of its range.
 * Coefficients as in public transcriptions of the Recommendation; those of the ions from memory, confirmed by a value
 * computed elsewhere (the ledger).
 */
export function water(frequency: number, temperature: number, salinity: number): Water {
  if (
    !(frequency > 0 && frequency <= 1e12 && temperature >= -4 && temperature <= 40 && salinity >= 0 && salinity <= 40)
  )
    throw new RangeError(
      `water at ${frequency} Hz, ${temperature} degrees, ${salinity} g/kg: expected up to 1e12 Hz, -4 to 40 degrees, 0 to 40 g/kg`,
    );
  const f = frequency / 1e9;
  const { low, middle, high, first, second } = saltWater(temperature, salinity);
  const ions = ionicConductivity(temperature, salinity);
  const [x, y] = [f / first, f / second];
  const real = (low - middle) / (1 + x * x) + (middle - high) / (1 + y * y) + high;
  const loss = ((low - middle) * x) / (1 + x * x) + ((middle - high) * y) / (1 + y * y) + (18 * ions) / f;
  return {
    relativePermittivity: real,
    conductivity: loss * 2 * Math.PI * frequency * vacuumPermittivity,
    dielectricLoss: loss,
    ionicConductivity: ions,
  };
}
