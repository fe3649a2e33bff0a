import type { Path, Station } from "@feedpath/engine";
import type { LineConditions } from "@feedpath/report";
import { type DimensionName, parseQuantity } from "@feedpath/station-file";
import { wrongCommand } from "../tell/commandProblem";

/** Hz: the usual bands from 1.8 MHz to 70 cm, and where lines are looked at when nothing is said. */
const usualFrequencies = [1.9e6, 3.65e6, 7.1e6, 14.2e6, 28.5e6, 50.2e6, 145e6, 432e6];
const usualFrequency = 14.2e6;

function amount(option: string, text: string, dimension: DimensionName, least: number, most: number): number {
  const read = parseQuantity(text, dimension, { least, most });
  if (read.ok && read.value.low === read.value.high) return read.value.value;
  const { message, mend, expected } = read.ok
    ? { message: "Expected one value, not a range.", mend: null, expected: "one value" }
    : read.fault;
  throw wrongCommand({
    place: option,
    found: text,
    expected,
    message: `${option} "${text}": ${message}`,
    nearest: mend,
  });
}

/** m of the longest line of a path, branches included; null where it has none. */
function longestLine({ parts, end }: Path): number | null {
  const branches =
    end.kind === "switch" ? Object.values(end.positions) : "branches" in end ? Object.values(end.branches) : [];
  const lengths = [
    ...parts.flatMap((part) => (part.kind === "line" ? [part.length.value] : [])),
    ...branches.flatMap((branch) => longestLine(branch) ?? []),
  ];
  return lengths.length > 0 ? Math.max(...lengths) : null;
}

/** What is looked at: the options, else the station's frequency and longest line, else the usual frequencies. */
export function conditionsOf(
  at: readonly string[],
  length: string | undefined,
  station: Station | null,
): LineConditions {
  const asked = at.map((text) => amount("--at", text, "frequency", 1e3, 1e11));
  const [first = station?.bands[0]?.frequency.value ?? usualFrequency] = asked;
  return {
    at: first,
    frequencies: asked.length > 1 ? asked : usualFrequencies,
    length:
      length === undefined ? station && longestLine(station.path) : amount("--length", length, "length", 0.01, 100_000),
  };
}
