/** The first higher mode of a coaxial line, TE11: above its cut-off the line is no longer a line. */
import { relativePermittivity } from "../dielectrics/complexPermittivity";
import type { Dielectric } from "../dielectrics/dielectric";
import { bessel } from "../numerics/besselY";
import { rootBetween } from "../numerics/crossings";
import { speedOfLight } from "../numerics/vacuum";
import { radiusRatio } from "./coaxialLine";
import type { CoaxialLine, LineModel } from "./lineModel";

/**
 * Cut-off wave number times the inner radius of the TE11 mode between round conductors of the diameter ratio D/d (above 1):
 * the least root of J1'(u) Y1'(u x) - J1'(u x) Y1'(u), to 1e-14. Source: Schelkunoff; e.g. Pozar, Microwave Engineering,
 * 4th ed. 2012, section 3.5.
 */
export function te11Root(ratio: number): number {
  if (!(ratio > 1 && ratio <= 1e4))
    throw new RangeError(`TE11 mode: ratio D/d ${ratio}; expected more than 1, up to 10000`);
  // The usual estimate 2/(1 + x) lies at most 9 % above the root and 3 % below it; the next mode of this kind is far off.
  const usual = 2 / (1 + ratio);
  return usual * rootBetween((scale) => crossProduct(usual * scale, ratio), 0.85, 1.1, 1e-15);
}

function crossProduct(u: number, ratio: number): number {
  const [inside, outside] = [slopes(u), slopes(u * ratio)];
  return inside.j * outside.y - outside.j * inside.y;
}

/** J1' and Y1': Z0 - Z1/x. */
function slopes(x: number): { readonly j: number; readonly y: number } {
  const { j0, j1, y0, y1 } = bessel(x);
  return { j: j0 - j1 / x, y: y0 - y1 / x };
}

export interface CutOff {
  /** Hz, exact for round smooth conductors; strands by their effective radius. */
  readonly frequency: number;
  /** Hz by the usual estimate, with the permittivity at the exact cut-off: a wavelength in the dielectric as long as the mean circumference. */
  readonly usualEstimate: number;
  /** Cut-off wave number times (d + D)/4: what the estimate takes as 1. */
  readonly overEstimate: number;
}

/** Cut-off of the first higher mode of a coaxial line with the permittivity its dielectric has there. */
export function coaxialCutOff(line: CoaxialLine): CutOff {
  const ratio = radiusRatio(line);
  const inner = line.outer.innerRadius / ratio;
  const overEstimate = (te11Root(ratio) * (1 + ratio)) / 2;
  const inVacuum = (overEstimate * speedOfLight) / (Math.PI * inner * (1 + ratio));
  const frequency = inDielectric(line.dielectric, inVacuum);
  return { frequency, usualEstimate: frequency / overEstimate, overEstimate };
}

/** Solves f = f0/sqrt(eps(f)); the permittivity changes slowly, so that a few rounds settle it. */
function inDielectric(dielectric: Dielectric, inVacuum: number): number {
  let frequency = inVacuum;
  for (let round = 0; round < 60; round++) {
    const next = inVacuum / Math.sqrt(relativePermittivity(dielectric, 2 * Math.PI * frequency).re);
    if (Math.abs(next - frequency) <= 1e-14 * next) return next;
    frequency = next;
  }
  return frequency;
}

/**
 * Hz up to which the constants of a line hold because one mode alone can travel: the TE11 cut-off of a coaxial line; null
 * where the model knows no such end (a data sheet ends with its points, an open pair where it begins to radiate).
 */
export const greatestFrequency = (model: LineModel): number | null =>
  model.kind === "coaxial" ? coaxialCutOff(model).frequency : null;

/** A sentence for a frequency (Hz) at which TE11 can travel as well; none below. */
export function higherModeNotes(line: CoaxialLine, frequency: number): readonly string[] {
  // No root lies more than a tenth below the usual estimate, so that the root is found only where it decides.
  const mean = line.outer.innerRadius * (1 + 1 / radiusRatio(line));
  const permittivity = relativePermittivity(line.dielectric, 2 * Math.PI * frequency).re;
  if (frequency * Math.PI * mean * Math.sqrt(permittivity) < 0.85 * speedOfLight) return [];
  const cutOff = coaxialCutOff(line).frequency;
  return frequency < cutOff
    ? []
    : [
        `Above ${Number((cutOff / 1e9).toPrecision(4))} GHz, the cut-off of the TE11 mode, more than one wave can travel in this line: its constants do not describe it there.`,
      ];
}
