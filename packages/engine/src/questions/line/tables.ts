/** The tables of `line`, lines in the order of what matters. What is not known is null. */
import type { Column, Table } from "../../answer/answer";
import { column, counted } from "../common/columns";
import { alternativeTables } from "./alternativeTables";
import { bandName } from "./bandName";
import type { Standing } from "./candidates";
import type { Findings } from "./findings";
import type { Matters, Ranked } from "./ranking";
import { shortList } from "./shortList";
import { worstOf } from "./study";

/** `standing` in the table `lines`. */
const standingCodes: Readonly<Record<Standing, number>> = { rated: 1, other: 2, pair: 1, converted: 3 };

export const lineTables = (found: Findings): Table[] => [
  linesTable(found, "shortList", shortList(found)),
  linesTable(found, "lines", found.ranked),
  ...(found.study.bands.length > 1 ? [bandsTable(found)] : []),
  ...alternativeTables(found),
];

/** In the band where the present line brings least; first what a terminal still shows. */
function linesTable(found: Findings, name: string, ranked: readonly Ranked[]): Table {
  const { study } = found;
  const at = worstOf(study.present);
  const of = (unit: string, value: (one: Ranked) => number | null): Column => column(unit, ranked.map(value));
  const row = (one: Ranked) => one.rows[at]!;
  return {
    name,
    axis: "line",
    labels: ranked.map((one) => one.candidate.entry.designation),
    columns: {
      line: counted(ranked.length),
      wattsIntoAntenna: {
        ...of("W", (one) => row(one).watts),
        low: ranked.map((one) => row(one).low),
        high: ranked.map((one) => row(one).high),
      },
      lossAtLoad: of("dB", (one) => row(one).loss),
      swrSeen: of("1", (one) => row(one).swrSeen),
      ...runColumns(found, ranked),
      gained: of("dB", ({ run }) => run.gained),
      addedByMismatch: of("dB", (one) => row(one).added),
      highestVoltage: of("V", (one) => row(one).highestVoltage),
      jacketDiameter: of("mm", ({ run }) => (run.jacket === null ? null : 1000 * run.jacket)),
      impedance: of("ohm", (one) => one.candidate.impedance),
      standing: of("1", (one) => standingCodes[one.candidate.standing]),
      present: of("1", (one) => (one.candidate.present ? 1 : 0)),
      worstBand: of("1", (one) => worstOf(one) + 1),
    },
  };
}

const columnOf: Readonly<Record<Matters, string>> = {
  watts: "price",
  receive: "receivePenalty",
  price: "price",
  weight: "weight",
  wind: "windArea",
  bend: "bendRadius",
};

/** Of the run: what matters first, where it is known of any line. */
function runColumns({ money, matters }: Findings, ranked: readonly Ranked[]): Record<string, Column> {
  const of = (unit: string, value: (run: Ranked["run"]) => number | null): Column =>
    column(
      unit,
      ranked.map((one) => value(one.run)),
    );
  const all: Record<string, Column> = {
    powerMargin: of("1", (run) => run.powerMargin),
    weight: of("kg", (run) => run.weight),
    voltageUsed: of("%", (run) => (run.voltageShare === null ? null : 100 * run.voltageShare)),
    price: of(money ?? "1", (run) => run.price),
    pricePerDecibel: of(money === null ? "1" : `${money}/dB`, (run) => run.perDecibel),
    receivePenalty: of("dB", (run) => run.receive),
    bendRadius: of("m", (run) => run.bendRadius),
    windArea: of("m²", (run) => run.windArea),
  };
  const name = columnOf[matters];
  const first = all[name]!;
  return first.values.some((value) => value !== null) ? { [name]: first, ...all } : all;
}

/** Every line in every band. */
function bandsTable({ ranked, study }: Findings): Table {
  const all = ranked.flatMap((one, line) => one.rows.map((row, band) => ({ one, row, line, band })));
  const of = (unit: string, value: (entry: (typeof all)[number]) => number | null): Column =>
    column(unit, all.map(value));
  return {
    name: "lineBands",
    axis: "row",
    labels: all.map(
      ({ one, row }) => `${one.candidate.entry.designation}, ${bandName(row.band.name, row.band.frequency.value)}`,
    ),
    columns: {
      row: counted(all.length),
      wattsIntoAntenna: of("W", ({ row }) => row.watts),
      lossAtLoad: of("dB", ({ row }) => row.loss),
      addedByMismatch: of("dB", ({ row }) => row.added),
      swrSeen: of("1", ({ row }) => row.swrSeen),
      highestVoltage: of("V", ({ row }) => row.highestVoltage),
      receivePenalty: of("dB", ({ row }) => row.receive),
      swrOnLine: of("1", ({ row }) => row.swrOnLine),
      matchedLoss: of("dB", ({ row }) => row.matched),
      powerFromTransmitter: of("W", ({ row }) => row.delivered),
      frequency: of("MHz", ({ band }) => study.bands[band]!.frequency.value / 1e6),
      line: of("1", ({ line }) => line + 1),
    },
  };
}
