import type { Station } from "@feedpath/engine";
import { type LineConditions, stationRun, usualFrequencies, usualFrequency } from "@feedpath/report";
import { type DimensionName, parseQuantity } from "@feedpath/station-file";
import { wrongCommand } from "../tell/commandProblem";

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

/** What is looked at: the options, else the station's frequency and longest line, else the usual frequencies. */
export function conditionsOf(
  at: readonly string[],
  length: string | undefined,
  station: Station | null,
): LineConditions {
  const run = station && stationRun(station);
  const asked = at.map((text) => amount("--at", text, "frequency", 1e3, 1e11));
  const [first = run?.at ?? usualFrequency] = asked;
  return {
    at: first,
    frequencies: asked.length > 1 ? asked : usualFrequencies,
    length:
      length === undefined ? (run?.line?.length.value ?? null) : amount("--length", length, "length", 0.01, 100_000),
  };
}
