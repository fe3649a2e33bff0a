/** An answer to `limits`, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Table } from "@feedpath/engine";
import { exampleAnswer } from "./exampleAnswer";

/** Two lines of `lengths` metres, one after the other; the standing wave repeats every 10 m. */
function along(lengths: readonly [number, number], voltageLimit: number): Table {
  const rows: (readonly (number | null)[])[] = [];
  let start = 0;
  lengths.forEach((length, line) => {
    for (let i = 0; i <= 24; i++) {
      const x = start + (length * i) / 24;
      const wave = Math.cos((2 * Math.PI * x) / 10);
      rows.push([x, 300 + 120 * wave, voltageLimit * (1 + line), 4 - 1.6 * wave, 58 - 9 * wave - line, 80]);
    }
    start += length;
    if (line === 0) rows.push([start, null, null, null, null, null]);
  });
  const units = ["m", "V", "V", "A", "°C", "°C"];
  const names = ["distance", "peakVoltage", "voltageLimit", "current", "conductorTemperature", "temperatureLimit"];
  return {
    name: "alongLines",
    axis: "distance",
    columns: Object.fromEntries(
      names.map((name, i) => [name, { unit: units[i]!, values: rows.map((row) => row[i] ?? null) }]),
    ),
  };
}

function inTime(): Table {
  const times = Array.from({ length: 61 }, (_, i) => i);
  const of = (unit: string, value: (t: number) => number) => ({ unit, values: times.map(value) });
  const rise = (t: number): number => 1 - Math.exp(-t / 12);
  return {
    name: "temperatureInTime",
    axis: "time",
    columns: {
      time: of("min", (t) => t),
      conductorTemperature: of("°C", (t) => 40 + 27 * rise(t) + 4 * Math.sin(t / 2) * rise(t)),
      jacketTemperature: of("°C", (t) => 40 + 14 * rise(t)),
      temperatureLimit: of("°C", () => 80),
    },
  };
}

/** `voltageLimit` in V peak: near 420 it is in the picture, far above it stands in words. */
export function exampleStress(voltageLimit = 600): Answer {
  const base = exampleAnswer();
  return {
    ...base,
    question: "limits",
    asked: "Will anything arc or overheat?",
    values: { ...base.values, timeConstant: { value: 720, unit: "s", says: "line 2" } },
    tables: [along([12, 16], voltageLimit), inTime()],
  };
}
