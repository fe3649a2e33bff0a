/** Answers to `bounce`, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Grid, Table } from "@feedpath/engine";
import { exampleAnswer } from "./exampleAnswer";

const distances = Array.from({ length: 41 }, (_, i) => (30 * i) / 40);
const times = Array.from({ length: 81 }, (_, i) => 15 * i);
const oneWay = 150;
const [atLoad, atSource] = [0.5, -0.6];

/** Waves of a line without loss: every second one goes back. */
function wavesAt(time: number, distance: number, signal: (t: number) => number): readonly [number, number] {
  const there = (distance / 30) * oneWay;
  let [forward, reflected] = [0, 0];
  for (let k = 0; k < 9; k++) {
    const size = (atLoad * atSource) ** k;
    forward += size * signal(time - there - 2 * k * oneWay);
    reflected += size * atLoad * signal(time + there - 2 * (k + 1) * oneWay);
  }
  return [forward, reflected];
}

const swing = (t: number): number => (t < 0 ? 0 : 100 * Math.sin((2 * Math.PI * t) / 120));
const step = (t: number): number => (t < 0 ? 0 : 0.5);

function grid(name: string, unit: string, signal: (t: number) => number, of: (f: number, r: number) => number): Grid {
  return {
    name,
    rows: { name: "time", unit: "ns", values: times },
    columns: { name: "distance", unit: "m", values: distances },
    value: name,
    unit,
    values: times.map((t) => distances.map((d) => of(...wavesAt(t, d, signal)))),
  };
}

const column = (unit: string, values: readonly number[]) => ({ unit, values });
const eight = Array.from({ length: 8 }, (_, k) => k);
const sizeOf = (k: number): number => atLoad ** Math.ceil(k / 2) * Math.abs(atSource) ** Math.floor(k / 2);

const echoTable: Table = {
  name: "echoes",
  axis: "echo",
  columns: {
    echo: column("1", eight),
    setsOut: column(
      "ns",
      eight.map((k) => k * oneWay),
    ),
    setsOutAt: column(
      "m",
      eight.map((k) => (k % 2) * 30),
    ),
    wave: column(
      "V",
      eight.map((k) => 71 * sizeOf(k)),
    ),
    share: column(
      "%",
      eight.map((k) => 100 * sizeOf(k)),
    ),
    voltageAfter: column(
      "V",
      eight.map((k) => 90 - 3 * k),
    ),
  },
};

const standing = (d: number, size: number): number => 80 + size * Math.cos((4 * Math.PI * d) / 24);
const standingTable: Table = {
  name: "standingWave",
  axis: "distance",
  columns: {
    distance: column("m", distances),
    voltage: column(
      "V",
      distances.map((d) => standing(d, 38)),
    ),
    current: column(
      "A",
      distances.map((d) => standing(d, -38) / 50),
    ),
    forwardVoltage: column(
      "V",
      distances.map(() => 80),
    ),
    reflectedVoltage: column(
      "V",
      distances.map(() => 38),
    ),
    power: column(
      "W",
      distances.map((d) => 100 - 0.2 * d),
    ),
  },
};

const energyTable: Table = {
  name: "energy",
  axis: "time",
  columns: {
    time: column("ns", times),
    deliveredBySource: column(
      "µJ",
      times.map((t) => 0.11 * t),
    ),
    storedInLine: column(
      "µJ",
      times.map((t) => Math.min(22, 0.1 * t)),
    ),
    heatInLine: column(
      "µJ",
      times.map((t) => 0.006 * t),
    ),
    intoLoad: column(
      "µJ",
      times.map((t) => Math.max(0, 0.104 * t - 22)),
    ),
    storedInLoad: column(
      "µJ",
      times.map(() => 0),
    ),
  },
};

const film = (signal: (t: number) => number): Grid[] => [
  grid("waveForward", "V", signal, (f) => f),
  grid("waveReflected", "V", signal, (_, r) => r),
  grid("voltageOnLine", "V", signal, (f, r) => f + r),
  grid("currentOnLine", "A", signal, (f, r) => (f - r) / 50),
];

/** A carrier on 30 m of line. */
export function exampleBounce(): Answer {
  const growth: Grid = {
    name: "standingWaveByEchoes",
    rows: { name: "echoes", unit: "1", values: [0, 1, 2, 7] },
    columns: { name: "distance", unit: "m", values: distances },
    value: "voltage",
    unit: "V",
    values: [0, 52, 25, 38].map((size, i) => distances.map((d) => standing(d, size) + 9 * i)),
  };
  return {
    ...exampleAnswer(),
    question: "bounce",
    asked: "What happens on the line, step by step?",
    headline: "Settled after 7 echoes: 94 of 100 W reach the antenna.",
    parameters: { signal: "carrier", load: null, shows: "waves", cut: null },
    values: {
      oneWayTime: { value: oneWay, unit: "ns" },
      echoesToSettle: { value: 7, unit: "1" },
      reflectionAtLoad: { value: atLoad, unit: "1" },
      reflectionAtSource: { value: Math.abs(atSource), unit: "1" },
    },
    tables: [echoTable, standingTable, energyTable],
    grids: [...film(swing), growth],
    lobes: [],
    drawing: null,
  };
}

/** A step into the same line, matched at its start. */
export function exampleBounceStep(): Answer {
  const seen = times.map((t) => (t < 300 ? 50 : 150));
  const start: Table = {
    name: "atTheStart",
    axis: "time",
    columns: {
      time: column("ns", times),
      voltage: column(
        "V",
        seen.map((ohm) => (ohm === 50 ? 0.5 : 0.75)),
      ),
      current: column(
        "A",
        seen.map((ohm) => (ohm === 50 ? 0.01 : 0.005)),
      ),
      voltageOverCurrent: column("ohm", seen),
    },
  };
  return {
    ...exampleBounce(),
    parameters: { signal: "step", load: 150, shows: "waves", cut: null },
    values: {
      oneWayTime: { value: oneWay, unit: "ns" },
      surgeImpedance: { value: 50, unit: "ohm" },
      firstEchoHome: { value: 2 * oneWay, unit: "ns" },
    },
    tables: [echoTable, start, energyTable],
    grids: film(step),
  };
}
