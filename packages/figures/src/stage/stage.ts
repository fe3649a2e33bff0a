/** The stage: the section over the ribbon, in one horizontal order. */
import type { Answer } from "@feedpath/engine";
import { boxesAlong } from "../kit/box";
import type { Figure, Mark } from "../kit/figure";
import { createLabelBoard, type LabelBoard } from "../kit/labelBoard";
import { type Point, polyline, rounded } from "../kit/outline";
import { angleLabels, arcAndRay, reserveLobe } from "./angleMarks";
import { reserveStation, stationMarks, transmitterBox } from "./antennaMarks";
import { aroundMarks, aroundOf, reserveAround } from "./around";
import { aroundLabels } from "./aroundLabels";
import { fromAbove } from "./fromAbove";
import { lobe } from "./lobe";
import { linePoints } from "./partsOnLine";
import { ribbonLabels } from "./ribbonLabels";
import { ribbonMarks } from "./ribbonMarks";
import { type RibbonPlan, ribbonPlan } from "./ribbonPlan";
import { sectionLabels } from "./sectionLabels";
import { soilNotes, surfaceMarks } from "./soilMarks";
import { type StageOptions, stageStyle } from "./stageOptions";
import { type StagePlan, stagePlan } from "./stagePlan";
import { stageDescription, stageTable } from "./stageWords";

function sectionMarks(answer: Answer, plan: StagePlan, board: LabelBoard): Mark[] {
  const { drawing } = answer;
  if (!drawing) return [];
  const around = aroundOf(drawing, plan);
  reserveStation(answer, drawing, plan, board);
  reserveAround(around, plan, board);
  const shape = lobe(answer, plan);
  reserveLobe(plan, shape, board);
  const inset = fromAbove(answer, plan, board);
  return [
    ...shape.marks,
    ...arcAndRay(plan, shape),
    ...surfaceMarks(drawing, plan),
    ...inset,
    ...aroundMarks(around, plan),
    ...stationMarks(answer, drawing, plan),
    ...sectionLabels(answer, drawing, plan, shape, board),
    ...aroundLabels(around, plan, board),
    ...angleLabels(plan, shape, board),
    ...soilNotes(answer, plan, board),
  ];
}

/** Dotted guides from transmitter and feed point down to their joints, as points. */
function guideLines(answer: Answer, plan: StagePlan, ribbon: RibbonPlan): Point[][] {
  const { drawing } = answer;
  if (plan.compact || !drawing) return [];
  const { s, surfaceY, sectionHeight } = plan;
  const bend = surfaceY + 0.45 * (sectionHeight - surfaceY);
  const transmitter = transmitterBox(linePoints(answer, drawing, plan), plan);
  const down = (from: number, y: number, to: number): Point[] => [
    [from, y],
    [from, bend],
    [to, sectionHeight + 4 * s],
  ];
  return [
    down(transmitter.x, transmitter.bottom + 3 * s, ribbon.left),
    down(plan.xFeed, surfaceY + 5 * s, ribbon.xFeed),
  ];
}

const guideMark = (points: readonly Point[], s: number): Mark => ({
  kind: "path",
  d: polyline(points),
  stroke: { role: "line", width: 1.3 * s, dash: `${rounded(1.5 * s)} ${rounded(4 * s)}` },
});

const ribbonBelow = (answer: Answer, plan: StagePlan): RibbonPlan =>
  ribbonPlan(answer, plan, (answer.drawing ? plan.sectionHeight : 0) + plan.gap);

/** Section over ribbon. An answer without a drawing gets the ribbon alone. */
export function stage(answer: Answer, options: StageOptions): Figure {
  const plan = stagePlan(answer, stageStyle(options));
  const below = ribbonBelow(answer, plan);
  const height = Math.ceil(below.end);
  const board = createLabelBoard(plan.width, height);
  const guides = guideLines(answer, plan, below);
  for (const guide of guides) boxesAlong(guide, 2 * plan.s).forEach(board.avoid);
  const upper = sectionMarks(answer, plan, board);
  const lower = ribbonMarks(below);
  const marks = [
    ...upper,
    ...guides.map((guide) => guideMark(guide, plan.s)),
    ...lower,
    ...ribbonLabels(answer, below, board),
  ];
  return figureOf("stage", answer, plan, height, marks);
}

function figureOf(name: string, answer: Answer, plan: StagePlan, height: number, marks: readonly Mark[]): Figure {
  return {
    name,
    title: answer.headline,
    width: plan.width,
    height,
    scale: plan.s,
    marks,
    description: stageDescription(answer),
    table: stageTable(answer),
  };
}

/** The section alone; needs a drawing. */
export function section(answer: Answer, options: StageOptions): Figure {
  if (!answer.drawing) {
    throw new Error(
      `The answer to "${answer.question}" has no drawing: a section cannot be drawn. Expected answer.drawing.`,
    );
  }
  const plan = stagePlan(answer, stageStyle(options));
  const height = Math.ceil(plan.sectionHeight);
  const board = createLabelBoard(plan.width, height);
  return figureOf("section", answer, plan, height, sectionMarks(answer, plan, board));
}

/** The ribbon alone. */
export function ribbon(answer: Answer, options: StageOptions): Figure {
  const plan = stagePlan(answer, stageStyle(options));
  const placed = ribbonPlan(answer, plan, plan.gap);
  const height = Math.ceil(placed.end);
  const board = createLabelBoard(plan.width, height);
  const marks = [...ribbonMarks(placed), ...ribbonLabels(answer, placed, board)];
  return figureOf("ribbon", answer, plan, height, marks);
}
