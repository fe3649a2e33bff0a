/** Voltage, current and temperature along the path, and temperature in time. */
import type { Column, Table } from "../../answer/answer";
import type { WorkedPoint } from "../../chain/workedPoint";
import { decidingLimit, lineVoltageLimits } from "../../stress/lineVoltage";
import { type StandingWave, squaresAt } from "../../stress/standingWave";
import { columnOver } from "../common/columns";
import type { Conditions } from "./conditions";
import { courseOf } from "./course";
import { hottest, type LineHeat, waveOf } from "./lineHeat";
import type { LineStudy, Study } from "./study";

interface Row {
  /** m of line from the transmitter. */
  readonly distance: number;
  readonly peakVoltage: number | null;
  readonly current: number | null;
  readonly temperature: number | null;
  readonly voltageLimit: number | null;
  readonly temperatureLimit: number | null;
}

/** Places on a half wave, and half waves up to which each is drawn; beyond, the largest of each half wave. */
const perHalfWave = 16;
const mostHalfWaves = 10;
const leastPlaces = 24;

/** Lines of the way to what fails first, one after the other; a gap where one ends. */
export function alongTable({ worked: { point }, lines, conditions }: Study, ways: readonly LineStudy[] = lines): Table {
  let start = 0;
  const rows = ways.flatMap((line, i) => {
    const own = rowsOf(point, line, start, conditions);
    start += line.part.length;
    const gap: Row[] = i < ways.length - 1 ? [emptyAt(start)] : [];
    return [...own, ...gap];
  });
  const column = (unit: string, of: (row: Row) => number | null): Column => ({ unit, values: rows.map(of) });
  return {
    name: "alongLines",
    axis: "distance",
    columns: {
      distance: column("m", (row) => row.distance),
      peakVoltage: column("V", (row) => row.peakVoltage),
      voltageLimit: column("V", (row) => row.voltageLimit),
      current: column("A", (row) => row.current),
      conductorTemperature: column("°C", (row) => row.temperature),
      temperatureLimit: column("°C", (row) => row.temperatureLimit),
    },
  };
}

const emptyAt = (distance: number): Row => ({
  distance,
  peakVoltage: null,
  current: null,
  temperature: null,
  voltageLimit: null,
  temperatureLimit: null,
});

function rowsOf(point: WorkedPoint, { part, heat }: LineStudy, start: number, conditions: Conditions): Row[] {
  const wave = waveOf(point, part);
  if (wave === null || part.edge.part?.kind !== "line") return [];
  const halfWaves = (wave.phase * wave.length) / Math.PI;
  const whole = halfWaves <= mostHalfWaves;
  const count = whole ? Math.max(leastPlaces, Math.ceil(perHalfWave * halfWaves)) : leastPlaces;
  const limit = decidingLimit(lineVoltageLimits(part.edge.part.line, conditions.air));
  return Array.from({ length: count + 1 }, (_, i) => {
    const fromEnd = wave.length * (1 - i / count);
    const found = squaresForRow(wave, fromEnd, whole);
    return {
      distance: start + wave.length - fromEnd,
      peakVoltage: Math.sqrt(2 * found.voltage),
      current: Math.sqrt(found.current),
      temperature: heat && temperatureAt(heat, wave, fromEnd, whole, conditions),
      voltageLimit: limit?.peak ?? null,
      temperatureLimit: heat && heat.thermal.greatestTemperature - 273.15,
    };
  });
}

/** As it is, or the largest within a half wave: both waves in phase. */
function squaresForRow(wave: StandingWave, fromEnd: number, whole: boolean) {
  if (whole) return squaresAt(wave, fromEnd);
  const mean = squaresAt(wave, fromEnd, 0);
  const swing = 2 * Math.hypot(wave.cross.re, wave.cross.im);
  return { voltage: mean.voltage + swing, current: mean.current + swing / wave.impedance ** 2 };
}

function temperatureAt(
  heat: LineHeat,
  wave: StandingWave,
  fromEnd: number,
  whole: boolean,
  conditions: Conditions,
): number {
  const mean = squaresAt(wave, fromEnd, whole ? heat.swing : 0);
  const swing = whole ? 0 : 2 * heat.swing * Math.hypot(wave.cross.re, wave.cross.im);
  const drive = {
    current: conditions.duty * (mean.current + swing / wave.impedance ** 2),
    voltage: conditions.duty * Math.max(0, mean.voltage - swing),
  };
  return hottest(heat.thermal, drive, heat.leaving, heat.ambient, conditions.sending).inner - 273.15;
}

export function timeTable(study: Study, heat: LineHeat): Table {
  const course = courseOf(study, heat);
  const limit = heat.thermal.greatestTemperature - 273.15;
  return {
    name: "temperatureInTime",
    axis: "time",
    columns: {
      time: columnOver(course.times, "min", (t) => t / 60),
      conductorTemperature: columnOver(course.temperatures, "°C", (t) => t.inner - 273.15),
      jacketTemperature: columnOver(course.temperatures, "°C", (t) => t.surface - 273.15),
      temperatureLimit: columnOver(course.times, "°C", () => limit),
    },
  };
}
