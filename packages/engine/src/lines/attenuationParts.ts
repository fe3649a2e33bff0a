/** Where the attenuation of a line comes from: inner conductor, outer conductor, dielectric. */
import { statedTemperature } from "../conductors/metalTemperature";
import { magnitudeSquared } from "../numerics/complex";
import { decibelsPerNeper, fromImmittance, type LineOptions, lineImmittance } from "./lineConstants";
import type { LineModel } from "./lineModel";

/** Np/m each. `conductors` + `dielectric` + `excess` is the attenuation, the real part of gamma. */
export interface AttenuationParts {
  /** All conductors together. */
  readonly conductors: number;
  /** Inner conductor, or both wires of a pair; null where a data sheet does not tell. */
  readonly inner: number | null;
  /** Outer conductor of a coaxial line, shield of a pair, or plane; 0 for a pair that has none, null as above. */
  readonly outer: number | null;
  readonly dielectric: number;
  /** What was given as loss over that of a new line; its origin is not known. */
  readonly excess: number;
}

/**
 * Parts of the attenuation from the power that a forward wave on a matched line leaves in each: with the current I the series
 * resistance takes R |I|^2 a metre and the shunt conductance G |Z0 I|^2, and the wave carries Re(Z0) |I|^2, which falls by
 * twice the attenuation. So alpha = R/(2 Re Z0) + G |Z0|^2/(2 Re Z0), exactly and at every frequency; R is shared between the
 * conductors as they stand in it. What leaks through a shield or is radiated is no part of it: along a uniform line it
 * depends on what lies outside (`shieldCoupling`), and of an open pair on its ends.
 * `frequency` in Hz, above 0.
 */
export function attenuationParts(model: LineModel, frequency: number, options: LineOptions = {}): AttenuationParts {
  const immittance = lineImmittance(model, frequency, options.temperature ?? statedTemperature);
  const { z0 } = fromImmittance(immittance, frequency, 0);
  const conductors = immittance.series.re / (2 * z0.re);
  const outer = (immittance.outerResistance ?? 0) / (2 * z0.re);
  const told = model.kind !== "data sheet";
  return {
    conductors,
    inner: told ? conductors - outer : null,
    outer: told ? outer : null,
    dielectric: (immittance.shunt.re * magnitudeSquared(z0)) / (2 * z0.re),
    excess: (options.excessDecibelsPerMetre ?? 0) / decibelsPerNeper,
  };
}
