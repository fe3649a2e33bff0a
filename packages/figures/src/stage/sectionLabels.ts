/** Names and lengths on the things of the section. */
import type { Answer, Drawing } from "@feedpath/engine";
import type { Mark, Stroke } from "../kit/figure";
import type { LabelBoard, LabelPlace, LabelStyle } from "../kit/labelBoard";
import { metresText } from "../kit/numberText";
import type { Point } from "../kit/outline";
import { textWidth } from "../kit/textWidth";
import { feedPlace, highestWire, linePoints, partsOnLine, seenFromEnd } from "./antennaMarks";
import { partSays } from "./columns";
import type { Lobe } from "./lobe";
import { partsInUse } from "./partsInUse";
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

/** Dimension from the soil to the feed point, or to the top where the feed point is near the soil. */
function heightMarks(drawing: Drawing, plan: StagePlan, board: LabelBoard): Mark[] {
  const { s, surfaceY, xFeed, compact, ppm } = plan;
  const feedY = feedPlace(drawing, plan)[1];
  const topY = highestWire(drawing, plan);
  const y = surfaceY - feedY < 0.3 * (surfaceY - topY) ? topY : feedY;
  if (surfaceY - y < 24 * s) return [];
  const text = metresText((surfaceY - y) / ppm);
  if (compact) {
    const place: LabelPlace = { lines: [`${text} up`], x: xFeed - 8, y: (surfaceY + 1.3 * y) / 2.3 + 4, anchor: "end" };
    const style: LabelStyle = { role: "ink", size: 13 };
    return board.place(style, [place, { ...place, x: xFeed + 8, anchor: "start" }]);
  }
  const x = xFeed + 26 * s;
  const stroke: Stroke = { role: "ink2", width: 1 * s };
  const head = (tip: number, way: number): Mark => ({
    kind: "path",
    d: `M${x - 3.5 * s},${tip + way * 6 * s}L${x},${tip}L${x + 3.5 * s},${tip + way * 6 * s}`,
    stroke,
  });
  board.avoid({ left: x - 2 * s, right: x + 2 * s, top: y, bottom: surfaceY });
  const bar = (at: number): Mark => ({ kind: "line", x1: x - 17 * s, y1: at, x2: x + 4 * s, y2: at, stroke });
  const label = board.place({ role: "ink", size: 13 * s, weight: 600 }, [
    ...[58, 44, 30, 74].map((down) => ({ lines: [text], x: x + 7 * s, y: y + down * s })),
    { lines: [text], x: x + 7 * s, y: (y + surfaceY) / 2 + 5 * s },
    { lines: [text], x: x - 7 * s, y: y + 58 * s, anchor: "end" },
    { lines: [text], x: x + 7 * s, y: y - 6 * s },
  ]);
  return [
    { kind: "line", x1: x, y1: surfaceY - 2 * s, x2: x, y2: y, stroke },
    head(y, 1),
    head(surfaceY - 2 * s, -1),
    bar(y),
    { kind: "line", x1: x - 5 * s, y1: surfaceY - 2 * s, x2: x + 5 * s, y2: surfaceY - 2 * s, stroke },
    ...label,
  ];
}

/** Beside the middle of the line's longest straight piece. */
function besideLongest(points: readonly Point[], text: string, s: number): LabelPlace {
  const pieces = points.slice(1).map((b, i) => [points[i]!, b] as const);
  const length = ([a, b]: readonly [Point, Point]) => Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [a = [0, 0], b = [0, 0]] = pieces.toSorted((one, other) => length(other) - length(one))[0] ?? [];
  const [x, y] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const vertical = Math.abs(b[1] - a[1]) > Math.abs(b[0] - a[0]);
  return vertical
    ? { lines: [text], x: x - 9 * s, y: y + 4 * s, anchor: "end" }
    : { lines: [text], x, y: y - 9 * s, anchor: "middle" };
}

/** Characters of the file's words for a line that stand in the picture; beyond, its length alone. */
const longestSaying = 30;

function lineLabels(answer: Answer, drawing: Drawing, plan: StagePlan, board: LabelBoard): Mark[] {
  const { s, compact, surfaceY } = plan;
  const lines = partsInUse(answer).filter((part) => part.kind === "line");
  const points = linePoints(answer, drawing, plan);
  const [x = plan.xTransmitter, y = surfaceY] = points[0] ?? [];
  const bottom = Math.min(y + 3 * s, surfaceY);
  const word = compact ? "set" : "transmitter";
  const name: LabelPlace = { lines: [word], x, y: bottom - 25 * s, anchor: "middle" };
  const nameMarks = board.place({ role: "ink", size: 13 * s, id: "transmitter" }, [
    name,
    { ...name, anchor: "start", x: Math.max(1, x - 13 * s) },
    { ...name, y: bottom - 42 * s },
    { ...name, y: bottom - 7 * s, x: x - 17 * s, anchor: "end" },
    { ...name, y: bottom - 22 * s, x: x - 17 * s, anchor: "end" },
  ]);
  const total = lines.reduce((sum, part) => sum + part.length, 0);
  const saying = lines.length === 1 ? lines[0]!.says : lines.map((part) => part.says).join(", ");
  const long = saying.length > longestSaying;
  const says = compact || long ? [metresText(total)] : [saying, metresText(total)];
  const places = (text: string): LabelPlace[] => [
    { lines: [text], x: x + (compact ? 16 : 20 * s), y: bottom - 10 * s },
    ...[70, 95]
      .filter((right) => x + right * s + textWidth(text, 13 * s) < plan.xFeed)
      .map((right) => ({ lines: [text], x: x + right * s, y: bottom - 10 * s })),
    besideLongest(points, text, s),
  ];
  const id = lines.map((part) => part.name).join(", ");
  const style: LabelStyle = { role: "ink", size: 13 * s, id, halo: { role: "paper", width: 3 * s } };
  for (const text of lines.length === 0 ? [] : says) {
    const lineMarks = board.place(style, places(text));
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
    return board.place({ role: "ink", size: 13 * s, id: part.name }, places);
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
