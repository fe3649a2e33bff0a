/** Everything about a ribbon that is a number: columns, levels, strips. */
import type { Answer } from "@feedpath/engine";
import { requiredNumber } from "../kit/answerValues";
import { placeColumns, type RibbonColumn, segmentsOf, severalFeedPoints } from "./columns";
import { feedPointsWords, type JointWords, jointWords } from "./jointWords";
import { feedPoints } from "./partsInUse";
import type { StagePlan } from "./stagePlan";
import { type PlacedStrip, placeStrips, wattsSize } from "./stripPlaces";
import { heatStrips, leastShare } from "./strips";

interface RibbonJoint extends JointWords {
  readonly x: number;
  readonly power: number;
}

export interface RibbonPlan {
  readonly stage: StagePlan;
  /** px for one watt. */
  readonly k: number;
  readonly top: number;
  /** Where the drops end. */
  readonly bottom: number;
  /** Where the labels of the drops end. */
  readonly end: number;
  readonly left: number;
  readonly xFeed: number;
  readonly skyRight: number;
  readonly columns: readonly RibbonColumn[];
  readonly strips: readonly PlacedStrip[];
  readonly joints: readonly RibbonJoint[];
  readonly whole: number;
  readonly intoAntenna: number;
  readonly radiated: number;
}

const leastRun = 96;

function placedColumns(answer: Answer, stage: StagePlan, whole: number, intoAntenna: number): RibbonColumn[] {
  const { compact, s, xFeed } = stage;
  const all = segmentsOf(answer, intoAntenna);
  const segments = compact ? all.filter((one) => one.isLine || one.heat >= leastShare * whole) : all;
  const narrow = compact ? 12 : 24 * s;
  const least = compact ? 40 : 72 * s;
  const lines = segments.filter((one) => one.isLine).length;
  const needed = narrow * (segments.length - lines) + least * lines;
  const run = Math.max(xFeed - stage.xTransmitter, leastRun, needed);
  return placeColumns(segments, xFeed - Math.min(run, xFeed - (compact ? 8 : 16 * s)), xFeed, narrow, least);
}

function placedJoints(answer: Answer, columns: readonly RibbonColumn[], left: number, xFeed: number): RibbonJoint[] {
  const first = columns[0];
  const ends = [
    { name: first?.fromJoint ?? "transmitter", x: left, power: first?.power[0] },
    ...columns.map((column) => ({ name: column.toJoint, x: column.x1, power: column.power.at(-1) })),
  ];
  if (!first) ends.push({ name: answer.joints.at(-1)?.name ?? "", x: xFeed, power: answer.joints.at(-1)?.power });
  return ends.flatMap(({ name, x, power }): RibbonJoint[] => {
    const joint = answer.joints.find((one) => one.name === name);
    if (joint) return [{ ...jointWords(joint), x, power: power ?? joint.power }];
    const feeds = feedPoints(answer);
    if (name !== severalFeedPoints || feeds.length === 0) return [];
    return [{ ...feedPointsWords(feeds), x, power: power ?? feeds.reduce((sum, one) => sum + one.power, 0) }];
  });
}

/** Plan of the ribbon whose band begins at y = `top`. */
export function ribbonPlan(answer: Answer, stage: StagePlan, top: number): RibbonPlan {
  const whole = requiredNumber(answer, "powerFromTransmitter");
  const radiated = requiredNumber(answer, "radiatedPower");
  const intoAntenna = radiated + requiredNumber(answer, "heatInSoil") + requiredNumber(answer, "heatInWires");
  const columns = placedColumns(answer, stage, whole, intoAntenna);
  const left = columns[0]?.x0 ?? Math.min(stage.xTransmitter, stage.xFeed - leastRun);
  const k = stage.pixelsPerWatt ?? stage.bandHeight / whole;
  const { width, s, compact, xFeed } = stage;
  const strips = placeStrips(heatStrips(answer, columns, xFeed, compact ? 0.45 : s), { k, s, compact, width });
  const bottom = top + k * whole + stage.drop;
  const secondRow = strips.some((strip) => strip.label.apart) ? 16 : 0;
  return {
    stage,
    k,
    top,
    bottom,
    end: bottom + stage.below + secondRow,
    left,
    xFeed,
    skyRight: compact ? width : width - 104 * s,
    columns,
    strips,
    joints: placedJoints(answer, columns, left, xFeed),
    whole,
    intoAntenna,
    radiated,
  };
}

/** Lower edge of the power band from left to right: x in px, net power in W. */
export const lowerEdge = (plan: RibbonPlan): (readonly [number, number])[] =>
  plan.columns.length === 0
    ? [
        [plan.left, plan.whole],
        [plan.xFeed, plan.intoAntenna],
      ]
    : plan.columns.flatMap((column) =>
        column.power.map((power, i): readonly [number, number] => [
          column.x0 + ((column.x1 - column.x0) * i) / (column.power.length - 1),
          power,
        ]),
      );

/** px of the sky's strip that hold its label. */
export const leastSky = ({ compact, s }: StagePlan): number => (compact ? 22 : 36 * s);

/** One baseline for all watts inside the band; null when the band is too thin for them. */
export function insideBaseline(plan: RibbonPlan): number | null {
  const size = wattsSize(plan.stage);
  const sky = plan.k * plan.radiated;
  if (plan.k * plan.whole < 24 * plan.stage.s) return null;
  const height = sky >= leastSky(plan.stage) ? sky : plan.k * plan.intoAntenna;
  return height < size ? null : plan.top + height / 2 + 0.35 * size;
}
