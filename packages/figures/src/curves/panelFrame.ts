/** The frame of one panel: its place in px and its scales. */
import { scaleLinear } from "d3-scale";
import { fixedText } from "../kit/numberText";

export interface PanelFrame {
  readonly s: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly from: number;
  readonly to: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly xTicks: readonly { readonly value: number; readonly text: string }[];
  readonly yTicks: readonly { readonly value: number; readonly text: string }[];
}

export interface FramePlace {
  readonly s: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly narrow: boolean;
}

/** Ticks at round values, all with the same number of decimals. */
function labelled(ticks: readonly number[]): { value: number; text: string }[] {
  const decimals = Math.max(
    0,
    ...ticks.map((tick) => (Number(tick.toPrecision(8)).toString().split(".")[1] ?? "").length),
  );
  return ticks.map((value) => ({ value, text: fixedText(value, decimals) }));
}

/** A scale that does not start at one of its ticks says where it starts (SWR: 1), unless a tick is close. */
function withStart(ticks: readonly number[], from: number): readonly number[] {
  const [first, second] = ticks;
  if (first === undefined || second === undefined) return ticks;
  return first - from > 0.4 * (second - first) ? [from, ...ticks] : ticks;
}

/** About `count` round values on a scale; two at least, for one alone tells no scale. */
function tellingTicks(ticks: (count: number) => number[], count: number): readonly number[] {
  const found = ticks(count);
  return found.length < 2 && count < 9 ? tellingTicks(ticks, count + 1) : found;
}

/** Scales over `xSpan` and from `from` (bottom) to `to` (top). */
export function panelFrame(place: FramePlace, xSpan: readonly [number, number], from: number, to: number): PanelFrame {
  const { left, right, top, bottom, s, narrow } = place;
  const x = scaleLinear().domain(xSpan).range([left, right]);
  const y = scaleLinear().domain([from, to]).range([bottom, top]);
  const room = (right - left) / ((narrow ? 100 : 84) * s);
  const rows = Math.min(5, Math.max(2, Math.round((bottom - top) / (28 * s))));
  return {
    s,
    left,
    right,
    top,
    bottom,
    from,
    to,
    x: (value) => x(value),
    y: (value) => y(value),
    xTicks: labelled(tellingTicks((count) => x.ticks(count), Math.max(2, Math.min(9, Math.floor(room))))),
    yTicks: labelled(withStart(y.ticks(rows), from)),
  };
}

/** The span of numbers, widened to round ends. */
export function roundSpan(values: readonly number[]): readonly [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const [from = low, to = high] = scaleLinear()
    .domain(low === high ? [low - 1, high + 1] : [low, high])
    .nice(4)
    .domain();
  return [from, to];
}

/** From SWR 1 to a round value above all of `values`, 1.5 at least; more than `most` is cut (the curves mark it). */
export function swrSpan(values: readonly number[], most: number): readonly [number, number] {
  const highest = Math.min(Math.max(1.4, ...values), most);
  const step = highest < 4 ? 0.5 : highest < 6 ? 1 : highest < 12 ? 2 : highest < 30 ? 5 : 10;
  return [1, 1 + step * Math.ceil((highest - 1) / step)];
}
