/** What stands on the SWR curves beside the curves: the wanted band, the limit, lowest SWR and resonance. */
import type { Table } from "@feedpath/engine";
import { numbersOf, requiredColumn } from "../kit/answerValues";
import type { Mark, Stroke } from "../kit/figure";
import type { LabelBoard, LabelPlace } from "../kit/labelBoard";
import { fixedText, plainText, swrText, withUnit } from "../kit/numberText";
import { atAntenna, type Wanted } from "./bandFacts";
import type { PanelFrame } from "./panelFrame";

export function wantedMarks(wanted: Wanted, frame: PanelFrame, board: LabelBoard): Mark[] {
  const { s, top, bottom, left, right } = frame;
  const clamp = (x: number) => Math.min(right, Math.max(left, x));
  const [x1, x2] = [clamp(frame.x(wanted.from)), clamp(frame.x(wanted.to))];
  const decimals = Math.max(...[wanted.from, wanted.to].map((f) => (plainText(f, 3).split(".")[1] ?? "").length));
  const span = `${fixedText(wanted.from, decimals)} to ${withUnit(fixedText(wanted.to, decimals), "MHz")}`;
  const texts = [`wanted: ${span}`, span, "wanted"].flatMap((text) =>
    [14, 30].map((down): LabelPlace => ({ lines: [text], x: (x1 + x2) / 2, y: top + down * s, anchor: "middle" })),
  );
  const field: Mark = { kind: "rect", x: x1, y: top, width: x2 - x1, height: bottom - top, fill: { role: "rail" } };
  return [field, ...board.place({ role: "ink2", size: 13 * s }, texts)];
}

/** A line from the curve down to its words. */
export function dropMark(
  frame: PanelFrame,
  board: LabelBoard,
  drop: { readonly at: number; readonly value: number; readonly text: string; readonly dashed: boolean },
): Mark[] {
  const { s, bottom, top } = frame;
  const x = frame.x(drop.at);
  const start = Math.max(frame.y(drop.value), top);
  if (x < frame.left || x > frame.right) return [];
  const stroke: Stroke = { role: "ink", width: 1.2 * s, ...(drop.dashed ? { dash: `${2 * s} ${3 * s}` } : {}) };
  const levels = [8, 26, 44, 62].map((up) => bottom - up * s).filter((y) => y > start + 14 * s);
  const text = { lines: [drop.text] };
  const places = levels.flatMap((y): LabelPlace[] => [
    { ...text, x: x - 5 * s, y, anchor: "end" },
    { ...text, x: x + 5 * s, y },
  ]);
  const texts = board.place({ role: "ink", size: 13 * s, halo: { role: "paper", width: 3 * s } }, places);
  const end = texts[0] ? texts[0].y + 3 * s : bottom;
  board.reserve({ left: x - 2 * s, right: x + 2 * s, top: start, bottom: end });
  return [{ kind: "line", x1: x, y1: start, x2: x, y2: end, stroke }, ...texts];
}

/** A minimum at the end of the span is none: SWR goes on falling outside. */
export function lowestText(table: Table, lowest: number, decimals: number): string {
  const axis = numbersOf(table, "frequency");
  const step = (axis.at(-1)! - axis[0]!) / (4 * axis.length);
  const at = fixedText(lowest, decimals);
  if (lowest < axis[0]! + step) return `still lower below ${at}`;
  return lowest > axis.at(-1)! - step ? `still lower above ${at}` : `lowest SWR ${at}`;
}

/** Says so where the whole curve of the antenna lies above the scale. */
export function offScaleLabel(table: Table, frame: PanelFrame, board: LabelBoard): Mark[] {
  const values = requiredColumn(table, atAntenna).values.filter((value) => value !== null);
  if (values.length === 0 || values.some((value) => value <= frame.to)) return [];
  const least = swrText(Math.min(...values));
  const style = { role: "ink", size: 13 * frame.s, weight: 600 } as const;
  const texts = [`at the antenna: ${least} and more, above this scale`, `at the antenna: ${least} and more`];
  const ys = [32, 50, 68].map((down) => frame.top + down * frame.s);
  return board.place(
    style,
    texts.flatMap((text) => ys.map((y) => ({ lines: [text], x: frame.left + 8 * frame.s, y }))),
  );
}

export function limitMarks(limit: number | null, frame: PanelFrame, board: LabelBoard): Mark[] {
  if (limit === null || limit <= frame.from || limit >= frame.to) return [];
  const { s, left, right } = frame;
  const y = frame.y(limit);
  const stroke: Stroke = { role: "line", width: 1.2 * s, dash: `${1.5 * s} ${3 * s}` };
  const text = `limit ${plainText(limit, 2)}`;
  board.avoid({ left, right, top: y - 1, bottom: y + 1 });
  const texts = board.place({ role: "ink2", size: 13 * s, halo: { role: "paper", width: 3 * s } }, [
    { lines: [text], x: right - 2 * s, y: y - 5 * s, anchor: "end" },
    { lines: [text], x: left + 6 * s, y: y - 5 * s },
    { lines: [text], x: left + 6 * s, y: y + 15 * s },
  ]);
  return [{ kind: "line", x1: left, y1: y, x2: right, y2: y, stroke }, ...texts];
}
