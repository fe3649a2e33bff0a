/** One moment of the film: what a page shows while it plays or is stepped. */
import type { Answer } from "@feedpath/engine";
import type { Figure, Mark } from "../kit/figure";
import { textWidth } from "../kit/textWidth";
import { bounceFilm, largestIn, momentSays } from "./bounceFacts";
import { momentCurves, swingTicks, voltageSpan } from "./bounceMoments";
import { drawChart } from "./chart";
import type { ChartOptions, Panel } from "./chartTypes";
import { type PanelFrame, roundSpan } from "./panelFrame";

/** How many moments the film of an answer to `bounce` has; 0 where there is none. */
export const filmLength = (answer: Answer): number =>
  answer.grids?.find(({ name }) => name === "voltageOnLine")?.rows.values.length ?? 0;

/** Panels of a moment: voltages, and the current below. */
export function framePanels(answer: Answer, moment: number): Panel[] {
  const film = bounceFilm(answer);
  const [from, to] = voltageSpan(film);
  const amperes = roundSpan([0, 1.05 * largestIn(film.current)])[1];
  return [
    {
      name: "voltage, V",
      height: 190,
      from,
      to,
      ...swingTicks(from, to),
      curves: momentCurves(film, moment, false),
      rings: [],
      over: keyMarks,
    },
    {
      name: "current, A",
      height: 90,
      from: film.sizes ? 0 : -amperes,
      to: amperes,
      ...swingTicks(film.sizes ? 0 : -amperes, amperes),
      curves: [
        {
          series: "current",
          values: film.current[moment]!,
          role: "ink",
          labelRole: "ink",
          dashed: false,
          labels: [],
        },
      ],
      rings: [],
    },
  ];
}

/** Words of the strokes, from right to left. */
const strokeWords = [
  { text: "both", role: "ink", labelRole: "ink", dashed: false },
  { text: "back", role: "power", labelRole: "powerInk", dashed: true },
  { text: "there", role: "power", labelRole: "powerInk", dashed: false },
] as const;

/** What each stroke stands for, above the first panel: on a moving curve no name would stay. px at scale 1. */
const key = { stroke: 14, gap: 5, between: 11 };

function keyMarks({ top, right, s }: PanelFrame): Mark[] {
  const y = top - 11 * s;
  let x = right;
  return strokeWords.flatMap(({ text, role, labelRole, dashed }): Mark[] => {
    const end = x;
    const middle = end - textWidth(text, 13 * s, 600) - key.gap * s;
    const start = middle - key.stroke * s;
    x = start - key.between * s;
    const stroke = { role, width: 2.2 * s, ...(dashed ? { dash: `${4 * s} ${3 * s}` } : {}) };
    return [
      { kind: "text", x: end, y, text, role: labelRole, size: 13 * s, weight: 600, anchor: "end", face: "numbers" },
      { kind: "line", x1: start, y1: y - 4.5 * s, x2: middle, y2: y - 4.5 * s, stroke },
    ];
  });
}

/** `moment` from 0 to `filmLength` - 1. */
export function bounceFrame(answer: Answer, moment: number, options: ChartOptions): Figure {
  const film = bounceFilm(answer);
  if (!(moment >= 0 && moment < film.times.length)) {
    throw new Error(`The film has no moment ${moment}: expected 0 to ${film.times.length - 1}.`);
  }
  const drawn = drawChart({
    ...options,
    axis: { values: film.distances, name: "m along the line, from the source" },
    panels: framePanels(answer, moment),
    verticals: [],
    note: `After ${momentSays(film, moment)}${film.cut !== null && moment >= film.cut ? ": as it stays" : ""}.`,
  });
  return {
    name: "bounceFrame",
    title: `After ${momentSays(film, moment)}`,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Voltage of the wave towards the end, of the wave coming back and of both, and the current, along the line after ${momentSays(film, moment)}.`,
    table: {
      caption: "Along the line",
      columns: [
        { name: "distance from the source", unit: "m" },
        { name: "towards the end", unit: "V" },
        { name: "coming back", unit: "V" },
        { name: "voltage", unit: "V" },
        { name: "current", unit: "A" },
      ],
      rows: film.distances.map((d, i) => {
        const grids = [film.forward, film.reflected, film.voltage, film.current];
        return [d, ...grids.map((grid) => grid[moment]![i]!)];
      }),
    },
  };
}
