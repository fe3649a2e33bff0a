/** Every band of the station, and the kinds of place, each in a table. */
import type { Column, Table } from "../../answer/answer";
import { requestAt } from "../../chain/solveRequest";
import { workPoint } from "../../chain/workPoint";
import { noiseClassNames } from "../../noise/externalNoise";
import { megahertz } from "../../quantity/format";
import type { Band } from "../../station/station";
import type { Numbers } from "../common/bounds";
import type { Progress } from "../common/question";
import { lineNumbers, stationNumbers } from "../common/stationNumbers";
import type { Worked } from "../common/worked";
import type { Listening } from "./parameters";
import { canHear, listenUnits, readable, receptionOf, systemOf } from "./reception";

const shown = [
  "externalNoise",
  "antennaLoss",
  "pathLoss",
  "snrLossByLine",
  "noiseAtReceiver",
  "noiseOnMeter",
  "noiseRise",
  "wonByPreamplifierInShack",
  "wonByPreamplifierAtAntenna",
] as const;

const shownValue = (row: Numbers | null, name: string): number | null => {
  const value = row?.[name] ?? null;
  return value === null ? null : readable(value);
};

const nameOf = (band: Band): string => (band.name === "" ? megahertz(band.frequency.value) : band.name);

/** One row a band; a band that cannot be worked out has nulls and is named in `skipped`. */
export function* bandsTable(
  worked: Worked,
  listening: Listening,
): Generator<Progress, { readonly table: Table; readonly rows: readonly (Numbers | null)[] }> {
  const { bands } = worked.station;
  const rows: (Numbers | null)[] = [];
  const others = bands.filter((band) => band !== worked.band);
  const ahead = others.map((band) => requestAt(worked.station, band.frequency.value));
  for (const [i, band] of bands.entries()) {
    yield { done: i, of: bands.length, what: "bands", ahead };
    rows.push(band === worked.band ? worked.numbers : receptionIn(worked, listening, band));
  }
  const column = (name: string): Column => ({
    unit: listenUnits[name] ?? "dB",
    values: rows.map((row) => shownValue(row, name)),
  });
  const frequency: Column = { unit: "MHz", values: bands.map((band) => band.frequency.value / 1e6) };
  const columns = Object.fromEntries(shown.map((name) => [name, column(name)]));
  const table = { name: "byBand", axis: "frequency", labels: bands.map(nameOf), columns: { frequency, ...columns } };
  return { table, rows };
}

function receptionIn({ station, solver }: Worked, listening: Listening, band: Band): Numbers | null {
  const frequency = band.frequency.value;
  if (!canHear(frequency)) return null;
  const point = workPoint(station, band, frequency, solver, { tuner: "matched" });
  if ("refused" in point) return null;
  const radiated = stationNumbers(point).numbers.radiatedPower!;
  return { ...lineNumbers(point), ...receptionOf(listening, frequency, systemOf(listening, point, radiated)) };
}

/** What the station would hear in each kind of place. */
export function placesTable(worked: Worked, listening: Listening): Table {
  const rows = noiseClassNames.map((place) =>
    receptionOf(
      listening,
      worked.frequency,
      systemOf(listening, worked.point, worked.numbers.radiatedPower!, { place }),
    ),
  );
  const column = (name: string): Column => ({
    unit: listenUnits[name]!,
    values: rows.map((row) => shownValue(row, name)),
  });
  const names = ["externalNoise", "noiseAtReceiver", "noiseOnMeter", "noiseRise", "snrLossByLine"];
  return {
    name: "byKindOfPlace",
    axis: "kind",
    labels: noiseClassNames,
    columns: {
      kind: { unit: "1", values: noiseClassNames.map((_, i) => i + 1) },
      ...Object.fromEntries(names.map((name) => [name, column(name)])),
    },
  };
}
