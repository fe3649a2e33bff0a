import type { DocumentTable } from "../document/document";
import { escapeHtml } from "./escapeHtml";

/** Rows up to which a table is not broken between pages. */
const keptWhole = 12;

/** A table with a row heading in its first column; wide ones scroll in their own box, which the keyboard reaches. */
export function tableHtml(table: DocumentTable, captionShown: boolean): string {
  const heads = table.columns.map(({ name, unit, numeric }) => {
    const says = unit === "" ? name : `${name}, ${unit}`;
    return `<th scope="col"${numeric ? ' class="r"' : ""}>${escapeHtml(says)}</th>`;
  });
  const rows = table.rows.map((row) => {
    const cells = row.map((cell, index) =>
      index === 0
        ? `<th scope="row">${escapeHtml(cell)}</th>`
        : `<td${table.columns[index]?.numeric ? ' class="r"' : ""}>${escapeHtml(cell)}</td>`,
    );
    return `<tr>${cells.join("")}</tr>`;
  });
  const caption = `<caption${captionShown ? "" : ' class="unseen"'}>${escapeHtml(table.caption)}</caption>`;
  const inner = `<table${table.rows.length <= keptWhole ? ' class="whole"' : ""}>${caption}<thead><tr>${heads.join("")}</tr></thead><tbody>${rows.join("\n")}</tbody></table>`;
  return `<div class="scroll" role="group" tabindex="0" aria-label="${escapeHtml(table.caption)}">${inner}</div>`;
}
