/** The stage: the section over the ribbon, in one horizontal order. */
import type { Answer } from "@feedpath/engine";
import type { Figure, Mark } from "../kit/figure";
import { createLabelBoard, type LabelBoard } from "../kit/labelBoard";
import { angleLabels, arcAndRay, reserveRay } from "./angleMarks";
import { reserveWires, stationMarks } from "./antennaMarks";
import { fromAbove } from "./fromAbove";
import { lobe } from "./lobe";
import { ribbonLabels } from "./ribbonLabels";
import { ribbonMarks } from "./ribbonMarks";
import { type RibbonPlan, ribbonPlan } from "./ribbonPlan";
import { sectionLabels } from "./sectionLabels";
import { soilNotes, surfaceMarks } from "./soilMarks";
import { type StageOptions, stageStyle } from "./stageOptions";
import { type StagePlan, stagePlan } from "./stagePlan";
import { stageDescription, stageTable } from "./stageWords";

function reserveStation(plan: StagePlan, board: LabelBoard): void {
  const { s, surfaceY, xTransmitter, width } = plan;
  const x = xTransmitter;
  board.reserve({ left: x - 14 * s, right: x + 14 * s, top: surfaceY - 19 * s, bottom: surfaceY });
  board.reserve({ left: 0, right: width, top: surfaceY - 2, bottom: surfaceY + 2 });
}

function sectionMarks(answer: Answer, plan: StagePlan, board: LabelBoard): Mark[] {
  const { drawing } = answer;
  if (!drawing) return [];
  reserveStation(plan, board);
  reserveWires(drawing, plan, board);
  const shape = lobe(answer, plan);
  reserveRay(plan, shape, board);
  const inset = fromAbove(answer, plan, board);
  return [
    ...shape.marks,
    ...arcAndRay(plan, shape),
    ...surfaceMarks(drawing, plan),
    ...inset,
    ...stationMarks(answer, drawing, plan),
    ...sectionLabels(answer, drawing, plan, shape, board),
    ...angleLabels(plan, shape, board),
    ...soilNotes(answer, plan, board),
  ];
}

/** Dotted guides from transmitter and feed point down to their joints. */
function guides(plan: StagePlan, ribbon: RibbonPlan): Mark[] {
  const { s, surfaceY, sectionHeight, compact } = plan;
  if (compact) return [];
  const stroke = { role: "line", width: 1.3 * s, dash: `${1.5 * s} ${4 * s}` } as const;
  const bend = surfaceY + 0.45 * (sectionHeight - surfaceY);
  return [
    [plan.xTransmitter, ribbon.left],
    [plan.xFeed, ribbon.xFeed],
  ].map(([from = 0, to = 0]): Mark => {
    const d = `M${from},${surfaceY + 5 * s}V${bend}L${to},${sectionHeight + 4 * s}`;
    return { kind: "path", d, stroke };
  });
}

const ribbonBelow = (answer: Answer, plan: StagePlan): RibbonPlan =>
  ribbonPlan(answer, plan, (answer.drawing ? plan.sectionHeight : 0) + plan.gap);

/** Section over ribbon. An answer without a drawing gets the ribbon alone. */
export function stage(answer: Answer, options: StageOptions): Figure {
  const plan = stagePlan(answer, stageStyle(options));
  const below = ribbonBelow(answer, plan);
  const height = Math.ceil(below.bottom + plan.below);
  const board = createLabelBoard(plan.width, height);
  const upper = sectionMarks(answer, plan, board);
  const lower = ribbonMarks(below);
  const marks = [
    ...upper,
    ...(answer.drawing ? guides(plan, below) : []),
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
  const height = Math.ceil(placed.bottom + plan.below);
  const board = createLabelBoard(plan.width, height);
  const marks = [...ribbonMarks(placed), ...ribbonLabels(answer, placed, board)];
  return figureOf("ribbon", answer, plan, height, marks);
}
