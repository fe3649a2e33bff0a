/** What happens on the line as tables and grids, bounded in size. */
import type { Column, Grid, Table } from "../../answer/answer";
import { magnitude } from "../../numerics/complex";
import { powerOf, sumOfWaves } from "../../pulses/echoes";
import type { BounceStudy, ShownMoment, SourceCompared } from "./study";

/** Four figures: as fine as anything drawn, and a third of the bytes. */
const short = (x: number): number => (x === 0 ? 0 : Number(x.toPrecision(4)));
const column = (unit: string, values: readonly (number | null)[]): Column => ({ unit, values });
const nanoseconds = (s: number): number => short(1e9 * s);

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

const timesOf = ({ moments, stepped }: BounceStudy): number[] =>
  moments.map((m) => nanoseconds(m.step * stepped.timeStep));
const placesOf = ({ plan, looked }: BounceStudy): number[] =>
  plan.places.map((p) => short((p / plan.sections) * looked.length));

/** Rows told: up to where everything is settled and two more, but not more than forty. */
const mostRows = 40;

/** Echo 0 is the first wave. A carrier's echoes are rms phasors; those of a step or a pulse are read from the film. */
function echoTable(study: BounceStudy): Table {
  const { asked, lattice, delay, looked } = study;
  const rows = Math.min(mostRows, (study.echoes ?? mostRows) + 3);
  const numbers = Array.from({ length: rows }, (_, k) => k);
  const atLoad = (k: number): boolean => k % 2 === 1;
  const shared = {
    echo: column("1", numbers),
    setsOut: column(
      "ns",
      numbers.map((k) => nanoseconds(k * delay)),
    ),
    setsOutAt: column(
      "m",
      numbers.map((k) => (atLoad(k) ? looked.length : 0)),
    ),
  };
  const size = (k: number) => magnitude(lattice.waves[k]!) / magnitude(lattice.waves[0]!);
  if (asked.signal !== "carrier")
    return { name: "echoes", axis: "echo", columns: { ...shared, ...filmedEchoes(study, rows) } };
  const after = numbers.map((k) => sumOfWaves(lattice, k, atLoad(k) ? looked.length : 0));
  const arrived = numbers.map((k) => sumOfWaves(lattice, atLoad(k) ? k : k + 1, looked.length));
  return {
    name: "echoes",
    axis: "echo",
    columns: {
      ...shared,
      wave: column(
        "V",
        numbers.map((k) => short(magnitude(lattice.waves[k]!))),
      ),
      share: column(
        "%",
        numbers.map((k) => short(100 * size(k))),
      ),
      voltageAfter: column(
        "V",
        after.map((s) => short(magnitude(s.voltage))),
      ),
      powerIntoLoadAfter: column(
        "W",
        arrived.map((s) => short(powerOf(s.voltage, s.current))),
      ),
    },
  };
}

/** Height of the wave that sets out, less what set out there two ways before; the end's voltage just before the next change. */
function filmedEchoes(study: BounceStudy, rows: number): Record<string, Column> {
  const { film, stepped, plan, asked } = study;
  const { sections, surgeImpedance: z } = stepped;
  const departing = (k: number, n: number): number => {
    const [v, i] =
      k % 2 === 1 ? [film.loadVoltage[n]!, -film.loadCurrent[n]!] : [film.inputVoltage[n]!, film.inputCurrent[n]!];
    return (v + z * i) / 2;
  };
  const heights: (number | null)[] = [];
  const after: (number | null)[] = [];
  for (let k = 0; k < rows; k++) {
    const [from, to] = [k * sections, (k + 2) * sections - 1];
    if (to >= plan.steps) {
      heights.push(null);
      after.push(null);
      continue;
    }
    const before = from > sections ? departing(k, from - 1) : 0;
    heights.push(
      short(asked.signal === "step" ? departing(k, to) - before : greatest((n) => departing(k, n), from, to)),
    );
    after.push(short(k % 2 === 1 ? film.loadVoltage[to]! : film.inputVoltage[to]!));
  }
  const first = heights[0] ?? 0;
  const share = heights.map((h) => (h === null || first === 0 ? null : short((100 * h) / first)));
  return { wave: column("V", heights), share: column("%", share), voltageAfter: column("V", after) };
}

/** The greatest excursion to either side, with its sign. */
export function greatest(of: (n: number) => number, from: number, to: number): number {
  let best = 0;
  for (let n = from; n <= to; n++) if (Math.abs(of(n)) > Math.abs(best)) best = of(n);
  return best;
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
      voltage: column(
        "V",
        all.map((s) => short(magnitude(s.voltage))),
      ),
      current: column(
        "A",
        all.map((s) => short(magnitude(s.current))),
      ),
      forwardVoltage: column(
        "V",
        all.map((s) => short(magnitude(s.there))),
      ),
      reflectedVoltage: column(
        "V",
        all.map((s) => short(magnitude(s.back))),
      ),
      power: column(
        "W",
        all.map((s) => short(powerOf(s.voltage, s.current))),
      ),
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
      source: column(
        "1",
        sources.map((_, i) => i + 1),
      ),
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
      time: column(
        "ns",
        moments.map((m) => nanoseconds(m.step * stepped.timeStep)),
      ),
      voltage: column(
        "V",
        seen.map(([v]) => short(v)),
      ),
      current: column(
        "A",
        seen.map(([, i]) => short(i)),
      ),
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
  const of = (value: (m: ShownMoment) => number) =>
    column(
      "µJ",
      moments.map((m) => short(1e6 * value(m))),
    );
  return {
    name: "energy",
    axis: "time",
    columns: {
      time: column(
        "ns",
        moments.map((m) => nanoseconds(m.step * stepped.timeStep)),
      ),
      deliveredBySource: of((m) => m.energy.delivered),
      storedInLine: of((m) => m.energy.storedInLine),
      heatInLine: of((m) => m.energy.heatInLine),
      intoLoad: of((m) => m.energy.intoLoad),
      storedInLoad: of((m) => m.energy.storedInLoad),
    },
  };
}
