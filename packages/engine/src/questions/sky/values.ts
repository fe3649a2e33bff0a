/** The values that `sky` adds to those of every answer. */
import type { Value } from "../../answer/answer";
import type { SkyFacts } from "../../words/sky";
import { scalarValue } from "../common/values";
import type { Worked } from "../common/worked";
import { dbiAt, deepest, type SkyStudy, toDbi } from "./study";

/** Units of the numbers whose bounds are worked out (run.ts). */
const boundUnits: Readonly<Record<string, string>> = {
  gainAtElevation: "dBi",
  gainStraightUp: "dBi",
  radiatedBelow30: "W",
  radiatedAbove60: "W",
};

const toDegrees = (radians: number | null): number | null => (radians === null ? null : (radians * 180) / Math.PI);
const decibels = (ratio: number): number | null => {
  const value = 10 * Math.log10(ratio);
  return Number.isFinite(value) && value < -deepest ? value : null;
};

export function skyValues(f: SkyFacts, study: SkyStudy): Record<string, Value> {
  const { front, widths, polarisation } = study;
  const noFront = "strongest straight up: it has no front";
  const open = "the gain does not fall by 3 dB on both sides";
  const linear = polarisation !== null && !Number.isFinite(polarisation.axialRatio);
  const noDipole = "the dipole to compare with cannot be worked out here";
  const level = study.front === null ? noFront : open;
  const deep = front === null ? noFront : "a null lies behind it";
  return {
    wattsAtAim: scalarValue(f.delivered * 10 ** (Math.min(0, f.aim.gain - f.strongest.gain) / 10), "W"),
    belowMaximum: scalarValue(Math.max(0, f.strongest.gain - f.aim.gain), "dB"),
    radiatedNearMaximum: scalarValue(f.nearMaximum, "W"),
    isotropicPower: scalarValue(f.intoAntenna * 10 ** (f.strongest.gain / 10), "W"),
    directivity: scalarValue(toDbi(study.directivity), "dBi"),
    averageGain: scalarValue(decibels(study.averageGain), "dB"),
    beamWidthVertical: scalarValue(toDegrees(widths.vertical), "deg", open),
    beamWidthLevel: scalarValue(toDegrees(widths.level), "deg", level),
    frontToBack: scalarValue(front && decibels(front.back), "dB", deep),
    frontToRear: scalarValue(front && decibels(front.rear), "dB", deep),
    uprightShare: scalarValue(polarisation && 100 * polarisation.uprightShare, "%"),
    polarisationTilt: scalarValue(toDegrees(polarisation?.tilt ?? null), "deg"),
    axialRatio: scalarValue(
      polarisation?.axialRatio ?? null,
      "1",
      linear ? "infinite: the wave is linear" : "no field",
    ),
    dipoleGainAtElevation: scalarValue(f.reference?.gain ?? null, "dBi", noDipole),
    gainAgainstDipole: scalarValue(f.reference && f.aim.gain - f.reference.gain, "dB", noDipole),
    strongerThanDipoleBelow: scalarValue(f.crossing, "deg", "one of the two is stronger at all low angles"),
    soilCostAtElevation: scalarValue(
      f.perfectGain === null ? null : f.perfectGain - f.aim.gain,
      "dB",
      "there is no lossy soil, or the same antenna over a perfect plane cannot be worked out",
    ),
    firstHopByE: scalarValue(f.hops && f.hops.e / 1000, "km", "there is no rising ray over an earth"),
    firstHopByF: scalarValue(f.hops && f.hops.f / 1000, "km", "there is no rising ray over an earth"),
  };
}

/** The frame's values with the units of this question's own numbers. */
export function withOwnUnits(values: Readonly<Record<string, Value>>): Record<string, Value> {
  const entries = Object.entries(values).map(([name, value]): [string, Value] => {
    const unit = boundUnits[name];
    return [name, unit === undefined ? value : { ...value, unit }];
  });
  return Object.fromEntries(entries);
}

export const gainStraightUp = (worked: Pick<Worked, "result">): number =>
  dbiAt(worked.result.driven, Math.PI / 2, worked.result.strongest.azimuth);
