/** Everything `sky` finds out about the pattern, in radians and linear gains. */
import { type Extreme, extremes, halfPowerAngles } from "../../fields/cutExtremes";
import { farField } from "../../fields/farField";
import { gain } from "../../fields/gain";
import { directionInPlane, gainOfCut, levelCut, type PatternCut, verticalCut } from "../../fields/patternCut";
import { averageGain, directivity, frontToBack, frontToRear } from "../../fields/patternMeasures";
import { type Polarisation, polarisation } from "../../fields/polarisation";
import { radiatedBetween, type SkyGains, shareNearMaximum, skyGains } from "../../fields/skyShares";
import type { Direction } from "../../fields/strongestDirection";
import type { DrivenAntenna } from "../../wires/driveAntenna";
import { isRealSoil } from "../../wires/structure";
import type { Worked } from "../common/worked";
import type { Aim } from "./aim";
import { overPerfectPlane, type ReferenceDipole, referenceDipole, topOf } from "./compared";

export interface PatternLobe extends Direction {
  readonly kind: Extreme["kind"];
  /** Radians within 3 dB in the plane of the cut; null when it does not close, and for minima. */
  readonly width: number | null;
}

export interface SkyStudy {
  readonly aim: Aim;
  readonly strongest: Direction;
  /** Lobes and minima of the vertical plane through the aim, and of the cone at its elevation. */
  readonly upright: readonly PatternLobe[];
  readonly level: readonly PatternLobe[];
  readonly sky: SkyGains;
  readonly nearMaximum: number;
  readonly directivity: number;
  readonly averageGain: number;
  /** Null where the strongest direction is so steep that it has no front. */
  readonly front: { readonly back: number; readonly rear: number } | null;
  readonly widths: { readonly vertical: number | null; readonly level: number | null };
  readonly polarisation: Polarisation | null;
  readonly reference: ReferenceDipole | string;
  readonly perfect: DrivenAntenna | string | null;
}

const degree = Math.PI / 180;
/** Degrees of elevation and azimuth between the gains over the sky. */
export const skyStep = 5;
const noFrontFrom = 80 * degree;

export function studySky(worked: Worked, aim: Aim): SkyStudy {
  const { driven, strongest, account } = worked.result;
  const vertical = verticalCut(driven, aim.azimuth);
  const level = levelCut(driven, aim.elevation);
  const sky = skyGains(driven, skyStep);
  const steep = Math.abs(strongest.elevation) > noFrontFrom;
  const widthAt = (cut: PatternCut, angle: number): number | null =>
    widthOf(cut, { angle, gain: gainOfCut(cut, angle) });
  const top = verticalCut(driven, strongest.azimuth);
  const angleOfTop = strongest.elevation < 0 ? strongest.elevation + 2 * Math.PI : strongest.elevation;
  return {
    aim,
    strongest,
    upright: extremes(vertical).map((e) => ({
      ...directionInPlane(e.angle, aim.azimuth),
      kind: e.kind,
      gain: e.gain,
      width: e.kind === "lobe" ? widthOf(vertical, e) : null,
    })),
    level: extremes(level).map((e) => ({
      elevation: aim.elevation,
      azimuth: e.angle > 2 * Math.PI - 1e-4 ? 0 : e.angle,
      kind: e.kind,
      gain: e.gain,
      width: e.kind === "lobe" ? widthOf(level, e) : null,
    })),
    sky,
    nearMaximum: shareNearMaximum(sky, strongest.gain),
    directivity: directivity(driven, strongest, account.radiated),
    averageGain: averageGain(driven, account.radiated),
    front: steep ? null : { back: frontToBack(driven, strongest), rear: frontToRear(driven, strongest) },
    widths: {
      vertical: widthAt(top, angleOfTop),
      level: steep ? null : widthAt(levelCut(driven, strongest.elevation), strongest.azimuth),
    },
    polarisation: polarisation(farField(driven, strongest.elevation, strongest.azimuth)),
    reference: referenceDipole(worked, topOf(worked), aim.azimuth),
    perfect: overPerfectPlane(worked),
  };
}

function widthOf(cut: PatternCut, lobe: { readonly angle: number; readonly gain: number }): number | null {
  const angles = halfPowerAngles(cut, lobe);
  return angles && angles.to - angles.from;
}

/** Power (W, of the driven antenna) below 30 and above 60 degrees of elevation. */
export const lowAndHigh = (driven: DrivenAntenna): { readonly below30: number; readonly above60: number } => ({
  below30: radiatedBetween(driven, driven.solution.soil.kind === "free space" ? -Math.PI / 2 : 0, 30 * degree),
  above60: radiatedBetween(driven, 60 * degree, Math.PI / 2),
});

/** dBi, not below -60: a null has no bottom. Elevation and azimuth in radians. */
export function dbiAt(driven: DrivenAntenna, elevation: number, azimuth: number): number {
  const grazing = isRealSoil(driven.solution.soil) && Math.abs(Math.sin(elevation)) < 1e-12;
  return toDbi(grazing ? 0 : gain(driven, elevation, azimuth));
}

export const deepest = -60;
export const toDbi = (linear: number): number => Math.max(deepest, 10 * Math.log10(Math.max(linear, 1e-12)));
