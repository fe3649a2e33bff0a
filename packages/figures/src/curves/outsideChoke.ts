/** What a choke leaves, against its reactance, for several resistances: where a reactive one makes it worse. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, numericParameter, optionalNumber, requiredColumn, requiredTable } from "../kit/answerValues";
import type { Figure, Role } from "../kit/figure";
import { drawChart } from "./chart";
import type { ChartOptions, Curve } from "./chartTypes";
import { alongOf, ohmsText, percentText, placeWords, quietLine, shareTop } from "./outsideFacts";
import { allNumbers, figureTable, valueAt } from "./tableValues";

const drawnResistances = [
  { series: "withNoResistance", label: "no resistance", role: "ink", labelRole: "ink", dashed: true },
  { series: "withOneKilohm", label: "1 kΩ", role: "heat", labelRole: "heatInk", dashed: false },
  { series: "withThreeKilohm", label: "3 kΩ", role: "power", labelRole: "powerInk", dashed: false },
] as const satisfies readonly { series: string; label: string; role: Role; labelRole: Role; dashed: boolean }[];

/** The scale ends at this many times what no choke leaves: a resonance has no top. */
const beyondBare = 4;

const curves = (table: Table): Curve[] =>
  drawnResistances.map(({ series, label, role, labelRole, dashed }) => ({
    series,
    values: requiredColumn(table, series).values,
    role,
    labelRole,
    dashed,
    labels: [label],
  }));

/** Figure of the answer to `outside`: the choke at the place of the study. Null where no place for a choke was found. */
export function outsideChoke(answer: Answer, options: ChartOptions): Figure | null {
  if (!answer.tables.some(({ name }) => name === "chokeReactance")) return null;
  return chokeChart(answer, options);
}

export function chokeChart(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "chokeReactance");
  const reactances = numbersOf(table, "reactance").map((x) => x / 1000);
  const bare = valueAt(table, "withNoResistance", 0) ?? 0;
  const shown = allNumbers(
    table,
    drawnResistances.map(({ series }) => series),
  );
  const drawn = drawChart({
    ...options,
    axis: { values: reactances, name: "reactance, kΩ: capacitive left, inductive right" },
    panels: [
      {
        name: "left on the outside, % of the antenna's current",
        height: 200,
        from: 0,
        to: shareTop(shown, Math.max(12, beyondBare * bare)),
        curves: curves(table),
        over: quietLine,
        rings: [{ at: 0, value: bare, text: `none: ${percentText(bare)}` }],
      },
    ],
    verticals: [],
    note: "",
  });
  return {
    name: "outsideChoke",
    title: titleOf(answer, bare),
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Share of the antenna's current left on the outside, against the reactance of the choke, for several resistances. ${titleOf(answer, bare)}.`,
    table: figureTable(table, "What a choke leaves", {
      reactance: "reactance",
      withNoResistance: "no resistance",
      withThreeHundredOhm: "300 Ω",
      withOneKilohm: "1 kΩ",
      withThreeKilohm: "3 kΩ",
      withTenKilohm: "10 kΩ",
    }),
  };
}

function titleOf(answer: Answer, bare: number): string {
  const worst = optionalNumber(answer, "worstReactance");
  const share = optionalNumber(answer, "shareAtWorstReactance");
  const at = numericParameter(answer, "studiedAt");
  const where = at === null ? "" : ` ${placeWords(alongOf(answer), at)}`;
  if (worst !== null && share !== null && share > 1.2 * bare) {
    const kind = worst < 0 ? "capacitive" : "inductive";
    return `A choke${where} of ${ohmsText(Math.abs(worst))}, all ${kind}, makes it worse than none: ${percentText(share)} in place of ${percentText(bare)}`;
  }
  const needed = optionalNumber(answer, "resistanceNeeded");
  return needed === null
    ? `No choke${where} brings the current below 5 %`
    : `A choke${where} of ${ohmsText(needed)}, all resistive, leaves 5 %`;
}
