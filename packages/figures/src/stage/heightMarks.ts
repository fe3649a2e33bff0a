/** How high the antenna hangs: an arrow with its metres. */
import type { Drawing } from "@feedpath/engine";
import type { Mark, Stroke } from "../kit/figure";
import type { LabelBoard, LabelPlace, LabelStyle } from "../kit/labelBoard";
import { metresText } from "../kit/numberText";
import { feedPlace, highestWire } from "./antennaMarks";
import type { StagePlan } from "./stagePlan";

/** Too low for an arrow: the words alone, above the wire or below it. */
function lowLabel(text: string, y: number, { s, surfaceY, xFeed }: StagePlan, board: LabelBoard): Mark[] {
  const places = [13, 30, -13, -30].flatMap((right): LabelPlace[] =>
    [y - 9 * s, y - 13 * s, Math.min(y + 16 * s, surfaceY - 4 * s)].map((baseline) => ({
      lines: [text],
      x: xFeed + right * s,
      y: baseline,
      anchor: right > 0 ? "start" : "end",
    })),
  );
  return board.place({ role: "ink", size: 13 * s, weight: 600, halo: { role: "paper", width: 3 * s } }, places);
}

/** Dimension from the soil to the feed point, or to the top where the feed point is near the soil. */
export function heightMarks(drawing: Drawing, plan: StagePlan, board: LabelBoard): Mark[] {
  const { s, surfaceY, xFeed, compact, ppm } = plan;
  const feedY = feedPlace(drawing, plan)[1];
  const topY = highestWire(drawing, plan);
  const y = surfaceY - feedY < 0.3 * (surfaceY - topY) ? topY : feedY;
  const text = metresText((surfaceY - y) / ppm);
  if (surfaceY - y < 24 * s) return lowLabel(`${text} up`, y, plan, board);
  if (compact) {
    const place: LabelPlace = { lines: [`${text} up`], x: xFeed - 8, y: (surfaceY + 1.3 * y) / 2.3 + 4, anchor: "end" };
    const style: LabelStyle = { role: "ink", size: 13, halo: { role: "paper", width: 3 } };
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
  const downs = [58, 44, 30, 74, 18].map((down) => y + down * s).filter((at) => at < surfaceY - 8 * s);
  const label = board.place({ role: "ink", size: 13 * s, weight: 600 }, [
    ...downs.map((at) => ({ lines: [text], x: x + 7 * s, y: at })),
    { lines: [text], x: x + 7 * s, y: (y + surfaceY) / 2 + 5 * s },
    ...downs.map((at) => ({ lines: [text], x: x - 7 * s, y: at, anchor: "end" as const })),
    { lines: [text], x: x + 7 * s, y: y - 6 * s },
    { lines: [text], x: x + 7 * s, y: y + 4 * s },
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
