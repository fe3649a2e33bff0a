/** Which figures an answer has, by question. */
import type { Answer } from "@feedpath/engine";
import { bounceEnergy } from "./curves/bounceEnergy";
import { bounceLattice } from "./curves/bounceLattice";
import { bounceMoments } from "./curves/bounceMoments";
import { bounceStanding } from "./curves/bounceStanding";
import { bounceStart } from "./curves/bounceStart";
import { buildAttenuation } from "./curves/buildAttenuation";
import { buildImpedance } from "./curves/buildImpedance";
import { heightPanels } from "./curves/heightPanels";
import { impedanceCompromise } from "./curves/impedanceCompromise";
import { lineAlternatives } from "./curves/lineAlternatives";
import { lineBars } from "./curves/lineBars";
import { lineLength } from "./curves/lineLength";
import { listenNoise } from "./curves/listenNoise";
import { nearbyDistance } from "./curves/nearbyDistance";
import { outsideAlong } from "./curves/outsideAlong";
import { outsideChoke } from "./curves/outsideChoke";
import { outsideLength } from "./curves/outsideLength";
import { radialCuts } from "./curves/radialCuts";
import { radialLengths, radialNumber } from "./curves/radialPanels";
import { stressAlong } from "./curves/stressAlong";
import { hasCourse, stressInTime } from "./curves/stressInTime";
import { swrAcrossBand } from "./curves/swrAcrossBand";
import { hasLadder, trimLadder } from "./curves/trimLadder";
import { trimLengths } from "./curves/trimLengths";
import type { Figure } from "./kit/figure";
import { azimuthPattern } from "./patterns/azimuthPattern";
import { elevationPattern } from "./patterns/elevationPattern";
import { nearbyCurrents } from "./patterns/nearbyCurrents";
import { nearbyPattern } from "./patterns/nearbyPattern";
import { radialCurrents } from "./patterns/radialCurrents";
import { skyShape } from "./patterns/skyShape";
import { stage } from "./stage/stage";
import type { StageOptions } from "./stage/stageOptions";

/** Null where the answer has not what the figure draws. */
type Draw = (answer: Answer, options: StageOptions) => Figure | null;

/** Curves are as wide as reading allows, whatever the stage takes; px at scale 1. */
const widestCurves = 640;

const curves =
  (draw: Draw): Draw =>
  (answer, options) => {
    const scale = options.scale ?? 1;
    return draw(answer, { ...options, width: Math.min(options.width, widestCurves * scale), scale });
  };

/** None where no dip could be followed from length to length. */
const ladder: Draw = (answer, options) => (hasLadder(answer) ? trimLadder(answer, options) : null);

/** None where the answer has no lines, or no line with a build. */
const hasLines = (answer: Answer): boolean => answer.tables.some(({ name }) => name === "alongLines");
const along: Draw = (answer, options) => (hasLines(answer) ? stressAlong(answer, options) : null);
const withoutLines: Draw = (answer, options) => (hasLines(answer) ? null : stage(answer, options));
const course: Draw = (answer, options) => (hasCourse(answer) ? stressInTime(answer, options) : null);

/** First the figure that leads, then those of the depth. A question without an entry has no figure yet. */
const figuresByQuestion: Readonly<Record<string, readonly Draw[]>> = {
  watts: [stage],
  band: [stage, curves(swrAcrossBand)],
  height: [stage, curves(heightPanels)],
  trim: [stage, curves(ladder), curves(trimLengths)],
  line: [curves(lineBars), curves(lineAlternatives), curves(lineLength)],
  sky: [curves(elevationPattern), curves(azimuthPattern), curves(skyShape)],
  outside: [stage, curves(outsideAlong), curves(outsideChoke), curves(outsideLength)],
  radials: [stage, curves(radialNumber), curves(radialLengths), curves(radialCuts), curves(radialCurrents)],
  nearby: [stage, curves(nearbyCurrents), curves(nearbyDistance), curves(nearbyPattern)],
  build: [curves(buildAttenuation), curves(buildImpedance)],
  limits: [withoutLines, curves(along), curves(course)],
  why: [curves(impedanceCompromise)],
  listen: [curves(listenNoise)],
  bounce: [bounceMoments, bounceLattice, bounceStanding, bounceStart, bounceEnergy].map(curves),
};

/** Ids of the questions that have figures. */
export const questionsWithFigures: readonly string[] = Object.keys(figuresByQuestion);

/** Figures of an answer in reading order; each carries its title, description and table. Empty for a question without figures. */
export const figuresOf = (answer: Answer, options: StageOptions): Figure[] =>
  (figuresByQuestion[answer.question] ?? []).flatMap((draw) => draw(answer, options) ?? []);

/** Titles and descriptions are the same at every width; this one is of the desktop page, px. */
const listedAt = 1112;

/** The answer with `figures` filled: what `figuresOf` draws for it, as names, titles and descriptions. */
export function withFigures(answer: Answer): Answer {
  const drawn = figuresOf(answer, { width: listedAt });
  return { ...answer, figures: drawn.map(({ name, title, description }) => ({ name, title, description })) };
}
