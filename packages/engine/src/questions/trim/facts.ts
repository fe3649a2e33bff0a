/** The facts the sentences of `trim` are made of. */
import type { Verdict } from "../../answer/answer";
import type { WorkedPoint } from "../../chain/workedPoint";
import { swr } from "../../lines/reflection";
import { type MeasuredFacts, type TrimFacts, worthwhileShare } from "../../words/trim";
import { nameInSentence } from "../common/inUse";
import type { Worked } from "../common/worked";
import { pointAt } from "./bench";
import { dipAt, dipCurve, lengthOfDip } from "./dips";
import { feedPath, reflectionSize } from "./feedPath";
import { changeFor, hertzPerMetre } from "./ladder";
import type { Measured } from "./measured";
import type { Study } from "./study";

/** Further from the wanted frequency than this share nothing is cut. */
export const farShare = 0.2;

export function trimFacts(worked: Worked, study: Study, measured: Measured | null, limit: number): TrimFacts {
  const { bench, scan, present, best, resonant } = study;
  const slope = study.dips && hertzPerMetre(study.dips, bench.frequency);
  const read = measured && measuredFacts(study, measured);
  // What was measured says how the real wire behaves: like this length of the model.
  const asMeasured = read?.equivalent == null ? null : pointAt(bench, bench.frequency, read.equivalent);
  const now = asMeasured ?? present;
  const widest = Math.max(...bench.trimmed.ends.map((e) => e.share));
  const facts = {
    frequency: bench.frequency,
    limit,
    present: bench.trimmed.length,
    target: scan.lowestSwr,
    targetAtFeedPoint: scan.lowestSwrAtFeedPoint,
    resonance: scan.resonance,
    ends: bench.trimmed.ends,
    swrNow: now.swrAtTransmitter,
    swrBest: best?.swrAtTransmitter ?? null,
    wattsNow: now.powerIntoAntenna,
    wattsBest: best?.powerIntoAntenna ?? null,
    wattsResonant: resonant?.powerIntoAntenna ?? null,
    swrResonant: resonant?.swrAtTransmitter ?? null,
    rated: bench.rated,
    delivered: (best ?? present).powerFromTransmitter,
    falls: fallsTowards(study),
    span: scan.span,
    tuner: tunerOf(worked.point),
    kilohertzPerCentimetre: slope === null ? null : Math.abs(slope) / widest / 1e5,
    measured: read,
  };
  return { ...facts, verdict: facts.tuner === null ? verdictOf(facts) : null };
}

const tunerOf = (point: WorkedPoint): string | null => {
  const tuner = point.parts.find((p) => p.edge.kind === "tuner" && p.edge.inUse);
  return tuner ? nameInSentence(point, tuner.edge.name) : null;
};

/** Good: below the limit, and no other length brings a percent more watts. Workable: trimming brings it below. */
function verdictOf(f: Omit<TrimFacts, "verdict">): Verdict {
  const gained = (f.wattsBest ?? f.wattsNow) - f.wattsNow;
  if (f.swrNow < f.limit && gained < worthwhileShare * f.delivered) return "good";
  return f.swrNow < f.limit || (f.swrBest !== null && f.swrBest < f.limit) ? "workable" : "trouble";
}

function fallsTowards({ scan, path, bench }: Study): TrimFacts["falls"] {
  if (scan.lowestSwr !== null) return null;
  const { from, to } = scan.span;
  const size = (l: number) => reflectionSize(path.towardsTransmitter(bench.frequency, scan.feed.at(l)), bench.rated);
  return size(to) < size(from) ? "longer" : "shorter";
}

function measuredFacts(study: Study, measured: Measured): MeasuredFacts {
  const { bench, plane, scan } = study;
  const { station, band, rated, frequency, trimmed } = bench;
  const far = Math.abs(measured.dip / frequency - 1) > farShare;
  const path = feedPath(station, band, measured.at);
  const centre = scan.lowestSwr ?? scan.resonance;
  const read = plane && path && centre !== null ? dipCurve(plane, path, rated, centre, frequency) : null;
  const inside = plane !== null && trimmed.length >= plane.lengths.from && trimmed.length <= plane.lengths.to;
  const near = centre === null ? frequency : (frequency * centre) / trimmed.length;
  const usable = !far && read !== null && study.dips !== null;
  return {
    dip: measured.dip,
    at: measured.at,
    says: saysOf(measured),
    predicted: inside && plane && path ? dipAt(plane, path, rated, trimmed.length, near) : null,
    change: usable ? changeFor(read, study.dips!, measured.dip, frequency) : null,
    equivalent: usable ? lengthOfDip(read, measured.dip) : null,
    far,
  };
}

function saysOf({ from, at, file }: Measured): string {
  if (from === "sweep") return `in the sweep of ${file} at the ${at} is`;
  return from === "readings" ? `by the readings at the ${at} is` : "was measured";
}

/** SWR at the feed point of a worked point. */
export const swrAtFeedPoint = (point: WorkedPoint): number =>
  swr(point.joints.find((j) => j.name.startsWith("feed point"))!.impedance, point.ratedResistance);
