/** The station from above and from the side, wires as thick as the current in them: what runs in things near by. */
import type { Answer } from "@feedpath/engine";
import { thingsOf } from "../curves/nearbyFacts";
import { numbersOf, requiredNumber, requiredTable } from "../kit/answerValues";
import { boxesAlong } from "../kit/box";
import type { Figure, FigureTable, Mark } from "../kit/figure";
import { createLabelBoard, type LabelBoard, type LabelPlace } from "../kit/labelBoard";
import { fixedText, plainText } from "../kit/numberText";
import type { Point } from "../kit/outline";
import { wrapText } from "../kit/textWidth";
import type { PatternOptions } from "./polarFrame";

type Spot = readonly [number, number, number];

interface Piece {
  readonly from: Spot;
  readonly to: Spot;
  readonly current: number;
  /** 0 the antenna, else the number of a thing near by. */
  readonly thing: number;
}

function piecesOf(answer: Answer): Piece[] {
  const table = requiredTable(answer, "currents");
  const column = (name: string): number[] => numbersOf(table, name);
  const [current, thing] = [column("current"), column("thing")];
  const [fx, fy, fz] = [column("fromEast"), column("fromNorth"), column("fromUp")];
  const [tx, ty, tz] = [column("toEast"), column("toNorth"), column("toUp")];
  return current.map((a, i) => ({
    from: [fx[i]!, fy[i]!, fz[i]!],
    to: [tx[i]!, ty[i]!, tz[i]!],
    current: a,
    thing: thing[i]!,
  }));
}

interface View {
  readonly name: string;
  readonly place: (spot: Spot) => Point;
  readonly top: number;
  readonly bottom: number;
  /** y of the soil, px; null seen from above. */
  readonly surface: number | null;
}

/** px of the thickest and the thinnest stroke at scale 1. */
const thickest = 11;
const thinnest = 1.4;
/** Share of the height of a view that is at most as high as it is wide. */
const tallest = 0.62;

/** Figure of the answer to `nearby`. */
export function nearbyCurrents(answer: Answer, options: PatternOptions): Figure {
  const { width, scale: s = 1 } = options;
  const pieces = piecesOf(answer);
  const notes = notesOf(answer, width, s);
  const { views, end } = viewsOf(pieces, width, s);
  const height = end + 10 * s + notes.length * 16 * s;
  const board = createLabelBoard(width, height);
  const texts = notes.flatMap((line, i) =>
    board.place({ role: "ink2", size: 12 * s }, [
      { lines: [line], x: 4 * s, y: height - (notes.length - 1 - i) * 16 * s - 6 * s },
    ]),
  );
  const most = Math.max(...pieces.map((p) => p.current));
  for (const view of views)
    for (const { from, to } of pieces) boxesAlong([view.place(from), view.place(to)], 4 * s).forEach(board.avoid);
  const marks = views.flatMap((view) => viewMarks(view, pieces, { most, width, s }));
  const labels = views.flatMap((view) => viewLabels(answer, view, pieces, s, board));
  return {
    name: "nearbyCurrents",
    title: titleOf(answer),
    width,
    height,
    scale: s,
    marks: [...marks, ...texts, ...labels],
    description: `The station from above and from the side; each wire is as thick as the current in it. ${titleOf(answer)}.`,
    table: tableOf(answer),
  };
}

/** From above over from the side, one scale for both; from the side as seen from the side that shows more of it. */
function viewsOf(pieces: readonly Piece[], width: number, s: number): { views: View[]; end: number } {
  const spots = pieces.flatMap((p) => [p.from, p.to]);
  const range = (axis: 0 | 1 | 2): readonly [number, number] => {
    const values = spots.map((p) => p[axis]);
    return [Math.min(...values), Math.max(...values)];
  };
  const [east, north, up] = [range(0), range(1), range(2)];
  const across: 0 | 1 = east[1] - east[0] >= north[1] - north[0] ? 0 : 1;
  const level = across === 0 ? east : north;
  const floor = Math.min(0, up[0]);
  const room = width - 60 * s;
  const tall = Math.max(north[1] - north[0], up[1] - floor, 0.1);
  const ppm = Math.min(room / Math.max(east[1] - east[0], level[1] - level[0], 0.1), (tallest * width) / tall);
  const centre = (axis: readonly [number, number]) => (value: number) =>
    width / 2 + (value - (axis[0] + axis[1]) / 2) * ppm;
  const [x, along] = [centre(east), centre(level)];
  const start = 44 * s;
  const planBottom = start + (north[1] - north[0]) * ppm;
  const sideTop = planBottom + 62 * s;
  const surface = sideTop + (up[1] - floor) * ppm;
  return {
    views: [
      {
        name: "from above, north up",
        place: ([e, n]) => [x(e), start + (north[1] - n) * ppm],
        top: start,
        bottom: planBottom,
        surface: null,
      },
      {
        name: across === 0 ? "from the south" : "from the east",
        place: (spot) => [along(spot[across]), surface - (spot[2] - floor) * ppm],
        top: sideTop,
        bottom: surface,
        surface,
      },
    ],
    end: surface + 24 * s,
  };
}

