/** Six moments of the film under each other: what goes, what comes back, and what a meter would find. */
import type { Answer } from "@feedpath/engine";
import { optionalNumber } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { significantText } from "../kit/numberText";
import { type BounceFilm, bounceFilm, largestIn, momentSays, timeText } from "./bounceFacts";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel } from "./chartTypes";
import { roundSpan } from "./panelFrame";

/** A front half way, home half way, home, and so on: ways along the line after switching on. */
const ways = [0.5, 1.5, 2.5, 3.5, 5];

/** Indices of the moments nearest to `ways`, and the last one. */
function chosenMoments(film: BounceFilm): number[] {
  const nearest = ways.map((way) => {
    const wanted = way * film.oneWay;
    return film.times.reduce(
      (best, t, i) => (Math.abs(t - wanted) < Math.abs(film.times[best]! - wanted) ? i : best),
      0,
    );
  });
  return [...new Set([...nearest, film.times.length - 1])].sort((a, b) => a - b);
}

/** Curves of one moment. `labels`: only one panel names them. */
export function momentCurves(film: BounceFilm, moment: number, labels: boolean): Curve[] {
  const named = (...words: string[]): readonly string[] => (labels ? words : []);
  return [
    {
      series: "forward",
      values: film.forward[moment]!,
      role: "power",
      labelRole: "powerInk",
      dashed: false,
      labels: named("towards the end", "there"),
    },
    {
      series: "reflected",
      values: film.reflected[moment]!,
      role: "power",
      labelRole: "powerInk",
      dashed: true,
      labels: named("coming back", "back"),
    },
    {
      series: "voltage",
      values: film.voltage[moment]!,
      role: "ink",
      labelRole: "ink",
      dashed: false,
      labels: named("both: the voltage", "both"),
    },
  ];
}

/** Ticks of a scale that swings to both sides: its ends and the middle. */
export const swingTicks = (from: number, to: number): Pick<Panel, "ticks"> =>
  from < 0 ? { ticks: [from, 0, to].map((value) => ({ value, text: significantText(value, 3) })) } : {};

export const voltageSpan = (film: BounceFilm): readonly [number, number] => {
  const most = roundSpan([0, 1.05 * largestIn(film.forward, film.reflected, film.voltage)])[1];
  const least = Math.min(
    ...film.voltage.map((row) => Math.min(...row)),
    ...film.reflected.map((row) => Math.min(...row)),
  );
  return film.sizes || least > -0.02 * most ? [0, most] : [-most, most];
};

export function bounceMoments(answer: Answer, options: ChartOptions): Figure {
  const film = bounceFilm(answer);
  const [from, to] = voltageSpan(film);
  const moments = chosenMoments(film);
  const labelled = Math.min(2, moments.length - 1);
  const panels = moments.map(
    (moment, i): Panel => ({
      name: `${i === 0 ? "V after " : "after "}${momentSays(film, moment)}`,
      height: 74,
      from,
      to,
      ...swingTicks(from, to),
      curves: momentCurves(film, moment, i === labelled),
      rings: [],
    }),
  );
  const drawn = drawChart({
    ...options,
    axis: { values: film.distances, name: "m along the line, from the source" },
    panels,
    verticals: [],
    note: film.sizes ? "Drawn is how large the waves swing: the line is many waves long." : "",
  });
  return {
    name: "bounceMoments",
    title: titleOf(answer),
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Voltage along the line at ${moments.length} moments from switching on to ${momentSays(film, moments[moments.length - 1]!)}: the wave towards the end, the wave coming back, and both together, up to ${significantText(to, 3)} V.`,
    table: {
      caption: "Voltage along the line, moment by moment",
      columns: [
        { name: "distance from the source", unit: "m" },
        ...moments.map((moment) => ({ name: `after ${momentSays(film, moment)}`, unit: "V" })),
      ],
      rows: film.distances.map((d, i) => [d, ...moments.map((moment) => film.voltage[moment]![i]!)]),
    },
  };
}

function titleOf(answer: Answer): string {
  const { signal } = answer.parameters;
  const [echoes, time, oneWay] = ["echoesToSettle", "settlingTime", "oneWayTime"].map((n) => optionalNumber(answer, n));
  if (signal !== "carrier")
    return `The ${String(signal)} is at the end after ${timeText(oneWay ?? 0)}, and the end answers`;
  if (typeof echoes !== "number") return "Wave upon wave, and not settled yet";
  // Where the load comes into swing more slowly than the echoes fade, time tells and not their number.
  if (typeof time === "number" && time > (echoes + 2) * (oneWay ?? 0) + 1e9 / answer.frequency)
    return `Wave upon wave: settled after ${timeText(Number(time.toPrecision(2)))}`;
  if (echoes === 0) return "The first wave is all there is";
  return `Wave upon wave: settled after ${echoes} ${echoes === 1 ? "echo" : "echoes"}`;
}
