/** Where every lobe of the pattern stands against height: born straight up, lower the higher the antenna hangs. */
import type { Answer, Column, Table } from "@feedpath/engine";
import type { FigureTable } from "../kit/figure";
import { plainText } from "../kit/numberText";
import type { Curve, Panel, Ring } from "./chartTypes";
import type { Heights } from "./heightFacts";
import { valueAt } from "./tableValues";

const lobesOf = (table: Table): string[] =>
  Object.keys(table.columns).filter((name) => name.startsWith("elevationOfLobe"));

function curveOf(column: Column, series: string, first: boolean): Curve {
  const labels = first ? ["lowest lobe", "lowest"] : [];
  return { series, values: column.values, labels, role: "field", labelRole: "fieldInk", dashed: !first };
}

/** The lowest lobe at the present height carries its number. */
function ringAt(table: Table, { present }: Heights): Ring[] {
  const value = present === null ? null : valueAt(table, "elevationOfLobe1", present);
  return present === null || value === null ? [] : [{ at: present, value, text: `${plainText(value, 0)}°` }];
}

/** The same for readers who do not see it: columns beside those of the heights, and a value for each of `rows` heights. */
export function lobeColumns(answer: Answer, rows: number): Pick<FigureTable, "columns" | "rows"> {
  const table = answer.tables.find((one) => one.name === "lobesByHeight");
  const names = table ? lobesOf(table) : [];
  return {
    columns: names.map((_, i) => ({ name: `elevation of lobe ${i + 1}`, unit: "deg" })),
    rows: Array.from({ length: rows }, (_, row) => names.map((name) => table!.columns[name]!.values[row] ?? null)),
  };
}

/** None where the answer has no table of lobes, or only one that stays straight up. */
export function lobePanel(answer: Answer, heights: Heights): Panel[] {
  const table = answer.tables.find((one) => one.name === "lobesByHeight");
  const names = table ? lobesOf(table) : [];
  if (!table || names.every((name) => table.columns[name]!.values.every((v) => v === null || v > 89))) return [];
  return [
    {
      name: "where the lobes stand, ° up",
      height: 104,
      from: 0,
      to: 90,
      curves: names.map((name, i) => curveOf(table.columns[name]!, name, i === 0)),
      rings: ringAt(table, heights),
    },
  ];
}
