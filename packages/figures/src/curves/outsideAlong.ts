/** The current along the outside of the line, and what one choke would leave at each place. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredNumber, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel, Ring } from "./chartTypes";
import { type Along, alongOf, amperesText, noChokes, percentText, placeWords, verticalsAlong } from "./outsideFacts";
import { roundSpan } from "./panelFrame";
import { allNumbers, figureTable } from "./tableValues";

function currentPanel(answer: Answer, table: Table, along: Along): Panel {
  const bare = table.columns.withoutChokes && !noChokes(answer) ? ["withoutChokes"] : [];
  const curve = (series: string, labels: readonly string[], dashed: boolean): Curve => ({
    series,
    values: table.columns[series]!.values,
    role: dashed ? "line" : "field",
    labelRole: dashed ? "ink2" : "fieldInk",
    dashed,
    labels,
  });
  const largest = requiredNumber(answer, "outsideCurrent");
  const most = Math.max(...allNumbers(table, ["current", ...bare]));
  return {
    name: "current on the outside of the line, A",
    height: 168,
    from: 0,
    to: roundSpan([0, 1.12 * most])[1],
    curves: [
      curve("current", ["as it is"], false),
      ...bare.map((series) => curve(series, ["without any choke", "no choke"], true)),
    ],
    rings: [{ at: along.largestAt, value: largest, text: amperesText(largest) }],
  };
}

function placesPanel(places: Table): Panel {
  const at = numbersOf(places, "distance");
  const shares = places.columns.shareWithChoke!.values;
  const rings = at.flatMap((distance, i): Ring[] => {
    const value = shares[i] ?? null;
    return value === null
      ? []
      : [{ at: distance, value, text: percentText(value), short: percentText(value), quiet: true }];
  });
  const top = roundSpan([0, 1.2 * Math.max(6, ...rings.map((r) => r.value))])[1];
  return {
    name: "left with one choke there, % of the antenna's current",
    height: 96,
    from: 0,
    to: top,
    curves: [],
    rings,
  };
}

/** First figure of the answer to `outside`. Distances in metres from the transmitter's end. */
export function outsideAlong(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "outsideCurrent");
  const places = answer.tables.find(({ name }) => name === "chokePlace");
  const along = alongOf(answer);
  const tried = answer.parameters.tried;
  const drawn = drawChart({
    ...options,
    axis: { values: numbersOf(table, "distance"), name: "m along the outside, from the transmitter" },
    panels: [currentPanel(answer, table, along), ...(places ? [placesPanel(places)] : [])],
    verticals: verticalsAlong(along),
    note: places ? `Dots: a choke of ${String(tried)} at this place, and no other on the line.` : "",
  });
  return {
    name: "outsideAlong",
    title: titleOf(answer, along),
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: describe(answer, along),
    table: figureTable(table, "Current along the outside of the line", {
      distance: "distance from the transmitter",
      current: "current",
      share: "share of the antenna's current",
      ...(table.columns.withoutChokes ? { withoutChokes: "without any choke" } : {}),
      ...(table.columns.withPerfectChoke ? { withPerfectChoke: "with a perfect choke at the feed point" } : {}),
    }),
  };
}

const titleOf = (answer: Answer, along: Along): string =>
  `Most flows ${placeWords(along, along.largestAt)}: ${amperesText(requiredNumber(answer, "outsideCurrent"))} on the outside of the line`;

function describe(answer: Answer, along: Along): string {
  const end =
    along.earthed === null ? "the transmitter's end floats" : `the transmitter's end is tied to ${along.earthed}`;
  const chokes = along.chokes.map(({ name, at }) => `${name} ${placeWords(along, at)}`);
  const house = optionalNumber(answer, "outsideCurrentAtHouse");
  const near = house === null ? "" : ` Near the house it is ${amperesText(house)}.`;
  return `Current against the distance along the outside of the line; ${end}. ${titleOf(answer, along)}.${near}${chokes.length > 0 ? ` Chokes: ${chokes.join(", ")}.` : " There is no choke."}`;
}
