/** Names and lengths on the things of the section. */
import type { Answer, Drawing } from "@feedpath/engine";
import type { Mark } from "../kit/figure";
import { type LabelBoard, type LabelPlace, type LabelStyle, textBox } from "../kit/labelBoard";
import { metresText } from "../kit/numberText";
import type { Point } from "../kit/outline";
import { textWidth } from "../kit/textWidth";
import { highestWire, seenFromEnd, transmitterBox } from "./antennaMarks";
import { partSays } from "./columns";
import { heightMarks } from "./heightMarks";
import type { Lobe } from "./lobe";
import { partsInUse } from "./partsInUse";
import { linePoints, partsOnLine } from "./partsOnLine";
import type { StagePlan } from "./stagePlan";

/** Baseline above the highest wire, lifted where the outline of the lobe would run through the words. */
function baselineAbove(drawing: Drawing, plan: StagePlan, shape: Lobe): number {
  const { s, compact, surfaceY } = plan;
  const y = highestWire(drawing, plan) - (compact ? 9 : 13 * s);
  const lobeTop = surfaceY - shape.radiusAt(90);
  return lobeTop > y - 16 * s && lobeTop < y + 8 * s ? lobeTop - 8 * s : y;
}

function antennaLabel(drawing: Drawing, plan: StagePlan, shape: Lobe, board: LabelBoard): Mark[] {
  const { s, compact, xFeed, surfaceY, arcRadius } = plan;
  const ended = seenFromEnd(drawing, plan) && !compact ? ", seen from its end" : "";
  const y = baselineAbove(drawing, plan, shape);
  const close = highestWire(drawing, plan) - (compact ? 9 : 13 * s);
  const style: LabelStyle = { role: "ink", size: 13 * s, weight: 600, id: drawing.antennaName };
  const texts = [`${drawing.antennaSays}${ended}`, `${drawing.antennaName}${ended}`, drawing.antennaName];
  const places = texts.flatMap((text): LabelPlace[] => [
    { lines: [text], x: xFeed - 13 * s, y, anchor: "end" },
    { lines: [text], x: xFeed + 13 * s, y },
    { lines: [text], x: xFeed - 13 * s, y: close, anchor: "end" },
    { lines: [text], x: xFeed - 13 * s, y: surfaceY - arcRadius - 5 * s, anchor: "end" },
    { lines: [text], x: xFeed, y: y - 6 * s, anchor: "middle" },
  ]);
  return board.place(style, places);
}

/** Along the line's longest straight piece: left of a steep one, above or below a level one. */
function besideLongest(points: readonly Point[], text: string, s: number): LabelPlace[] {
  const pieces = points.slice(1).map((b, i) => [points[i]!, b] as const);
  const length = ([a, b]: readonly [Point, Point]) => Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [a = [0, 0], b = [0, 0]] = pieces.toSorted((one, other) => length(other) - length(one))[0] ?? [];
  const [run, rise] = [Math.abs(b[0] - a[0]), Math.abs(b[1] - a[1])];
  const clear = ((textWidth(text, 13 * s) / 2) * rise) / Math.max(run, 1);
  return [0.5, 0.4, 0.3, 0.6].flatMap((share): LabelPlace[] => {
    const [x, y] = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
    if (rise > run) return [{ lines: [text], x: x - 9 * s, y: y + 4 * s, anchor: "end" }];
    return [-9 * s - clear, 18 * s + clear].map((by) => ({ lines: [text], x, y: y + by, anchor: "middle" }));
  });
}

/** Characters of the file's words for a line that stand in the picture; beyond, its length alone. */
const longestSaying = 30;

function lineLabels(answer: Answer, drawing: Drawing, plan: StagePlan, board: LabelBoard): Mark[] {
  const { s, compact } = plan;
  const lines = partsInUse(answer).filter((part) => part.kind === "line");
  const points = linePoints(answer, drawing, plan);
  const { x, bottom } = transmitterBox(points, plan);
  const word = compact ? "set" : "transmitter";
  const name: LabelPlace = { lines: [word], x, y: bottom - 25 * s, anchor: "middle" };
  const nameMarks = board.place(
    { role: "ink", size: 13 * s, id: "transmitter", halo: { role: "paper", width: 3 * s } },
    [
      name,
      { ...name, anchor: "start", x: Math.max(1, x - 13 * s) },
      { ...name, anchor: "end", x: x + 13 * s },
      { ...name, y: bottom - 5 * s, x: x - 17 * s, anchor: "end" },
      { ...name, y: bottom - 22 * s, x: x - 17 * s, anchor: "end" },
      { ...name, y: bottom - 42 * s },
    ],
  );
  const total = lines.reduce((sum, part) => sum + part.length, 0);
  const saying = lines.length === 1 ? lines[0]!.says : lines.map((part) => part.says).join(", ");
  const long = saying.length > longestSaying;
  const says = compact || long ? [metresText(total)] : [saying, metresText(total)];
  const places = (text: string): LabelPlace[] => [
    { lines: [text], x: x + (compact ? 16 : 20 * s), y: bottom - 10 * s },
    ...[70, 95]
      .filter((right) => x + right * s + textWidth(text, 13 * s) < plan.xFeed)
      .map((right) => ({ lines: [text], x: x + right * s, y: bottom - 10 * s })),
    ...besideLongest(points, text, s).filter((place) => place.y < plan.surfaceY - 4 * s),
  ];
  const id = lines.map((part) => part.name).join(", ");
  const style: LabelStyle = { role: "ink", size: 13 * s, id, halo: { role: "paper", width: 3 * s } };
  for (const text of lines.length === 0 ? [] : says) {
    const lineMarks = board.place(style, places(text));
    for (const { top, bottom, ...sides } of lineMarks.map(textBox))
      board.reserve({ ...sides, top: top - 6 * s, bottom: bottom + 6 * s });
    if (lineMarks.length > 0) return [...nameMarks, ...lineMarks];
  }
  return nameMarks;
}

function partLabels(answer: Answer, drawing: Drawing, plan: StagePlan, board: LabelBoard): Mark[] {
  if (plan.compact) return [];
  const { s } = plan;
  return partsOnLine(answer, drawing, plan).flatMap(({ part, at, vertical }) => {
    const [x, y] = at;
    const text = partSays(part, answer.parts).replace(/^the /, "");
    const beside: LabelPlace = { lines: [text], x: x - 13 * s, y: y + 4 * s, anchor: "end" };
    const above: LabelPlace = { lines: [text], x: x + 8 * s, y: y - 10 * s, anchor: "end" };
    const higher: LabelPlace = { ...above, x: x - 8 * s, anchor: "start" };
    const places = vertical ? [beside, { ...beside, x: x + 42 * s, anchor: "start" as const }] : [above, higher];
    return board.place({ role: "ink", size: 13 * s, id: part.name, halo: { role: "paper", width: 3 * s } }, places);
  });
}

/** Words of the station; what has no room is left out, longest wording first. */
export const sectionLabels = (
  answer: Answer,
  drawing: Drawing,
  plan: StagePlan,
  shape: Lobe,
  board: LabelBoard,
): Mark[] => [
  ...antennaLabel(drawing, plan, shape, board),
  ...heightMarks(drawing, plan, board),
  ...partLabels(answer, drawing, plan, board),
  ...lineLabels(answer, drawing, plan, board),
];
