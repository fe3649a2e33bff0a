/** Draws a chart: panels over one shared axis, crossed by vertical lines. */
import type { Mark, Stroke } from "../kit/figure";
import { createLabelBoard, type LabelBoard } from "../kit/labelBoard";
import { wrapText } from "../kit/textWidth";
import type { Chart, Panel, Vertical } from "./chartTypes";
import { curveLabels } from "./curveLabels";
import { curveMarks, reserveCurves } from "./curveMarks";
import { type PanelFrame, panelFrame } from "./panelFrame";
import { quietTexts, reserveRings, ringMarks } from "./ringMarks";
import { arrangeVerticals, rowHeight, verticalMarks } from "./verticals";

/** px at scale 1. */
const room = { left: 42, right: 10, name: 26, between: 16, axis: 46, noteLine: 17 };

interface Placed {
  readonly panel: Panel;
  readonly frame: PanelFrame;
}

function placePanels(chart: Chart, s: number, start: number): Placed[] {
  const xs = chart.axis.values;
  const span = [Math.min(...xs), Math.max(...xs)] as const;
  let y = start;
  return chart.panels.map((panel) => {
    const top = y + room.name * s;
    const bottom = top + panel.height * s;
    y = bottom + room.between * s;
    const place = {
      s,
      left: room.left * s,
      right: chart.width - room.right * s,
      top,
      bottom,
      narrow: chart.width < 360,
    };
    const frame = panelFrame(place, span, panel.from, panel.to);
    const { xTicks, yTicks } = frame;
    return { panel, frame: { ...frame, xTicks: chart.axis.ticks ?? xTicks, yTicks: panel.ticks ?? yTicks } };
  });
}

function gridMarks({ s, left, right, top, bottom, y, yTicks, x, xTicks }: PanelFrame, board: LabelBoard): Mark[] {
  const rows = yTicks.flatMap(({ value, text }): Mark[] => {
    const at = y(value);
    const stroke: Stroke = { role: "hair", width: 1 * s };
    const grid: Mark = { kind: "line", x1: left, y1: at, x2: right, y2: at, stroke };
    const place = { lines: [text], x: left - 8 * s, y: at + 4.5 * s, anchor: "end" as const };
    return [grid, ...board.place({ role: "ink2", size: 13 * s }, [place])];
  });
  const stroke: Stroke = { role: "line", width: 1.2 * s };
  const base: Mark = { kind: "line", x1: left, y1: bottom, x2: right, y2: bottom, stroke };
  const ticks = xTicks.map(({ value }): Mark => {
    return { kind: "line", x1: x(value), y1: bottom, x2: x(value), y2: bottom + 5 * s, stroke };
  });
  board.reserve({ left, right, top: bottom - 1, bottom: bottom + 1 });
  board.reserve({ left: left - 1, right: left + 1, top, bottom });
  return [...rows, base, ...ticks];
}

function sharedAxis(chart: Chart, frame: PanelFrame, board: LabelBoard): Mark[] {
  const { s, bottom, right } = frame;
  const soft = { role: "ink2", size: 13 * s } as const;
  const numbers = frame.xTicks.flatMap(({ value, text }) => {
    const x = frame.x(value);
    const y = bottom + 19 * s;
    return board.place(soft, [
      { lines: [text], x, y, anchor: "middle" },
      { lines: [text], x: chart.width - 1, y, anchor: "end" },
    ]);
  });
  const place = { lines: [chart.axis.name], x: right, y: bottom + 39 * s, anchor: "end" as const };
  return [...numbers, ...board.place({ role: "ink", size: 13 * s }, [place])];
}

/** Through the room between the panels too. */
function reserveVerticals(verticals: readonly Vertical[], placed: readonly Placed[], board: LabelBoard): void {
  const [first, last] = [placed[0]!.frame, placed.at(-1)!.frame];
  for (const { at } of verticals) {
    const x = first.x(at);
    board.avoid({ left: x - 2, right: x + 2, top: first.top, bottom: last.bottom });
  }
}

/** Marks of a chart and its height. */
export function drawChart(chart: Chart): { readonly marks: readonly Mark[]; readonly height: number } {
  const s = chart.scale ?? 1;
  const arranged = arrangeVerticals(chart, room.left * s, chart.width - room.right * s);
  const rows = Math.max(0, ...arranged.map(({ row }) => row + 1));
  const placed = placePanels(chart, s, rows * rowHeight * s);
  const last = placed.at(-1)!.frame;
  const note = chart.note === "" ? [] : wrapText(chart.note, 13 * s, chart.width);
  const noteTop = last.bottom + room.axis * s;
  const height = Math.ceil(noteTop + (note.length > 0 ? (note.length * room.noteLine + 8) * s : 0));
  const board = createLabelBoard(chart.width, height);
  const xs = chart.axis.values;
  const names = placed.flatMap(({ panel, frame }) =>
    board.place({ role: "ink", size: 13 * s, weight: 600, halo: { role: "paper", width: 4 * s } }, [
      { lines: [panel.name], x: 0, y: frame.top - 11 * s },
    ]),
  );
  const grids = placed.flatMap(({ frame }) => gridMarks(frame, board));
  const axis = sharedAxis(chart, last, board);
  const crossing = verticalMarks(arranged, { s, rows, bottom: last.bottom }, board);
  reserveVerticals(chart.verticals, placed, board);
  for (const { panel, frame } of placed) reserveCurves(frame, xs, panel.curves, board);
  const under = placed.flatMap(({ panel, frame }) => panel.under?.(frame, board) ?? []);
  const curves = placed.flatMap(({ panel, frame }) => curveMarks(frame, xs, panel.curves));
  for (const { panel, frame } of placed) reserveRings(frame, panel.rings, board);
  const over = placed.flatMap(({ panel, frame }) => [
    ...(panel.over?.(frame, board) ?? []),
    ...ringMarks(frame, panel.rings, board),
    ...curveLabels(frame, xs, panel.curves, board),
    ...quietTexts(frame, panel.rings, board),
  ]);
  const notes = board.place({ role: "ink2", size: 13 * s }, [{ lines: note, x: 0, y: noteTop + 16 * s }]);
  return { marks: [...under, ...grids, ...axis, ...crossing, ...names, ...curves, ...over, ...notes], height };
}
