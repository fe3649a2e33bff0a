/** Tables of what else could be done: lengths, transformers of line, two lines side by side, a switch, more power. */
import type { Column, Table } from "../../answer/answer";
import { column, columnOver, counted } from "../common/columns";
import { bandName } from "./bandName";
import type { Findings } from "./findings";
import { lengthTables } from "./lengthTables";
import { spacingTable, twinTable } from "./pairTables";
import { presentOf } from "./proposal";
import type { Ranked } from "./ranking";
import { worstOf } from "./study";

export const alternativeTables = (found: Findings): Table[] => [
  ...lengthTables(found),
  ...endsTable(found),
  ...twinTable(found),
  ...spacingTable(found),
  ...arrangementTable(found),
  powerTable(found),
];

/** m of line in the sections at both ends together. */
const added = (sections: readonly { readonly length: number }[]): number =>
  2 * sections.reduce((sum, s) => sum + s.length, 0);

function endsTable({ ends, study }: Findings): Table[] {
  if (ends.length === 0) return [];
  const all = ends.flatMap((one) => one.rows.map((row, i) => ({ one, row, band: study.bands[i]! })));
  const of = (unit: string, value: (entry: (typeof all)[number]) => number | null): Column =>
    column(unit, all.map(value));
  return [
    {
      name: "matchedEnds",
      axis: "row",
      labels: all.map(({ one, band }) => `${one.ends}, ${bandName(band.name, band.frequency.value)}`),
      columns: {
        row: counted(all.length),
        wattsIntoAntenna: of("W", ({ row }) => row?.watts ?? null),
        lossAtLoad: of("dB", ({ row }) => row?.loss ?? null),
        swrSeen: of("1", ({ row }) => row?.swrSeen ?? null),
        widthFrom: of("MHz", ({ one }) => one.width && one.width.from / 1e6),
        widthTo: of("MHz", ({ one }) => one.width && one.width.to / 1e6),
        addedLength: of("m", ({ one }) => added(one.sections)),
        firstSection: of("m", ({ one }) => one.sections[0]?.length ?? null),
        firstImpedance: of("ohm", ({ one }) => one.sections[0]?.impedance ?? null),
        secondSection: of("m", ({ one }) => one.sections[1]?.length ?? null),
        secondImpedance: of("ohm", ({ one }) => one.sections[1]?.impedance ?? null),
        frequency: of("MHz", ({ band }) => band.frequency.value / 1e6),
      },
    },
  ];
}

function arrangementTable({ arrangements, study, money }: Findings): Table[] {
  const all = arrangements.flatMap((one) => study.bands.map((band, i) => ({ one, band, watts: one.watts[i] ?? null })));
  if (all.length === 0) return [];
  return [
    {
      name: "oneOrSeveral",
      axis: "row",
      labels: all.map(({ one, band }) => `${one.says}, ${bandName(band.name, band.frequency.value)}`),
      columns: {
        row: counted(all.length),
        wattsIntoAntenna: columnOver(all, "W", (a) => a.watts),
        metresOfLine: columnOver(all, "m", (a) => a.one.metres),
        price: column(
          money ?? "1",
          all.map((a) => a.one.price),
        ),
        frequency: columnOver(all, "MHz", (a) => a.band.frequency.value / 1e6),
      },
    },
  ];
}

/** dB of twice the power. */
export const doubled = 10 * Math.log10(2);

/** Twice the power against the proposed line and the best of the list, in the band where the present line brings least. */
function powerTable({ proposal, best, ranked, study, money }: Findings): Table {
  const at = worstOf(study.present);
  const own = presentOf(ranked);
  const lines = [...new Set([proposal, best])].flatMap((one) => one ?? []);
  const watts = [2 * study.present.rows[at]!.watts, ...lines.map((one) => one.rows[at]!.watts)];
  return {
    name: "powerOrLine",
    axis: "choice",
    labels: ["twice the power", ...lines.map((one) => one.candidate.entry.designation)],
    columns: {
      choice: counted(watts.length),
      wattsIntoAntenna: column("W", watts),
      gainedSending: column("dB", [doubled, ...lines.map((one) => one.run.gained)]),
      gainedReceiving: column("dB", [0, ...lines.map((one) => gainedReceiving(own, one))]),
      price: column(money ?? "1", [null, ...lines.map((one) => one.run.price)]),
    },
  };
}

/** dB of signal to noise in the band where each takes most. */
const gainedReceiving = (own: Ranked, other: Ranked): number | null =>
  own.run.receive === null || other.run.receive === null ? null : own.run.receive - other.run.receive;
