/** An answer to `sky` made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Grid, Table } from "@feedpath/engine";
import { exampleAnswer } from "./exampleAnswer";

const degree = Math.PI / 180;
const count = (n: number, step = 1): number[] => Array.from({ length: n }, (_, i) => i * step);
const decibels = (power: number): number => Math.max(-60, 10 * Math.log10(Math.max(1e-9, power)));

/** Two lobes above each other on each side of the zenith, a figure of eight around. */
const gainOf = (elevation: number, azimuth: number, shape: number): number => {
  const around = 0.1 + 0.9 * Math.cos(azimuth * degree) ** 2;
  const up = Math.sin(shape * Math.sin(elevation * degree)) ** 2;
  return decibels(5 * up * (1 - (1 - around) * Math.cos(elevation * degree) ** 2));
};

function cut(name: string, axis: string, angles: number[], gain: (angle: number, shape: number) => number): Table {
  const of = (shape: number) => ({ unit: "dBi", values: angles.map((a) => gain(a, shape)) });
  return { name, axis, columns: { [axis]: { unit: "deg", values: angles }, gain: of(3.6), dipoleGain: of(2) } };
}

function list(name: string, axis: string, rows: readonly (readonly number[])[], hops: boolean): Table {
  const column = (i: number) => rows.map((row) => row[i]!);
  const km = (by: number) => ({ unit: "km", values: column(0).map((e) => Math.round(by * (90 - e))) });
  return {
    name,
    axis,
    columns: {
      [axis]: { unit: "1", values: rows.map((_, i) => i + 1) },
      elevation: { unit: "deg", values: column(0) },
      azimuth: { unit: "deg", values: column(1) },
      gain: { unit: "dBi", values: column(2) },
      ...(hops ? { firstHopByE: km(8), firstHopByF: km(21) } : {}),
    },
  };
}

function grid(): Grid {
  const [rows, columns] = [count(19, 5), count(72, 5)];
  const axis = (name: string, values: number[]) => ({ name, unit: "deg", values });
  const values = rows.map((e) => columns.map((a) => gainOf(e, a, 3.6)));
  return {
    name: "sky",
    rows: axis("elevation", rows),
    columns: axis("azimuth", columns),
    value: "gain",
    unit: "dBi",
    values,
  };
}

export function exampleSky(): Answer {
  const base = exampleAnswer();
  const watts = (value: number) => ({ value, unit: "W" });
  const lobes = [
    [25.9, 0, 6.8],
    [25.9, 180, 6.8],
  ];
  const around = [
    [25.9, 0, 6.8],
    [25.9, 180, 6.8],
  ];
  const minima = [
    [60.8, 0, -60],
    [60.8, 180, -60],
    [25.9, 90, 1.1],
    [25.9, 270, 1.1],
  ];
  return {
    ...base,
    question: "sky",
    asked: "Where does my signal go?",
    parameters: { judged: "gainAtElevation", elevation: 25.9, azimuth: 0, layerE: 110, layerF: 300 },
    values: {
      ...base.values,
      radiatedBelow30: watts(31),
      radiatedAbove60: watts(12),
      maximumGain: { value: 6.8, unit: "dBi" },
      elevationOfMaximum: { value: 25.9, unit: "deg" },
      azimuthOfMaximum: { value: 0, unit: "deg" },
      gainAgainstDipole: { value: 1.4, unit: "dB" },
    },
    tables: [
      list("lobesUpwards", "lobe", lobes, true),
      list("lobesAround", "lobe", around, false),
      list("minima", "minimum", minima, false),
      cut("elevationPattern", "elevation", count(181), (a, shape) => gainOf(a, a > 90 ? 180 : 0, shape)),
      cut("azimuthPattern", "azimuth", count(181, 2), (a, shape) => gainOf(25.9, a, shape)),
      ...base.tables,
    ],
    grids: [grid()],
  };
}
