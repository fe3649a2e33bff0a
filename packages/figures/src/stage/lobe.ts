/** The radiation in the plane of the cut: a soft shape, polar about the foot of the feed point. */
import type { Answer } from "@feedpath/engine";
import { numbersOf, requiredNumber, requiredTable } from "../kit/answerValues";
import type { Mark } from "../kit/figure";
import { type Point, polyline } from "../kit/outline";
import type { StagePlan } from "./stagePlan";

const toLinear = (decibels: number): number => 10 ** (decibels / 10);

/** Power into the antenna, W. */
export const powerIntoAntenna = (answer: Answer): number => requiredNumber(answer, "powerIntoAntenna");

/** Largest power gain in the cut times power into the antenna, W: share the largest between variants. */
export function strengthOf(answer: Answer): number {
  const gains = numbersOf(requiredTable(answer, "elevationCut"), "gain");
  return toLinear(Math.max(...gains)) * powerIntoAntenna(answer);
}

export interface Lobe {
  readonly marks: readonly Mark[];
  /** px from the foot to the outline at an elevation in degrees (0 to 180). */
  readonly radiusAt: (elevation: number) => number;
  readonly outline: readonly Point[];
  readonly strongest: Strongest;
}

export interface Strongest {
  /** Degrees through the zenith, 0 the horizon on the right. */
  readonly elevation: number;
  /** Degrees over which the gain stays within 0.1 dB. */
  readonly from: number;
  readonly to: number;
}

/** The strongest elevation of a cut; of two equal ones (within 0.01 dB) the one on the right. */
export function strongestOf(elevations: readonly number[], gains: readonly number[]): Strongest {
  const most = Math.max(...gains);
  const peak = gains.findIndex((gain) => gain >= most - 0.01);
  const best = gains.indexOf(Math.max(...gains.slice(peak, peak + 10)), peak);
  let [first, last] = [best, best];
  while (first > 0 && gains[first - 1]! >= most - 0.1) first--;
  while (last < gains.length - 1 && gains[last + 1]! >= most - 0.1) last++;
  return { elevation: elevations[best]!, from: elevations[first]!, to: elevations[last]! };
}

/** Outline and fill of the lobe about (xFeed, surfaceY). */
export function lobe(answer: Answer, plan: StagePlan): Lobe {
  const table = requiredTable(answer, "elevationCut");
  const elevations = numbersOf(table, "elevation");
  const gains = numbersOf(table, "gain");
  const reference = plan.referenceStrength ?? strengthOf(answer);
  const into = powerIntoAntenna(answer);
  const radii = gains.map((gain) => plan.lobeRadius * Math.sqrt((toLinear(gain) * into) / reference));
  const { xFeed: cx, surfaceY: cy } = plan;
  const outline = radii.map((r, i): Point => {
    const angle = (elevations[i]! * Math.PI) / 180;
    return [cx + r * Math.cos(angle), cy - r * Math.sin(angle)];
  });
  const radial = { cx, cy, r: Math.max(...radii), centre: 0.04, edge: 0.34 };
  const stroke = { role: "field", width: 1.5 * plan.s } as const;
  return {
    marks: [
      {
        kind: "path",
        id: "sky",
        d: polyline([[cx, cy], ...outline], true),
        fill: { role: "field", radial },
      },
      { kind: "path", id: "sky", d: polyline(outline), stroke },
    ],
    radiusAt: (elevation) => {
      const next = elevations.findIndex((one) => one >= elevation);
      return radii[next < 0 ? radii.length - 1 : next] ?? 0;
    },
    outline,
    strongest: strongestOf(elevations, gains),
  };
}
