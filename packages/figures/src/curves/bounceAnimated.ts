/** The film as one SVG that moves by itself, without a script; still at its last moment where motion is not wanted. */
import type { Answer } from "@feedpath/engine";
import { colourOf } from "../kit/colours";
import type { Figure, Mark, Role } from "../kit/figure";
import { polyline, rounded } from "../kit/outline";
import { textWidth } from "../kit/textWidth";
import { toSvg } from "../kit/toSvg";
import { type Bar, type Beat, beatsOf, pace, timeBar } from "./bounceClock";
import { type BounceFilm, bounceFilm, momentSays } from "./bounceFacts";
import { framePanels } from "./bounceFrame";
import { drawChart } from "./chart";
import type { ChartOptions, Curve } from "./chartTypes";
import type { PanelFrame } from "./panelFrame";

interface Animated {
  readonly frame: PanelFrame;
  readonly values: readonly (readonly number[])[];
  readonly role: Role;
  readonly dashed: boolean;
}

/** Standalone SVG of the film of an answer to `bounce`; light, as all that is handed over. A click starts it anew. */
export function animatedBounce(answer: Answer, options: ChartOptions): string {
  const film = bounceFilm(answer);
  const beats = beatsOf(film);
  const { still, moving, bar } = stillPicture(answer, film, options);
  const svg = toSvg(still, { theme: "light", idPrefix: "film", standalone: true });
  const paths = moving.map((one) => pathMarkup(one, film, beats, options.scale ?? 1)).join("");
  const style =
    "<style>.stands{display:none}@media (prefers-reduced-motion:reduce){.moves{display:none}.stands{display:inline}}</style>";
  const dot = dotMarkup(bar, beats, options.scale ?? 1);
  return svg.replace(
    "</svg>",
    `${style}<g id="film-moves" class="moves">${paths.replaceAll("@", animation(beats))}${dot}</g>${standing(moving, film, options)}</svg>`,
  );
}

/** Attributes that all animations share: one clock, begun anew by a click. */
function animation(beats: readonly Beat[]): string {
  const last = beats[beats.length - 1]!.at;
  const keys = beats.map(({ at }) => rounded4(at / last)).join(";");
  return `dur="${rounded(last * pace.moment)}s" begin="0s;film-moves.click" repeatCount="indefinite" calcMode="linear" keyTimes="${keys}"`;
}

const rounded4 = (x: number): number => Math.round(x * 1e4) / 1e4;

const outlineOf = ({ frame, values }: Animated, film: BounceFilm, moment: number): string =>
  polyline(values[moment]!.map((value, i) => [frame.x(film.distances[i]!), frame.y(value)] as const));

function strokeOf({ role, dashed }: Animated, s: number): string {
  const dash = dashed ? ` stroke-dasharray="${6 * s} ${4 * s}"` : "";
  return `fill="none" stroke="${colourOf("light", role)}" stroke-width="${rounded(2.2 * s)}" stroke-linejoin="round"${dash}`;
}

/** Its own outline is the last moment: what a viewer shows that does not animate. "@" stands for the shared attributes. */
function pathMarkup(one: Animated, film: BounceFilm, beats: readonly Beat[], s: number): string {
  const outlines = film.times.map((_, moment) => outlineOf(one, film, moment));
  const values = beats.map(({ moment }) => outlines[moment]).join(";");
  const last = outlines[outlines.length - 1];
  return `<path d="${last}" ${strokeOf(one, s)}><animate attributeName="d" @ values="${values}"/></path>`;
}

const standing = (moving: readonly Animated[], film: BounceFilm, { scale = 1 }: ChartOptions): string => {
  const last = film.times.length - 1;
  return `<g class="stands">${moving.map((one) => `<path d="${outlineOf(one, film, last)}" ${strokeOf(one, scale)}/>`).join("")}</g>`;
};

function dotMarkup({ x, y }: Bar, beats: readonly Beat[], s: number): string {
  const values = beats.map(({ at }) => rounded(x(at))).join(";");
  const end = x(beats[beats.length - 1]!.at);
  return `<circle cx="${rounded(end)}" cy="${rounded(y)}" r="${rounded(5 * s)}" fill="${colourOf("light", "ink")}"><animate attributeName="cx" ${animation(beats)} values="${values}"/></circle>`;
}

interface StillPicture {
  readonly still: Figure;
  readonly moving: readonly Animated[];
  readonly bar: Bar;
}

/** Axes, names and the bar of time; the curves are left out and given back as what moves. */
function stillPicture(answer: Answer, film: BounceFilm, options: ChartOptions): StillPicture {
  const s = options.scale ?? 1;
  const frames: PanelFrame[] = [];
  const curves: (readonly Curve[])[] = [];
  const panels = framePanels(answer, film.times.length - 1).map((panel) => {
    curves.push(panel.curves);
    return {
      ...panel,
      curves: [],
      under: (frame: PanelFrame) => {
        frames.push(frame);
        return [];
      },
    };
  });
  const axis = { values: film.distances, name: "m along the line, from the source" };
  const drawn = drawChart({ ...options, axis, panels, verticals: [], note: "" });
  const moving = curves.flatMap((list, p) =>
    list.map(({ series, role, dashed }): Animated => {
      const values =
        { forward: film.forward, reflected: film.reflected, current: film.current }[series] ?? film.voltage;
      return { frame: frames[p]!, values, role, dashed };
    }),
  );
  const { bar, marks } = timeBar(film, { ...options, scale: s }, drawn.height);
  const still: Figure = {
    name: "bounceFilm",
    title: `${answer.asked} ${answer.headline}`,
    width: options.width,
    height: drawn.height + 80 * s,
    scale: s,
    marks: [...drawn.marks, ...marks, ...headlineMarks(answer, options, bar.y + 60 * s)],
    description: `Film of the waves on the line, from switching on to ${momentSays(film, film.times.length - 1)}.`,
    table: { caption: "", columns: [], rows: [] },
  };
  return { still, moving, bar };
}

/** The message, for a film that is handed on alone. */
function headlineMarks({ headline }: Answer, { width, scale: s = 1 }: ChartOptions, y: number): Mark[] {
  const size = Math.min(15 * s, ((width - 52 * s) * 15) / textWidth(headline, 15, 600));
  return [
    { kind: "text", x: 42 * s, y, text: headline, role: "ink", size, weight: 600, anchor: "start", face: "words" },
  ];
}
