/** The table of lines: one row a line under its family, its sources on demand. */
import type { LineComparison, LineRow, LineUnits } from "@feedpath/report";
import { linesTable, mostCurves } from "@feedpath/report";
import { useId, useState } from "react";

interface LineRowsProps {
  readonly groups: readonly (readonly [string, readonly LineRow[]])[];
  readonly comparison: LineComparison;
  readonly units: LineUnits;
  readonly chosen: readonly string[];
  readonly onChoose: (name: string, on: boolean) => void;
}

export function LineRows({ groups, comparison, units, chosen, onChoose }: LineRowsProps) {
  const [opened, setOpened] = useState<string | null>(null);
  const table = linesTable(comparison, units);
  const cells = new Map(table.rows.map((row) => [row[0], row.slice(1)]));
  const [, ...columns] = table.columns;
  return (
    // biome-ignore-start lint/a11y: a wide table scrolls and the keyboard must be able to do it; a section would be a landmark
    <div role="group" className="table-frame lines-frame" tabIndex={0} aria-label={table.caption}>
      {/* biome-ignore-end lint/a11y: the frame only */}
      <table>
        <caption className="out-of-sight">{table.caption}</caption>
        <thead>
          <tr>
            <th scope="col">line</th>
            {columns.map(({ name, unit }) => (
              <th key={name} scope="col" className="numeric">
                {name}
                {unit !== "" && <span className="quiet">, {unit}</span>}
              </th>
            ))}
          </tr>
        </thead>
        {groups.map(([heading, rows]) => (
          <tbody key={heading}>
            <tr>
              <th scope="rowgroup" colSpan={columns.length + 1} className="family">
                <span>{heading}</span>
              </th>
            </tr>
            {rows.map((row) => (
              <Line
                key={row.designation}
                row={row}
                cells={cells.get(row.designation) ?? []}
                open={opened === row.designation}
                onOpen={(open) => setOpened(open ? row.designation : null)}
                chosen={chosen.includes(row.designation)}
                full={chosen.length >= mostCurves}
                onChoose={(on) => onChoose(row.designation, on)}
              />
            ))}
          </tbody>
        ))}
      </table>
    </div>
  );
}

interface LineProps {
  readonly row: LineRow;
  readonly cells: readonly string[];
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly chosen: boolean;
  /** As many are drawn as can be told apart. */
  readonly full: boolean;
  readonly onChoose: (on: boolean) => void;
}

function Line({ row, cells, open, onOpen, chosen, full, onChoose }: LineProps) {
  const id = useId();
  return (
    <>
      <tr>
        <th scope="row">
          <span className="line-name">
            <input
              type="checkbox"
              aria-label={`Draw ${row.designation}`}
              checked={chosen}
              disabled={full && !chosen}
              onChange={(event) => onChoose(event.target.checked)}
            />
            <button
              type="button"
              className="opens"
              aria-expanded={open}
              aria-controls={id}
              onClick={() => onOpen(!open)}
            >
              {row.designation}
            </button>
          </span>
        </th>
        {cells.map((cell, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: columns of a table keep their order
          <td key={index} className="numeric">
            {cell}
          </td>
        ))}
      </tr>
      {open && (
        <tr id={id}>
          <td colSpan={cells.length + 1}>
            <Sources row={row} />
          </td>
        </tr>
      )}
    </>
  );
}

function Sources({ row }: { readonly row: LineRow }) {
  return (
    <div className="line-sources">
      {row.about !== "" && <p>{row.about}</p>}
      <ul className="points">
        {row.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
        {row.sources.map(({ value, source, status }) => (
          <li key={value}>
            {value} <span className="source">{`${source} (${status})`}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
