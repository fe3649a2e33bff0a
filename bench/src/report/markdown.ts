/** Sections as Markdown. */
import { type Budget, isReached, type Section, type Table, threeDigits, useOf } from "./section";

/** A table with its columns padded to one width, as the formatter of Markdown has them. */
export function markdownTable(columns: readonly string[], rows: readonly (readonly string[])[]): string {
  const cell = (text: string) => text.replaceAll("|", "\\|");
  const all = [columns, ...rows].map((row) => row.map(cell));
  const widths = columns.map((_, i) => Math.max(3, ...all.map((row) => row[i]!.length)));
  const line = (row: readonly string[]) => `| ${row.map((text, i) => text.padEnd(widths[i]!)).join(" | ")} |`;
  const rule = line(widths.map((width) => "-".repeat(width)));
  return [line(all[0]!), rule, ...all.slice(1).map(line)].join("\n");
}

const limitText = ({ bound, limit, unit }: Budget): string =>
  `${bound === "most" ? "at most" : "at least"} ${limit} ${unit}`;

export function budgetTable(budgets: readonly Budget[]): string {
  return markdownTable(
    ["budget", "limit", "measured", "measured over limit", "against its baseline", "reached"],
    budgets.map((budget) => [
      budget.what,
      limitText(budget),
      `${threeDigits(budget.measured)} ${budget.unit}`,
      threeDigits(budget.measured / budget.limit),
      budget.against,
      isReached(budget) ? "yes" : `no (${threeDigits(useOf(budget))} times over)`,
    ]),
  );
}

const tableText = ({ caption, columns, rows, note }: Table): string =>
  [`**${caption}**`, markdownTable(columns, rows), ...(note ? [note] : [])].join("\n\n");

/** `pictures` is where the figures lie, seen from the page. */
export function sectionText({ title, tables, figures, troubles }: Section, pictures: string): string {
  return [
    `### ${title}`,
    ...troubles,
    ...tables.map(tableText),
    ...figures.map(({ name, title: says }) => `![${says}](${pictures}/${name}.svg)`),
  ].join("\n\n");
}
