/** The station with another line in the place of one, and the antenna kept as it was solved. */
import type { AntennaSolver } from "../../chain/antennaSolver";
import type { LineEntry } from "../../lines/lineModel";
import { between, exactly, type Quantity } from "../../quantity/quantity";
import { mapParts } from "../../station/mapParts";
import type { LinePart, Part, TransformerPart } from "../../station/path";
import type { Station } from "../../station/station";

/** Only the line changes: the antenna is that of the station as it is, once for each frequency. */
export function keptAntenna(station: Station, solver: AntennaSolver): AntennaSolver {
  const known = new Map<number, ReturnType<AntennaSolver["solve"]>>();
  return {
    ...solver,
    solve(_moved, frequency) {
      const solved = known.get(frequency) ?? solver.solve(station, frequency);
      known.set(frequency, solved);
      return solved;
    },
  };
}

export const withParts = (station: Station, name: string, parts: readonly Part[]): Station => ({
  ...station,
  path: mapParts(station.path, (part) => (part.name === name ? parts : [part])),
});

/** New and dry, as long and as warm as the one it takes the place of. */
export const newLine = (part: LinePart, line: LineEntry, length = part.length.value): LinePart => ({
  ...part,
  line,
  length: exactly(length, part.length.basis),
  condition: "dry",
  excessLoss: exactly(0, "assumed"),
});

/** dB in each of the two transformers that a pair between coaxial joints wants: common practice, no source. */
export const conversionLoss: Quantity = between(0.1, 0.5, "assumed");

const transformer = (name: string, from: number, to: number): TransformerPart => ({
  kind: "transformer",
  name,
  note: "",
  state: "in line",
  transmitterSide: exactly(from, "assumed"),
  antennaSide: exactly(to, "assumed"),
  loss: conversionLoss,
  windingInductance: null,
  leakageInductance: null,
  capacitor: null,
  sides: "isolated",
  heatLimit: null,
});

/** A line with a transformer from the rated load to its impedance before it, and one back behind it. Ohm. */
export const converted = (line: LinePart, rated: number, impedance: number): readonly Part[] => [
  transformer(`${line.name}, first transformer`, rated, impedance),
  line,
  transformer(`${line.name}, last transformer`, impedance, rated),
];
