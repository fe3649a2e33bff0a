/** An answer to `nearby`, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Table } from "@feedpath/engine";
import { exampleAnswer } from "./exampleAnswer";

const steps = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

function distanceTable(): Table {
  const distance = steps(2.5, 34, 16);
  const fading = (d: number, size: number) => (size * Math.cos((d - 2.5) / 1.7)) / (1 + (d - 2.5) / 4);
  return {
    name: "distance",
    axis: "distance",
    columns: {
      distance: { unit: "m", values: distance },
      moved: { unit: "m", values: distance.map((d) => d - 2.5) },
      swr: { unit: "1", values: distance.map((d) => 1.5 + Math.abs(fading(d, 1.1))) },
      gain: { unit: "dBi", values: distance.map((d) => 5 - fading(d, 4)) },
      feedPointResistance: { unit: "ohm", values: distance.map((d) => 60 - fading(d, 30)) },
      feedPointReactance: { unit: "ohm", values: distance.map((d) => -20 - fading(d, 30)) },
    },
  };
}

const thingTable: Table = {
  name: "things",
  axis: "thing",
  columns: {
    thing: { unit: "1", values: [1, 2] },
    distance: { unit: "m", values: [2.5, 0.4] },
    swrWithout: { unit: "1", values: [1.5, 2.4] },
    gainWithout: { unit: "dBi", values: [5, 1.2] },
  },
};

/** A dipole along the east, a gutter south of it and a drooping wire below. */
function currentTable(): Table {
  const piece = (thing: number, most: number, ends: readonly [readonly number[], readonly number[]]) =>
    steps(0, 1, 11)
      .slice(1)
      .map((to) => {
        const at = (share: number) => ends[0].map((from, axis) => from + share * (ends[1][axis]! - from));
        return { thing, current: most * Math.sin(Math.PI * (to - 0.05)), from: at(to - 0.1), to: at(to) };
      });
  const pieces = [
    ...piece(0, 1.7, [
      [-5, 0, 8],
      [5, 0, 8],
    ]),
    ...piece(1, 1.1, [
      [-4.5, -2.3, 7],
      [4.5, -2.3, 7],
    ]),
    ...piece(2, 0.2, [
      [0, 0, 7.6],
      [16, 9, 2.5],
    ]),
  ];
  const column = (unit: string, pick: (p: (typeof pieces)[number]) => number) => ({ unit, values: pieces.map(pick) });
  return {
    name: "currents",
    axis: "piece",
    columns: {
      piece: { unit: "1", values: pieces.map((_, i) => i + 1) },
      thing: column("1", (p) => p.thing),
      current: column("A", (p) => p.current),
      fromEast: column("m", (p) => p.from[0]!),
      fromNorth: column("m", (p) => p.from[1]!),
      fromUp: column("m", (p) => p.from[2]!),
      toEast: column("m", (p) => p.to[0]!),
      toNorth: column("m", (p) => p.to[1]!),
      toUp: column("m", (p) => p.to[2]!),
    },
  };
}

export function exampleNearby(): Answer {
  const base = exampleAnswer();
  const around = base.tables.find(({ name }) => name === "azimuthCut")!;
  const gains = around.columns.gain!.values.map((gain, i) => gain! - 3 * Math.cos((i * Math.PI) / 180));
  const without: Table = {
    ...around,
    name: "azimuthCutWithout",
    columns: { ...around.columns, gain: { unit: "dBi", values: gains } },
  };
  return {
    ...base,
    question: "nearby",
    asked: "What do the gutter, the mast, the other antenna do?",
    parameters: { judged: "radiatedPower", elevation: 25, azimuth: 0, things: "gutter; long one" },
    values: {
      ...base.values,
      clearDistance: { value: 21, unit: "m" },
      inducedCurrent: { value: 1.1, unit: "A" },
      inducedShare: { value: 65, unit: "%" },
    },
    tables: [thingTable, distanceTable(), currentTable(), without, ...base.tables],
  };
}
