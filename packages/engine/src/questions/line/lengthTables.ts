/** Tables of what the set sees against the length of the line. */
import type { Column, Table } from "../../answer/answer";
import { column, columnOver, counted } from "../common/columns";
import { bandName } from "./bandName";
import type { Findings } from "./findings";

export function lengthTables({ lengths }: Findings): Table[] {
  if (!lengths) return [];
  const { points, halfWaves } = lengths;
  const length: Table = {
    name: "lineLength",
    axis: "length",
    columns: {
      length: columnOver(points, "m", (p) => p.length),
      wattsIntoAntenna: columnOver(points, "W", (p) => p.watts),
      swrSeen: columnOver(points, "1", (p) => p.swr),
      resistanceSeen: columnOver(points, "ohm", (p) => p.seen.re),
      reactanceSeen: columnOver(points, "ohm", (p) => p.seen.im),
    },
  };
  const of = (unit: string, value: (h: (typeof halfWaves)[number]) => number): Column =>
    column(unit, halfWaves.map(value));
  const waves: Table = {
    name: "halfWaves",
    axis: "halfWave",
    labels: halfWaves.map((h) => `${h.multiple} × λ/2, ${bandName(h.band.name, h.band.frequency.value)}`),
    columns: {
      halfWave: counted(halfWaves.length),
      length: { ...of("m", (h) => h.length), low: halfWaves.map((h) => h.low), high: halfWaves.map((h) => h.high) },
      shortestLength: of("m", (h) => h.low),
      longestLength: of("m", (h) => h.high),
      swrSeen: of("1", (h) => h.swr),
      wattsIntoAntenna: of("W", (h) => h.watts),
      multiple: of("1", (h) => h.multiple),
      frequency: of("MHz", (h) => h.band.frequency.value / 1e6),
    },
  };
  return halfWaves.length > 0 ? [length, waves] : [length];
}
