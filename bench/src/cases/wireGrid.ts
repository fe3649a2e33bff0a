/** A wire grid of about 2,000 unknowns in a process of its own: time, and memory beyond its matrix. */
import { startLapack } from "../baseline/lapack";
import { program } from "../child/process";
import { type Section, threeDigits } from "../report/section";

interface Told {
  readonly unknowns: number;
  readonly seconds: number;
  readonly megabytes: number;
}

/** Cells of a metre; 10 by 11 have 241 bars. */
const grids = [
  [5, 5],
  [7, 7],
  [10, 11],
] as const;
const bytesOfNumber = 16;

export async function wireGridSolve(): Promise<Section> {
  const idle = await program<Told>("wireGrid.ts");
  const solved: { readonly told: Told; readonly cells: string; readonly matrix: number; readonly beyond: number }[] =
    [];
  for (const [columns, rows] of grids) {
    const told = await program<Told>("wireGrid.ts", String(columns), String(rows));
    const matrix = (bytesOfNumber * told.unknowns ** 2) / 1e6;
    const beyond = told.megabytes - idle.megabytes - matrix;
    solved.push({ told, cells: `${columns} by ${rows}`, matrix, beyond });
  }
  const largest = solved.at(-1)!;
  const lapack = await startLapack();
  const zgesv = (await lapack?.time("zgesv", largest.told.unknowns, 1)) ?? null;
  lapack?.end();
  const against = zgesv === null ? "" : `${threeDigits((1000 * largest.told.seconds) / zgesv)} times zgesv alone`;
  const what = `wire grid of ${largest.cells} cells, ${largest.told.unknowns} unknowns, fresh process`;
  return {
    title: "Wire grids",
    budgets: [
      { what, limit: 60, unit: "s", bound: "most", measured: largest.told.seconds, against },
      {
        what: `${what}: memory beyond its matrix of ${threeDigits(largest.matrix)} MB`,
        ...{ limit: 200, unit: "MB", bound: "most", measured: largest.beyond },
        against: `${threeDigits(largest.told.megabytes / idle.megabytes)} times an idle process`,
      },
    ],
    tables: [
      {
        caption: "Wire grids in free space, each in a fresh process, fast twin",
        columns: ["cells", "unknowns", "s", "most memory of the process, MB", "its matrix, MB", "beyond, MB"],
        rows: solved.map(({ told, cells, matrix, beyond }) => [
          ...[cells, String(told.unknowns), threeDigits(told.seconds)],
          ...[told.megabytes, matrix, beyond].map(threeDigits),
        ]),
        note: `Beyond: the most memory of the process, less that of the same program idle (${threeDigits(idle.megabytes)} MB, one dipole solved) and less a matrix of 16 bytes a pair of unknowns.`,
      },
    ],
    figures: [],
    troubles: [],
  };
}
