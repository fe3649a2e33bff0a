/** A table of numbers as text; a wide one scrolls in a box of its own, which the keyboard reaches. */
import type { DocumentTable } from "@feedpath/report";

interface NumbersTableProps {
  readonly table: DocumentTable;
  readonly captioned: boolean;
}

export function NumbersTable({ table, captioned }: NumbersTableProps) {
  const numeric = (column: number) => (table.columns[column]?.numeric ? "numeric" : undefined);
  return (
    // biome-ignore-start lint/a11y: a wide table scrolls and the keyboard must be able to do it; a section would be a landmark
    <div role="group" className="table-frame" tabIndex={0} aria-label={table.caption}>
      {/* biome-ignore-end lint/a11y: the frame only */}
      <table>
        <caption className={captioned ? undefined : "out-of-sight"}>{table.caption}</caption>
        <thead>
          <tr>
            {table.columns.map(({ name, unit }, column) => (
              <th key={name} scope="col" className={numeric(column)}>
                {name}
                {unit !== "" && <span className="quiet">, {unit}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row) => (
            <tr key={row.join("|")}>
              {row.map((cell, column) =>
                column === 0 ? (
                  <th key={table.columns[column]?.name} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={table.columns[column]?.name} className={numeric(column)}>
                    {cell}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
