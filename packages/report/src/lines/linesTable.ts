/** A comparison of lines as tables of texts. */
import { fixedNumber, plainNumber, type Quantity, significantNumber } from "@feedpath/engine";
import type { DocumentTable } from "../document/document";
import { frequencyText } from "../words/numbers";
import { arriving, type LineComparison, type LineRow } from "./compareLines";
import { type LineUnit, type LineUnits, lineUnits } from "./units";

const notKnown = "–";

/** A column: its heading, and what stands in it; a dash where it is not known. */
interface Column {
  readonly name: string;
  readonly unit: string;
  readonly cell: (row: LineRow) => string;
}

const inUnit = (quantity: Quantity | null | undefined, per: number, figures = 2): string =>
  quantity ? significantNumber(quantity.value / per, figures) : notKnown;

const lossCell = (loss: Quantity | null | undefined, unit: LineUnit): string =>
  loss ? lossText(loss.value * unit.runLength) : notKnown;

/** Decibels of a run: two figures, so that lines can be told apart. */
const lossText = (decibels: number): string =>
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
      name: `of 100 W after ${run}`,
      unit: "W",
      cell: ({ loss }) => (loss ? fixedNumber(arriving(loss.value, length), 1) : notKnown),
    },
    {
      name: `loss of ${run}`,
      unit: "dB",
      cell: ({ loss }) => (loss ? significantNumber(loss.value * length, 2) : notKnown),
    },
  ];
}

const handling = (unit: LineUnit): Column[] => [
  { name: "voltage", unit: "V rms", cell: ({ ratings }) => inUnit(ratings.voltage, 1) },
  {
    name: "thickness",
    unit: unit.thickness,
    cell: ({ jacket }) => (jacket === null ? notKnown : significantNumber(jacket / unit.perThickness, 3)),
  },
  { name: "weight", unit: unit.weight, cell: ({ ratings }) => inUnit(ratings.weight, unit.perWeight) },
  { name: "least bend", unit: unit.thickness, cell: ({ ratings }) => inUnit(ratings.bendRadius, unit.perThickness) },
];

const priceColumn: Column = {
  name: "price",
  unit: "per m",
  cell: ({ price }) => (price ? `${plainNumber(price.perMetre, 2)} ${price.money}` : notKnown),
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

/** Impedance, velocity factor, and loss at the frequency looked at. */
const electrical = (comparison: LineComparison, units: LineUnits): Column[] => {
  const unit = lineUnits[units];
  return [
    ...constants,
    { name: "loss", unit: `dB/${unit.run}`, cell: ({ loss }) => lossCell(loss, unit) },
    ...runColumns(comparison, units),
  ];
};

/** What the lines stand, how they handle, and what they cost where that is known. */
const practical = ({ rows }: LineComparison, units: LineUnits): Column[] => [
  ...handling(lineUnits[units]),
  ...(rows.some(({ price }) => price) ? [priceColumn] : []),
];

const caption = ({ at }: LineComparison): string => `Feed lines at ${frequencyText(at)}`;

/** One row a line: all that is compared at the frequency looked at. */
export const linesTable = (comparison: LineComparison, units: LineUnits): DocumentTable =>
  tableOf(comparison.rows, caption(comparison), [...electrical(comparison, units), ...practical(comparison, units)]);

/** The same as two tables that are narrow enough for a terminal. */
export const linesTables = (comparison: LineComparison, units: LineUnits): readonly DocumentTable[] => [
  tableOf(comparison.rows, caption(comparison), electrical(comparison, units)),
  tableOf(comparison.rows, "What they stand, and how they handle", practical(comparison, units)),
];

/** The few columns of a list: impedance, velocity factor, loss, thickness. */
export function shortTable(comparison: LineComparison, units: LineUnits): DocumentTable {
  const columns = [...electrical({ ...comparison, length: null }, units), handling(lineUnits[units])[1]!];
  return tableOf(comparison.rows, caption(comparison), columns);
}

/** Matched loss at every frequency: one row a line. */
export const lossTable = ({ frequencies, rows }: LineComparison, units: LineUnits): DocumentTable =>
  tableOf(
    rows,
    `Matched loss in dB per ${lineUnits[units].run}, new, 20 °C`,
    frequencies.map((frequency, index) => ({
      name: frequencyText(frequency),
      unit: "",
      cell: ({ losses }) => lossCell(losses[index], lineUnits[units]),
    })),
  );
