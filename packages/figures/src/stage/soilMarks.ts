/** Surface and soil: a tint that fades, how deep the field goes, the scale. */
import type { Answer, Drawing } from "@feedpath/engine";
import type { Mark, Stroke } from "../kit/figure";
import type { LabelBoard } from "../kit/labelBoard";
import { metresText, plainText, withUnit } from "../kit/numberText";
import { wrapText } from "../kit/textWidth";
import type { StagePlan } from "./stagePlan";

const isLossless = (drawing: Drawing): boolean => drawing.soil.kind === "free space" || drawing.soil.kind === "perfect";

/** Where depth and soil are told, as a share of the width. */
const notesStart = 0.737;

/** Two fades over each other: 0.55 at the surface, 0.2 at 40 % of the depth, nothing at the bottom. */
function tint(plan: StagePlan): Mark[] {
  const { width, surfaceY: y, soilDepth } = plan;
  const layer = (opacity: number, depth: number): Mark => ({
    kind: "rect",
    x: 0,
    y,
    width,
    height: depth,
    fill: { role: "soil", opacity, fade: { to: "none", direction: "down", start: y, end: y + depth } },
  });
  return [layer(1 / 3, soilDepth), layer(0.325, 0.4 * soilDepth)];
}

export function surfaceMarks(drawing: Drawing, plan: StagePlan): Mark[] {
  const { width, surfaceY: y, s } = plan;
  const line = (at: number, stroke: Stroke): Mark => ({ kind: "line", x1: 0, y1: at, x2: width, y2: at, stroke });
  const plain: Stroke = { role: "soilInk", width: 1.5 * s };
  if (drawing.soil.kind === "free space") return [line(y, { role: "line", width: 1 * s, dash: `${6 * s} ${5 * s}` })];
  if (drawing.soil.kind === "perfect") return [line(y, plain), line(y + 4 * s, plain)];
  const thin: Stroke = { role: "soilInk", width: 1 * s, dash: `${8 * s} ${5 * s}` };
  const boundaries = (drawing.soil.layerDepths ?? [])
    .map((depth) => depth * plan.ppm)
    .filter((d) => d < plan.soilDepth);
  const end = plan.compact ? width : notesStart * width;
  const layers = boundaries.map((d): Mark => ({ kind: "line", x1: 0, y1: y + d, x2: end, y2: y + d, stroke: thin }));
  return [{ kind: "group", id: "soil", marks: [...tint(plan), line(y, plain), ...layers] }];
}

function depthMarks(drawing: Drawing, plan: StagePlan, board: LabelBoard): Mark[] {
  const depth = drawing.soil.penetrationDepth;
  const { s, surfaceY: y, ppm, width, soilDepth } = plan;
  const x = notesStart * width;
  const words =
    depth === null
      ? [drawing.soil.says]
      : [`field falls to ${withUnit("37", "%")} in ${metresText(depth)}`, `of ${drawing.soil.says}`];
  const lines = words.flatMap((line) => wrapText(line, 13 * s, width - x - 12 * s));
  const style = { role: "soilInk", size: 13 * s, id: "soil" } as const;
  const texts = board.place(style, [
    { lines, x: x + 9 * s, y: y + 34 * s },
    { lines: lines.slice(0, -1), x: x + 9 * s, y: y + 34 * s },
    { lines: lines.slice(0, 1), x: x + 9 * s, y: y + 34 * s },
  ]);
  if (depth === null) return texts;
  const end = y + Math.min(depth * ppm, soilDepth);
  const stroke: Stroke = { role: "soilInk", width: 1.2 * s };
  const head = depth * ppm > soilDepth ? 5 * s : Math.min(5 * s, (end - y) / 2);
  const bar = { kind: "line", x1: x - 5 * s, y1: end, x2: x + 5 * s, y2: end, stroke } as const;
  return [
    { kind: "line", x1: x, y1: y, x2: x, y2: end, stroke },
    { kind: "path", d: `M${x - 4 * s},${end - head}L${x},${end}L${x + 4 * s},${end - head}`, stroke },
    ...(depth * ppm > soilDepth ? [] : [bar]),
    ...texts,
  ];
}

/** Round length that takes at most `share` of the width: 1, 2 or 5 times a power of ten, metres. */
export function roundLength(metres: number): number {
  const power = 10 ** Math.floor(Math.log10(metres));
  return power * ([5, 2, 1].find((step) => step * power <= metres * 1.0001) ?? 1);
}

function scaleBar(plan: StagePlan, board: LabelBoard): Mark[] {
  const { s, ppm, width, surfaceY, soilDepth } = plan;
  const metres = roundLength((0.18 * width) / ppm);
  const y = surfaceY + soilDepth - 14 * s;
  const [x1, x2] = [2 * s, 2 * s + metres * ppm];
  const stroke: Stroke = { role: "soilInk", width: 1.2 * s };
  const d = `M${x1},${y - 4 * s}V${y}H${x2}V${y - 4 * s}`;
  const label = { lines: [withUnit(plainText(metres, 2), "m")], x: x2 + 7 * s, y: y + 2 * s };
  const above = { ...label, x: (x1 + x2) / 2, y: y - 6 * s, anchor: "middle" as const };
  const texts = board.place({ role: "soilInk", size: 13 * s }, [label, above]);
  return [{ kind: "path", d, stroke }, ...texts];
}

/** Depth and scale, with their words; nothing where there is no room for them (compact). */
export function soilNotes(answer: Answer, plan: StagePlan, board: LabelBoard): Mark[] {
  const { drawing } = answer;
  if (!drawing || plan.compact) return [];
  return [...scaleBar(plan, board), ...(isLossless(drawing) ? [] : depthMarks(drawing, plan, board))];
}
