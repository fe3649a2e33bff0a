/** The gain all over the sky as a shape in space, seen from above the side: facets from the far ones to the near ones. */
import type { Answer, Grid } from "@feedpath/engine";
import { requiredNumber } from "../kit/answerValues";
import { type Box, boxesAlong } from "../kit/box";
import type { Figure, FigureTable, Mark, Role } from "../kit/figure";
import { createLabelBoard, type LabelBoard, type LabelPlace } from "../kit/labelBoard";
import { type Point, polyline } from "../kit/outline";
import { wrapText } from "../kit/textWidth";
import { bearingText, gainText, pointOfCompass, upwardsText } from "./patternFacts";
import { type PatternOptions, span } from "./polarFrame";

/** Where the eye is, degrees: 35.26 up is that of an isometric drawing; around, near the strongest direction. */
const eyeElevation = 35.26;
const eyeBesides = 30;
const eyeAzimuth = (answer: Answer): number =>
  45 * Math.round(requiredNumber(answer, "azimuthOfMaximum") / 45) + eyeBesides;
/** Columns of the grid joined in one facet: 10 degrees. */
const stride = 2;

/** dB below the strongest up to which a facet has the role. */
const shades: readonly { readonly within: number; readonly role: Role; readonly says: string }[] = [
  { within: 3, role: "fieldInk", says: "within 3 dB of the strongest" },
  { within: 10, role: "field", says: "within 10 dB" },
  { within: Number.POSITIVE_INFINITY, role: "fieldTint", says: "weaker" },
];

function gridOf(answer: Answer): Grid {
  const grid = answer.grids?.find((one) => one.name === "sky");
  if (!grid) throw new Error(`The answer to "${answer.question}" has no grid "sky", which its figure draws.`);
  return grid;
}

type Space = readonly [number, number, number];

/** East, north, up on the picture, with the depth towards the eye. */
function viewed([x, y, z]: Space, azimuth: number): readonly [right: number, up: number, near: number] {
  const [a, e] = [(azimuth * Math.PI) / 180, (eyeElevation * Math.PI) / 180];
  const towards = x * Math.sin(a) + y * Math.cos(a);
  return [
    -x * Math.cos(a) + y * Math.sin(a),
    z * Math.cos(e) - towards * Math.sin(e),
    towards * Math.cos(e) + z * Math.sin(e),
  ];
}

/** A direction (degrees) at a radius. */
function inSpace(elevation: number, azimuth: number, radius: number): Space {
  const [e, a] = [(elevation * Math.PI) / 180, (azimuth * Math.PI) / 180];
  return [radius * Math.cos(e) * Math.sin(a), radius * Math.cos(e) * Math.cos(a), radius * Math.sin(e)];
}

interface Facet {
  readonly near: number;
  readonly corners: readonly (readonly [number, number])[];
  /** dB below the strongest. */
  readonly below: number;
}

function facetsOf(grid: Grid, most: number, eye: number): Facet[] {
  const azimuths = grid.columns.values.filter((_, k) => k % stride === 0);
  const corner = (i: number, k: number) => {
    const column = (k % azimuths.length) * stride;
    const below = most - (grid.values[i]![column] ?? most - 2 * span);
    const radius = Math.max(0, 1 - below / span);
    return { below, at: viewed(inSpace(grid.rows.values[i]!, azimuths[k % azimuths.length]!, radius), eye) };
  };
  const facets = grid.rows.values.slice(1).flatMap((_, i) =>
    azimuths.map((_, k): Facet => {
      const four = [corner(i, k), corner(i, k + 1), corner(i + 1, k + 1), corner(i + 1, k)];
      const mean = (of: (one: (typeof four)[number]) => number) => four.reduce((sum, one) => sum + of(one), 0) / 4;
      return {
        near: mean((one) => one.at[2]),
        corners: four.map((one) => [one.at[0], one.at[1]]),
        below: mean((one) => one.below),
      };
    }),
  );
  // Wholly in the centre: nothing to see.
  return facets.filter((one) => one.below < span).sort((a, b) => a.near - b.near);
}

