/** Polarisation of a plane wave from its two far-field components. */
import { magnitudeSquared } from "../numerics/complex";
import type { FarField } from "./farField";

export interface Polarisation {
  /** Share of the power in the upright component (theta); the rest is level (phi). 0 to 1. */
  readonly uprightShare: number;
  /** Of the major axis against the horizon, seen along the wave, from the right hand upwards; radians, 0 (level) to below pi. */
  readonly tilt: number;
  /** Major over minor axis of the ellipse, from 1; Infinity for a linear wave. */
  readonly axialRatio: number;
  /** Turning of the field seen along the wave (IEEE Std 145): clockwise is right. */
  readonly sense: "right" | "left" | "linear";
}

/** Ellipses thinner than this (minor over major axis) count as lines: rounding of the fields. */
const thinnest = 1e-9;

/**
 * By the Stokes parameters of the two components (Born and Wolf, Principles of Optics, 1.4.2). Theta, phi and the direction
 * of the wave form a right-handed set; time factor e^{+jwt}. Null where there is no field.
 */
export function polarisation({ eTheta, ePhi }: FarField): Polarisation | null {
  const [upright, level] = [magnitudeSquared(eTheta), magnitudeSquared(ePhi)];
  const whole = upright + level;
  if (whole === 0) return null;
  const together = 2 * (eTheta.re * ePhi.re + eTheta.im * ePhi.im);
  const turning = 2 * (eTheta.re * ePhi.im - eTheta.im * ePhi.re);
  // tan of half the angle whose sine is turning/whole; written so that a nearly linear wave keeps its digits.
  const minorOverMajor = Math.abs(turning) / (whole + Math.sqrt(Math.max(0, whole * whole - turning * turning)));
  const linear = minorOverMajor < thinnest;
  const tilt = 0.5 * Math.atan2(together, level - upright);
  const round = tilt < -1e-9 ? tilt + Math.PI : Math.max(0, tilt);
  return {
    uprightShare: upright / whole,
    tilt: round,
    axialRatio: linear ? Number.POSITIVE_INFINITY : 1 / minorOverMajor,
    sense: linear ? "linear" : turning < 0 ? "right" : "left",
  };
}
