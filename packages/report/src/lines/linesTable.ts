/** A comparison of lines as tables of texts. */
import { fixedNumber, plainNumber, type Quantity, significantNumber } from "@feedpath/engine";
import type { DocumentTable } from "../document/document";
import { frequencyText } from "../words/numbers";
import { arriving, type LineComparison, type LineRow } from "./compareLines";
import { type LineUnit, type LineUnits, lineUnits } from "./units";

/** A column: its heading, and what stands in it; "" where it is not known. */
interface Column {
  readonly name: string;
  readonly unit: string;
  readonly cell: (row: LineRow) => string;
}

const inUnit = (quantity: Quantity | null | undefined, per: number, figures = 2): string =>
  quantity ? significantNumber(quantity.value / per, figures) : "";

const lossColumn = (frequency: number, index: number, unit: LineUnit): Column => ({
  name: `at ${frequencyText(frequency)}`,
  unit: `dB/${unit.run}`,
  cell: ({ losses }) => {
    const loss = losses[index];
    return loss ? lossText(loss.value * unit.runLength) : "";
  },
});

/** Decibels of a run: two figures, so that lines can be told apart. */
export const lossText = (decibels: number): string =>
  decibels < 10 ? significantNumber(decibels, 2) : fixedNumber(decibels, 0);

/** "30 m", "100 ft". */
export const lengthText = (metres: number, units: LineUnits): string => {
  const { length, perLength } = lineUnits[units];
  return `${plainNumber(metres / perLength, 1)} ${length}`;
};

function runColumns({ length }: LineComparison, units: LineUnits): Column[] {
  if (length === null) return [];
  const run = lengthText(length, units);
  return [
    {
      name: `of 100 W behind ${run}`,
      unit: "W",
      cell: ({ losses: [loss] }) => (loss ? fixedNumber(arriving(loss.value, length), 1) : ""),
    },
    {
      name: `loss of ${run}`,
      unit: "dB",
      cell: ({ losses: [loss] }) => (loss ? significantNumber(loss.value * length, 2) : ""),
    },
  ];
}

const handling = (unit: LineUnit): Column[] => [
  { name: "voltage", unit: "V rms", cell: ({ ratings }) => inUnit(ratings.voltage, 1) },
  {
    name: "thickness",
    unit: unit.thickness,
    cell: ({ jacket }) => (jacket === null ? "" : significantNumber(jacket / unit.perThickness, 3)),
  },
  { name: "weight", unit: unit.weight, cell: ({ ratings }) => inUnit(ratings.weight, unit.perWeight) },
  { name: "least bend", unit: unit.thickness, cell: ({ ratings }) => inUnit(ratings.bendRadius, unit.perThickness) },
];

const priceColumn: Column = {
  name: "price",
  unit: "per m",
  cell: ({ price }) => (price ? `${plainNumber(price.perMetre, 2)} ${price.money}` : ""),
};

const constants: readonly Column[] = [
  { name: "impedance", unit: "Ω", cell: ({ impedance }) => inUnit(impedance, 1, 3) },
  { name: "velocity factor", unit: "", cell: ({ velocityFactor }) => inUnit(velocityFactor, 1, 3) },
];

function tableOf(rows: readonly LineRow[], caption: string, columns: readonly Column[]): DocumentTable {
  return {
    caption,
    columns: [
      { name: "line", unit: "", numeric: false },
      ...columns.map(({ name, unit }) => ({ name, unit, numeric: true })),
    ],
    rows: rows.map((row) => [row.designation, ...columns.map(({ cell }) => cell(row))]),
  };
}

/** Constants, loss at the first frequency, and how the lines handle: one row a line. */
export function linesTable(comparison: LineComparison, units: LineUnits): DocumentTable {
  const { frequencies, rows } = comparison;
  const unit = lineUnits[units];
  return tableOf(rows, `Feed lines at ${frequencyText(frequencies[0] ?? 0)}`, [
    ...constants,
    { ...lossColumn(frequencies[0] ?? 0, 0, unit), name: "loss" },
    ...runColumns(comparison, units),
    ...handling(unit),
    ...(rows.some(({ price }) => price) ? [priceColumn] : []),
  ]);
}

/** Matched loss at every frequency: one row a line. */
export const lossTable = ({ frequencies, rows }: LineComparison, units: LineUnits): DocumentTable =>
  tableOf(
    rows,
    `Matched loss in dB per ${lineUnits[units].run}, new, 20 °C`,
    frequencies.map((frequency, index) => ({ ...lossColumn(frequency, index, lineUnits[units]), unit: "" })),
  );
