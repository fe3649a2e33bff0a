import type { Figure, FigureTable } from "@feedpath/figures";
import { numberText } from "../words/numbers";
import { visibleLine } from "../words/visible";
import type { Block, DocumentTable } from "./document";

function cellText(cell: string | number | null): string {
  if (cell === null) return "–";
  return typeof cell === "number" ? numberText(cell, 4) : visibleLine(cell);
}

/** The numbers behind a figure, as text. */
export function tableOfFigure(table: FigureTable): DocumentTable {
  return {
    caption: visibleLine(table.caption),
    columns: table.columns.map((column, index) => ({
      name: visibleLine(column.name),
      unit: visibleLine(column.unit),
      numeric: table.rows.some((row) => typeof row[index] === "number"),
    })),
    rows: table.rows.map((row) => row.map(cellText)),
  };
}

/** The stage carries the headline as its title, which stands above it already. */
const untitled = "stage";

/** Each figure with the table of numbers behind it, in the order given. */
export function figureBlocks(figures: readonly Figure[], narrowFigures: readonly Figure[]): readonly Block[] {
  return figures.flatMap((figure): readonly Block[] => [
    {
      kind: "figure",
      figure,
      narrow: narrowFigures.find((narrow) => narrow.name === figure.name) ?? null,
      titled: figure.name !== untitled,
    },
    { kind: "folded", summary: "The numbers behind this picture", table: tableOfFigure(figure.table) },
  ]);
}
