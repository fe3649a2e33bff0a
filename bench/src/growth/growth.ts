/** What an antenna costs against its unknowns, its wires and the frequencies asked for; what a second thread saves. */
import {
  chooseKernels,
  createSolutionMemory,
  type Kernels,
  referenceKernels,
  type Soil,
  solveAntenna,
} from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { dipole, frequency, fresh, leg, mast, soil } from "../antennas";
import { type Section, type Table, threeDigits } from "../report/section";
import { exampleText, freshText, stationOf } from "../stations";
import { askOnThreads, startPool } from "../threads";
import { interleaved, ratioTo, roundsWithin, timingNamed } from "../timing/interleaved";
import { growthFigure } from "./growthFigure";

/** What takes longer on the readable twin is measured on the fast one only, ms. */
const patience = 20_000;
/** Time for all rounds of a row. */
const secondsEach = 4;

interface Row {
  readonly count: number;
  readonly fast: number;
  readonly readable: number | null;
}

type Work = (kernels: Kernels) => void;

/** Fastest of some rounds by turns: a machine with other work makes times longer, never shorter. */
async function timed(count: number, work: Work, last: Row | undefined): Promise<Row> {
  const start = performance.now();
  work(fastKernels);
  const rounds = roundsWithin(secondsEach, 2 * (performance.now() - start));
  const bearable = (last?.readable ?? 0) < patience / 8 && last?.readable !== null;
  const cases = [fastKernels, ...(bearable ? [referenceKernels] : [])].map((kernels) => ({
    name: kernels.name,
    run: () => {
      work(kernels);
      return null;
    },
  }));
  const timings = await interleaved(cases, rounds, 0);
  return { count, fast: timings[0]!.fastest, readable: timings[1]?.fastest ?? null };
}

async function rowsOf<T>(inputs: readonly T[], count: (input: T) => number, work: (input: T) => Work): Promise<Row[]> {
  const rows: Row[] = [];
  for (const input of inputs) rows.push(await timed(count(input), work(input), rows.at(-1)));
  return rows;
}

/** The power of the count that time grew with since the row above. */
function power(rows: readonly Row[], i: number, of: "fast" | "readable"): string {
  const [row, above] = [rows[i]!, rows[i - 1]];
  if (!above || row[of] === null || above[of] === null) return "";
  return (Math.log(row[of] / above[of]) / Math.log(row.count / above.count)).toFixed(1);
}

const tableOf = (caption: string, counted: string, rows: readonly Row[]): Table => ({
  caption,
  columns: [counted, "fast twin, ms", "power", "readable twin, ms", "power"],
  rows: rows.map((row, i) => [
    String(row.count),
    ...[threeDigits(row.fast), power(rows, i, "fast")],
    ...[row.readable === null ? "" : threeDigits(row.readable), power(rows, i, "readable")],
  ]),
  note: "",
});

const figureOf = (name: string, title: string, counted: string, rows: readonly Row[]) =>
  growthFigure({
    ...{ name, title, counted },
    counts: rows.map((row) => row.count),
    curves: [
      { name: "fast twin", times: rows.map((row) => row.fast) },
      { name: "readable twin", times: rows.map((row) => row.readable) },
    ],
  });

const free: Soil = { kind: "free space" };
const solveMast = (radials: number, refinement: number, ground: Soil, kernels: Kernels) =>
  solveAntenna(mast(radials, fresh(9)), ground, frequency, kernels, { refinement });

/** Whole answers on this thread alone and with one beside it. */
async function threads(): Promise<Table> {
  chooseKernels(fastKernels);
  const pools = [startPool(0), startPool(1)];
  pools[1]!.warmUp();
  const asked = [
    ["harbour-school-club", "height"],
    ["harbour-school-club", "band"],
    ["orchard-doublet", "band"],
  ] as const;
  const rows: string[][] = [];
  for (const [name, id] of asked) {
    const cases = pools.map((pool, i) => ({
      name: `${i + 1}`,
      run: async () => {
        await askOnThreads(stationOf(freshText(exampleText(name)), name), id, createSolutionMemory(), pool);
        return null;
      },
    }));
    const timings = await interleaved(cases, 5, 2);
    const [one, two] = [timingNamed(timings, "1"), timingNamed(timings, "2")];
    rows.push([
      `\`${id}\` of ${name}`,
      threeDigits(one.median),
      threeDigits(two.median),
      threeDigits(ratioTo(two, one)),
    ]);
  }
  for (const pool of pools) pool.close();
  return {
    caption: "Against threads: whole answers, the antenna never seen before",
    columns: ["answer", "one thread, ms", "two threads, ms", "two over one"],
    rows,
    note: "",
  };
}

export async function growth(): Promise<Section> {
  const unknownsOf = (refinement: number) => solveMast(8, refinement, free, fastKernels).unknowns;
  const unknowns = await rowsOf([0.5, 1, 2, 4, 7, 12], unknownsOf, (refinement) => (kernels) => {
    solveMast(8, refinement, free, kernels);
  });
  const wires = await rowsOf(
    [4, 8, 16, 32, 50],
    (radials) => radials + 1,
    (radials) => (kernels) => {
      solveMast(radials, 1, soil, kernels);
    },
  );
  const points = await rowsOf(
    [1, 10, 100],
    (count) => count,
    (count) => (kernels) => {
      const antenna = dipole(12, fresh(leg));
      const held = { refinement: 1, meshFrequency: 1.1 * frequency };
      for (let i = 0; i < count; i++) solveAntenna(antenna, soil, frequency * (1 + i / 1000), kernels, held);
    },
  );
  return {
    title: "How cost grows",
    budgets: [],
    tables: [
      tableOf("Against unknowns: a mast over 8 radials in free space, finer meshes", "unknowns", unknowns),
      tableOf("Against wires: a mast over radials over soil, one mesh", "wires", wires),
      tableOf("Against frequencies: a dipole over soil, each solved exactly, its mesh held", "frequencies", points),
      await threads(),
    ],
    figures: [
      figureOf("growthUnknowns", "Time of one solve against the unknown currents", "unknown currents", unknowns),
      figureOf("growthWires", "Time of one solve over soil against the wires", "wires", wires),
    ],
    troubles: [],
  };
}