function boxOf(points: readonly Point[]): Box {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Figure of the answer to `sky`: radius by dB, three shades. */
export function skyShape(answer: Answer, options: PatternOptions): Figure {
  const { width, scale: s = 1 } = options;
  const grid = gridOf(answer);
  const most = requiredNumber(answer, "maximumGain");
  const eye = eyeAzimuth(answer);
  const free = grid.rows.values[0]! < 0;
  const radius = Math.min(width / 2 - 40 * s, 170 * s);
  const cx = width / 2;
  const cy = 20 * s + radius * (free ? 1 : Math.cos((eyeElevation * Math.PI) / 180) + 0.12);
  const place = ([x, y]: readonly [number, number, ...number[]]): Point => [cx + radius * x, cy - radius * y];
  const lowest = cy + radius * (free ? 1 : Math.sin((eyeElevation * Math.PI) / 180)) + 30 * s;
  const note = wrapText(
    `Radius by gain: centre ${span} dB below the strongest. Seen from the ${pointOfCompass(eye)}, from above.`,
    12 * s,
    width - 8 * s,
  );
  const height = lowest + (shades.length + note.length) * 18 * s + 10 * s;
  const board = createLabelBoard(width, height);
  const circle = Array.from({ length: 72 }, (_, i) => place(viewed(inSpace(0, 5 * i, 1), eye)));
  const seen = facetsOf(grid, most, eye);
  boxesAlong([...circle, circle[0]!], 1.5 * s).forEach(board.avoidFirmly);
  for (const { corners } of seen) board.avoidFirmly(boxOf(corners.map(place)));
  const facets = seen.map((facet): Mark => {
    const { role } = shades.find((shade) => facet.below <= shade.within)!;
    return {
      kind: "path",
      d: polyline(facet.corners.map(place), true),
      fill: { role },
      stroke: { role: "paper", width: 0.5 * s },
    };
  });
  return {
    name: "skyShape",
    title: `Strongest ${upwardsText(requiredNumber(answer, "elevationOfMaximum"))} towards ${bearingText(requiredNumber(answer, "azimuthOfMaximum"))}: ${gainText(most)}`,
    width,
    height,
    scale: s,
    marks: [
      { kind: "path", d: polyline(circle, true), stroke: { role: "line", width: 1 * s } },
      ...facets,
      ...compass(place, eye, s, board),
      ...shadeMarks(lowest, s, board),
      ...note.flatMap((line, i) =>
        board.place({ role: "ink2", size: 12 * s }, [
          { lines: [line], x: 4 * s, y: lowest + (shades.length + i + 0.7) * 18 * s },
        ]),
      ),
    ],
    description: `The gain over the whole sky as a shape: strongest ${upwardsText(requiredNumber(answer, "elevationOfMaximum"))} towards ${bearingText(requiredNumber(answer, "azimuthOfMaximum"))}, ${gainText(most)}. The table gives it by elevation and azimuth.`,
    table: tableOf(grid),
  };
}

/** Outside the horizon's ring; a point of the compass that the shape hides is not named. */
function compass(
  place: (at: readonly [number, number, ...number[]]) => Point,
  eye: number,
  s: number,
  board: LabelBoard,
): Mark[] {
  return (["north", "east", "south", "west"] as const).flatMap((name, i) => {
    const places = [1.06, 1.12, 1.2].map((out): LabelPlace => {
      const [right, up] = viewed(inSpace(0, 90 * i, out), eye);
      const [x, y] = place([right, up]);
      const anchor = Math.abs(right) < 0.35 ? "middle" : right > 0 ? "start" : "end";
      return { lines: [name], x, y: y + (up < 0 ? 9 : 2) * s, anchor };
    });
    return board.placeClear({ role: "ink2", size: 12 * s }, places);
  });
}

function shadeMarks(from: number, s: number, board: LabelBoard): Mark[] {
  return shades.flatMap(({ role, says }, i): Mark[] => {
    const y = from + i * 18 * s;
    const box = { x: 4 * s, y: y - 10 * s, width: 18 * s, height: 12 * s };
    const swatch: Mark = { kind: "rect", ...box, fill: { role }, stroke: { role: "line", width: 0.5 * s } };
    return [swatch, ...board.place({ role: "ink", size: 12 * s }, [{ lines: [says], x: 28 * s, y }])];
  });
}

const [everyRow, everyColumn] = [2, 6];

/** Elevations every 10, azimuths every 30 degrees. */
function tableOf(grid: Grid): FigureTable {
  const columns = grid.columns.values.flatMap((azimuth, k) => (k % everyColumn === 0 ? [{ azimuth, k }] : []));
  return {
    caption: "Gain over the sky, dBi, by elevation and azimuth",
    columns: [
      { name: "elevation", unit: "°" },
      ...columns.map(({ azimuth }) => ({ name: `towards ${azimuth}°`, unit: "dBi" })),
    ],
    rows: grid.rows.values.flatMap((elevation, i) =>
      i % everyRow === 0 ? [[elevation, ...columns.map(({ k }) => grid.values[i]![k] ?? null)]] : [],
    ),
  };
}
