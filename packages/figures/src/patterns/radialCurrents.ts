/** The radials from above, north up: each as thick as the current along it, with its amperes at its end. */
import type { Answer } from "@feedpath/engine";
import { numbersOf, requiredTable } from "../kit/answerValues";
import { boxesAlong } from "../kit/box";
import type { Figure, Mark } from "../kit/figure";
import { createLabelBoard, type LabelBoard, type LabelPlace } from "../kit/labelBoard";
import { fixedText, metresText, plainText, significantText, withUnit } from "../kit/numberText";
import { type Point, polyline } from "../kit/outline";
import type { PatternOptions } from "./polarFrame";

interface Spoke {
  /** Degrees clockwise from north. */
  readonly azimuth: number;
  /** m */
  readonly length: number;
  /** A at equal steps from where they meet to the end. */
  readonly along: readonly number[];
  /** Per cent of the sum. */
  readonly share: number;
}

/** px at scale 1: where the largest current flows, and where next to nothing does. */
const thickest = 10;
const thinnest = 1;
/** Share of the picture's reach from which many radials stand apart. */
const apartFrom = 0.2;
/** Largest picture, px at scale 1, and room for words around the ends. */
const largest = 420;
const margin = 46;
/** Currents that differ by less than this (largest over smallest) are told once. */
const alike = 1.02;

function spokesOf(answer: Answer): Spoke[] {
  const table = requiredTable(answer, "radialCurrents");
  const grid = answer.grids?.find(({ name }) => name === "radialCurrentAlong");
  const current = numbersOf(table, "current");
  return numbersOf(table, "azimuth").map((azimuth, i) => ({
    azimuth,
    length: numbersOf(table, "length")[i]!,
    along: grid ? grid.values[i]!.map((a) => a ?? 0) : [current[i]!, 0],
    share: numbersOf(table, "share")[i]!,
  }));
}

const amperes = (value: number): string => withUnit(significantText(value, 2), "A");

function spreadOf(spokes: readonly Spoke[]): number {
  const starts = spokes.map(({ along }) => along[0]!);
  return Math.max(...starts) / Math.min(...starts);
}

function titleOf(spokes: readonly Spoke[]): string {
  const starts = spokes.map(({ along }) => along[0]!);
  const most = Math.max(...starts);
  if (spokes.length === 1) return `The one radial carries ${amperes(most)}`;
  if (spreadOf(spokes) < alike) return `Each of ${spokes.length} radials carries ${amperes(most)}`;
  return `${spokes.length} radials carry ${amperes(Math.min(...starts))} to ${amperes(most)} each`;
}

/** Null where the answer has no radials whose currents are known. */
export function radialCurrents(answer: Answer, options: PatternOptions): Figure | null {
  return answer.tables.some(({ name }) => name === "radialCurrents") ? radialSpokes(answer, options) : null;
}

/** Figure of the answer to `radials`. */
export function radialSpokes(answer: Answer, options: PatternOptions): Figure {
  const { width, scale: s = 1 } = options;
  const spokes = spokesOf(answer);
  const height = Math.min(width, largest * s);
  const [cx, cy] = [width / 2, height / 2];
  const reach = height / 2 - margin * s;
  const longest = Math.max(...spokes.map(({ length }) => length));
  const most = Math.max(...spokes.flatMap(({ along }) => along));
  const board = createLabelBoard(width, height);
  const place = ({ azimuth, length }: Spoke, share: number): Point => {
    const radius = (share * reach * length) / longest;
    const turn = (azimuth * Math.PI) / 180;
    return [cx + radius * Math.sin(turn), cy - radius * Math.cos(turn)];
  };
  for (const spoke of spokes) boxesAlong([place(spoke, 0), place(spoke, 1)], 6 * s).forEach(board.avoid);
  const thick = Math.min(thickest * s, (2 * Math.PI * apartFrom * reach) / spokes.length);
  const strokes = spokes.map((spoke) => spokeMark(spoke, place, most, thick));
  const centre: Mark = { kind: "circle", cx, cy, r: 3.4 * s, fill: { role: "ink" } };
  return {
    name: "radialCurrents",
    title: titleOf(spokes),
    width,
    height,
    scale: s,
    marks: [
      ...strokes,
      centre,
      ...northMarks(s, board),
      ...lengthText(spokes, height, s, board),
      ...spokeLabels(spokes, place, s, board),
    ],
    description: `${titleOf(spokes)}. The radials from above, north up; each is as thick as the current along it, from where they meet to its end.`,
    table: {
      caption: titleOf(spokes),
      columns: [
        { name: "azimuth", unit: "deg" },
        { name: "length", unit: "m" },
        { name: "current where they meet", unit: "A" },
        { name: "share", unit: "%" },
      ],
      rows: spokes.map(({ azimuth, length, along, share }) => [azimuth, length, along[0]!, share]),
    },
  };
}

