/** The facts the sentences of `sky` are made of. */
import type { Verdict } from "../../answer/answer";
import { strongestOfCut } from "../../fields/cutExtremes";
import { firstHop } from "../../fields/firstHop";
import { levelCut } from "../../fields/patternCut";
import { rootBetween } from "../../numerics/crossings";
import { isRealSoil } from "../../wires/structure";
import type { SkyFacts } from "../../words/sky";
import type { Worked } from "../common/worked";
import { dbiAt, lowAndHigh, type SkyStudy, toDbi } from "./study";

/** dB below the strongest direction: half an S-unit is hardly heard, one and a half are. Our rule. */
export const goodUpTo = 3;
export const workableUpTo = 9;

export interface Layers {
  /** m. */
  readonly e: number;
  readonly f: number;
}

const degree = Math.PI / 180;
const toDegrees = (radians: number): number => radians / degree;

export function skyFacts(worked: Worked, study: SkyStudy, layers: Layers): SkyFacts {
  const { driven, account } = worked.result;
  const { aim, strongest, reference, perfect } = study;
  const share = worked.point.powerIntoAntenna / account.powerIn;
  const { below30, above60 } = lowAndHigh(driven);
  const gain = dbiAt(driven, aim.elevation, aim.azimuth);
  const maximum = toDbi(strongest.gain);
  const best = strongestOfCut(levelCut(driven, aim.elevation));
  const wanted = aim.wanted.elevation || aim.wanted.direction;
  const loss = maximum - gain;
  const verdict: Verdict = loss <= goodUpTo ? "good" : loss <= workableUpTo ? "workable" : "trouble";
  const soil = worked.point.antenna.soil;
  const hops = soil.kind !== "free space" && aim.elevation > 0;
  return {
    delivered: worked.point.powerFromTransmitter,
    radiated: account.radiated * share,
    below30: below30 * share,
    above60: above60 * share,
    nearMaximum: study.nearMaximum * account.radiated * share,
    intoAntenna: worked.point.powerIntoAntenna,
    strongest: {
      elevation: toDegrees(strongest.elevation),
      azimuth: toDegrees(strongest.azimuth),
      gain: maximum,
    },
    aim: {
      elevation: toDegrees(aim.elevation),
      azimuth: toDegrees(aim.azimuth),
      wanted: aim.wanted,
      gain,
      bestGain: Math.max(gain, toDbi(best.gain)),
      bestAzimuth: toDegrees(best.angle) % 360,
    },
    roundabout: study.level.length === 0,
    reference: typeof reference === "string" ? null : referenceFacts(study, reference),
    perfectGain: perfect === null || typeof perfect === "string" ? null : dbiAt(perfect, aim.elevation, aim.azimuth),
    crossing: crossingOf(worked, study),
    uprightShare: study.polarisation?.uprightShare ?? 0,
    gainAtFive: dbiAt(driven, 5 * degree, aim.azimuth),
    hops: hops ? { e: firstHop(aim.elevation, layers.e), f: firstHop(aim.elevation, layers.f) } : null,
    overSoil: isRealSoil(soil),
    verdict: wanted ? verdict : null,
  };
}

function referenceFacts(study: SkyStudy, reference: Exclude<SkyStudy["reference"], string>): SkyFacts["reference"] {
  const { aim } = study;
  const elevations = Array.from({ length: 90 }, (_, i) => (i + 1) * degree);
  const gains = elevations.map((e) => dbiAt(reference.driven, e, aim.azimuth));
  return {
    height: reference.height,
    gain: dbiAt(reference.driven, aim.elevation, aim.azimuth),
    maximum: Math.max(...gains),
    gainAtTen: dbiAt(reference.driven, 10 * degree, aim.azimuth),
  };
}

/** Elevation (deg) up to which the antenna is the stronger one of the two, from the lowest angles on; null where it is not, or always. */
function crossingOf(worked: Worked, { aim, reference }: SkyStudy): number | null {
  if (typeof reference === "string") return null;
  const ahead = (elevation: number): number =>
    dbiAt(worked.result.driven, elevation, aim.azimuth) - dbiAt(reference.driven, elevation, aim.azimuth);
  for (let e = 1; e < 90; e++) {
    if (ahead(e * degree) < 0) {
      return e === 1 ? null : toDegrees(rootBetween(ahead, (e - 1) * degree, e * degree, 1e-4));
    }
  }
  return null;
}