function viewMarks(
  view: View,
  pieces: readonly Piece[],
  { most, width, s }: { most: number; width: number; s: number },
): Mark[] {
  const soil: Mark[] =
    view.surface === null
      ? []
      : [
          {
            kind: "line",
            x1: 8 * s,
            y1: view.surface,
            x2: width - 8 * s,
            y2: view.surface,
            stroke: { role: "soil", width: 2 * s },
          },
        ];
  const drawn = [...pieces]
    .sort((a, b) => a.thing - b.thing)
    .map((p): Mark => {
      const [[x1, y1], [x2, y2]] = [view.place(p.from), view.place(p.to)];
      const wide = Math.max(thinnest, thickest * (most > 0 ? p.current / most : 0)) * s;
      const dash = p.thing > 0 && wide < 2 * s ? { dash: `${4 * s} ${3 * s}` } : {};
      return {
        kind: "line",
        x1,
        y1,
        x2,
        y2,
        stroke: { role: p.thing === 0 ? "power" : "field", width: wide, ...dash },
      };
    });
  return [...soil, ...drawn];
}

/** Things named in a picture: those that change most. */
const mostNames = 4;

function viewLabels(answer: Answer, view: View, pieces: readonly Piece[], s: number, board: LabelBoard): Mark[] {
  const title = board.place({ role: "ink", size: 13 * s, weight: 600 }, [
    { lines: [view.name], x: 4 * s, y: view.top - 26 * s },
  ]);
  const names = ["antenna", ...thingsOf(answer)].slice(0, mostNames + 1);
  return [
    ...title,
    ...names.flatMap((name, thing) => {
      const own = pieces.filter((p) => p.thing === thing);
      if (own.length === 0) return [];
      const most = own.reduce((best, p) => (p.current > best.current ? p : best));
      const text = `${name}, up to ${amperesText(most.current)}`;
      const role = thing === 0 ? "powerInk" : "fieldInk";
      const style = { role, size: 13 * s, weight: 600, halo: { role: "paper", width: 4 * s } } as const;
      return board.place(style, labelPlaces(view, own, [text, name], s));
    }),
  ];
}

/** Along the thing at its own wires, above and below, beside its ends. */
function labelPlaces(view: View, own: readonly Piece[], wordings: readonly string[], s: number): LabelPlace[] {
  const shares = [0.5, 0.35, 0.65, 0.2, 0.8, 0.05, 0.95];
  const spots = shares.map((share) => view.place(own[Math.min(own.length - 1, Math.floor(share * own.length))]!.from));
  return wordings.flatMap((text) =>
    [-12, 21, -26, 35, -42, 50].flatMap((down) =>
      spots.flatMap(([x, y]): LabelPlace[] => [
        { lines: [text], x, y: y + down * s, anchor: "middle" },
        { lines: [text], x: x + 12 * s, y: y + down * s },
        { lines: [text], x: x - 12 * s, y: y + down * s, anchor: "end" },
      ]),
    ),
  );
}

const amperesText = (a: number): string => (a < 0.0995 ? `${plainText(1000 * a, 0)} mA` : `${fixedText(a, 1)} A`);

function notesOf(answer: Answer, width: number, s: number): string[] {
  const more = thingsOf(answer).length > mostNames ? " Only those that change most are named." : "";
  return wrapText(
    `As thick as the current in them: the antenna in one colour, what is near by in the other (dashed where it carries next to nothing).${more}`,
    12 * s,
    width - 8 * s,
  );
}

function titleOf(answer: Answer): string {
  const [thing = "thing near by"] = thingsOf(answer);
  const share = plainText(requiredNumber(answer, "inducedShare"), 0);
  return `The ${thing} carries ${amperesText(requiredNumber(answer, "inducedCurrent"))}, ${share} % of the most in the antenna`;
}

function tableOf(answer: Answer): FigureTable {
  const pieces = piecesOf(answer);
  const names = ["antenna", ...thingsOf(answer)];
  return {
    caption: "Largest current in each",
    columns: [
      { name: "what", unit: "" },
      { name: "largest current", unit: "A" },
    ],
    rows: names.flatMap((name, thing) => {
      const own = pieces.filter((p) => p.thing === thing).map((p) => p.current);
      return own.length === 0 ? [] : [[name, Math.max(...own)]];
    }),
  };
}