/** One outline a radial: `thick` px wide where the largest current flows. */
function spokeMark(spoke: Spoke, place: (spoke: Spoke, share: number) => Point, most: number, thick: number): Mark {
  const turn = (spoke.azimuth * Math.PI) / 180;
  const [right, down] = [Math.cos(turn), Math.sin(turn)];
  const side = (sign: 1 | -1): Point[] =>
    spoke.along.map((current, i) => {
      const [x, y] = place(spoke, i / (spoke.along.length - 1));
      const half = (sign * Math.max(thinnest, (thick * current) / most)) / 2;
      return [x + half * right, y + half * down];
    });
  return { kind: "path", d: polyline([...side(1), ...side(-1).reverse()], true), fill: { role: "power" } };
}

/** Amperes beyond the end of each radial, as many as find room; where all are alike, the first alone. */
function spokeLabels(
  spokes: readonly Spoke[],
  place: (spoke: Spoke, share: number) => Point,
  s: number,
  board: LabelBoard,
): Mark[] {
  const told = spreadOf(spokes) < alike ? spokes.slice(0, 1) : spokes;
  return told.flatMap((spoke) => {
    const [x, y] = place(spoke, 1);
    const turn = (spoke.azimuth * Math.PI) / 180;
    const [right, up] = [Math.sin(turn), Math.cos(turn)];
    const anchor = right > 0.3 ? "start" : right < -0.3 ? "end" : "middle";
    const text = `${amperes(spoke.along[0]!)}, ${plainText(spoke.share, 0)} %`;
    const baseline = y - 12 * s * up + 4.5 * s;
    const start = x + 8 * s * right;
    const one = (lines: readonly string[]): LabelPlace => ({ lines, x: start, y: baseline, anchor });
    return board.place({ role: "powerInk", size: 13 * s, halo: { role: "paper", width: 3 * s } }, [
      one([text]),
      one([amperes(spoke.along[0]!)]),
    ]);
  });
}

/** An arrow to the north, top left. */
function northMarks(s: number, board: LabelBoard): Mark[] {
  const [x, top, bottom] = [12 * s, 24 * s, 50 * s];
  const stroke = { role: "ink2", width: 1.4 * s } as const;
  const head = `M${x - 4 * s},${top + 7 * s}L${x},${top}L${x + 4 * s},${top + 7 * s}`;
  const text = board.place({ role: "ink2", size: 13 * s }, [{ lines: ["north"], x: 2 * s, y: 16 * s }]);
  return [{ kind: "line", x1: x, y1: top, x2: x, y2: bottom, stroke }, { kind: "path", d: head, stroke }, ...text];
}

/** What is drawn, at the foot. */
function lengthText(spokes: readonly Spoke[], height: number, s: number, board: LabelBoard): Mark[] {
  const longest = Math.max(...spokes.map(({ length }) => length));
  const turned = spreadOf(spokes) < alike ? "" : `, largest ${fixedText(spreadOf(spokes), 1)} times the smallest`;
  const lines = [`each ${metresText(longest)} long${turned}`, `each ${metresText(longest)} long`];
  return board.place(
    { role: "ink2", size: 13 * s },
    lines.map((line) => ({ lines: [line], x: 2 * s, y: height - 6 * s })),
  );
}
