/** What happens on the line as tables and grids, bounded in size. */
import type { Grid, Table } from "../../answer/answer";
import { magnitude } from "../../numerics/complex";
import { powerOf, sumOfWaves } from "../../pulses/echoes";
import { column, columnOver } from "../common/columns";
import { nanoseconds, placesOf, short, timesOf } from "./columns";
import { echoTable, mostRows } from "./echoTable";
import type { SourceCompared } from "./sources";
import type { BounceStudy, ShownMoment } from "./study";

export function bounceTables(study: BounceStudy, sources: readonly SourceCompared[]): Table[] {
  const carrier = study.asked.signal === "carrier";
  return [
    echoTable(study),
    ...(carrier ? [envelopeTable(study), sourceTable(sources)] : [inputTable(study)]),
    energyTable(study),
  ];
}

export function bounceGrids(study: BounceStudy): Grid[] {
  const grid = (name: string, value: string, unit: string, of: (m: ShownMoment) => Float64Array): Grid => ({
    name,
    rows: { name: "time", unit: "ns", values: timesOf(study) },
    columns: { name: "distance", unit: "m", values: placesOf(study) },
    value,
    unit,
    values: study.moments.map((m) => Array.from(of(m), short)),
  });
  return [
    grid("waveForward", "forwardVoltage", "V", (m) => m.forward),
    grid("waveReflected", "reflectedVoltage", "V", (m) => m.reflected),
    grid("voltageOnLine", "voltage", "V", (m) => m.voltage),
    grid("currentOnLine", "current", "A", (m) => m.current),
    ...(study.asked.signal === "carrier" ? [growthGrid(study)] : []),
  ];
}

/** Voltage and current along the line once all is settled, rms. */
function envelopeTable(study: BounceStudy): Table {
  const { lattice } = study;
  const all = placesOf(study).map((x) => sumOfWaves(lattice, null, x));
  return {
    name: "standingWave",
    axis: "distance",
    columns: {
      distance: column("m", placesOf(study)),
      voltage: columnOver(all, "V", (s) => short(magnitude(s.voltage))),
      current: columnOver(all, "A", (s) => short(magnitude(s.current))),
      forwardVoltage: columnOver(all, "V", (s) => short(magnitude(s.there))),
      reflectedVoltage: columnOver(all, "V", (s) => short(magnitude(s.back))),
      power: columnOver(all, "W", (s) => short(powerOf(s.voltage, s.current))),
    },
  };
}

/** The standing wave as it stands after 0, 1, 2, ... echoes have gone all along the line. */
function growthGrid(study: BounceStudy): Grid {
  const most = Math.max(2, study.echoes ?? mostRows);
  const counts = [0, 1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192].filter((n) => n < most);
  return {
    name: "standingWaveByEchoes",
    rows: { name: "echoes", unit: "1", values: [...counts, most] },
    columns: { name: "distance", unit: "m", values: placesOf(study) },
    value: "voltage",
    unit: "V",
    values: [...counts, most].map((n) =>
      placesOf(study).map((x) => short(magnitude(sumOfWaves(study.lattice, n, x).voltage))),
    ),
  };
}

function sourceTable(sources: readonly SourceCompared[]): Table {
  const of = (unit: string, value: (s: SourceCompared) => number | null) =>
    column(
      unit,
      sources.map((s) => (value(s) === null || !Number.isFinite(value(s)) ? null : short(value(s)!))),
    );
  return {
    name: "sources",
    axis: "source",
    labels: sources.map((s) => s.name),
    columns: {
      source: columnOver(sources, "1", (_, i) => i + 1),
      sourceResistance: of("ohm", (s) => s.resistance),
      firstWave: of("W", (s) => s.firstWave),
      echoesToSettle: of("1", (s) => s.echoes),
      powerIntoLine: of("W", (s) => s.powerIn),
      powerOutOfLine: of("W", (s) => s.powerOut),
      swrAtLoad: of("1", (s) => s.swr),
    },
  };
}

/** Volts over amperes at the line's start, moment after moment: what a tester fed with this step would show. */
function inputTable({ film, moments, stepped }: BounceStudy): Table {
  const seen = moments.map(({ step }) => [film.inputVoltage[step]!, film.inputCurrent[step]!] as const);
  return {
    name: "atTheStart",
    axis: "time",
    columns: {
      time: columnOver(moments, "ns", (m) => nanoseconds(m.step * stepped.timeStep)),
      voltage: columnOver(seen, "V", ([v]) => short(v)),
      current: columnOver(seen, "A", ([, i]) => short(i)),
      voltageOverCurrent: column(
        "ohm",
        seen.map(([v, i]) => (Math.abs(i) > leastCurrent(film.inputCurrent) ? short(v / i) : null)),
      ),
    },
  };
}

/** Below a ten-thousandth of the largest current a quotient says nothing. */
const leastCurrent = (current: Float64Array): number => 1e-4 * current.reduce((a, i) => Math.max(a, Math.abs(i)), 0);

function energyTable({ moments, stepped }: BounceStudy): Table {
  const of = (value: (m: ShownMoment) => number) => columnOver(moments, "µJ", (m) => short(1e6 * value(m)));
  return {
    name: "energy",
    axis: "time",
    columns: {
      time: columnOver(moments, "ns", (m) => nanoseconds(m.step * stepped.timeStep)),
      deliveredBySource: of((m) => m.energy.delivered),
      storedInLine: of((m) => m.energy.storedInLine),
      heatInLine: of((m) => m.energy.heatInLine),
      intoLoad: of((m) => m.energy.intoLoad),
      storedInLoad: of((m) => m.energy.storedInLoad),
    },
  };
}
