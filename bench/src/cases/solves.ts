/** The dense complex symmetric solve: both twins and the textbook against LAPACK. */
import { type Kernels, referenceKernels } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { type Lapack, startLapack } from "../baseline/lapack";
import { howToInstall } from "../baseline/python";
import { type DenseSystem, textbookLu } from "../baseline/textbookLu";
import { type Budget, type Section, type Table, threeDigits } from "../report/section";
import { type Case, here, interleaved, ratioTo, type Timing, timingNamed } from "../timing/interleaved";

const sizes = [50, 100, 200, 400, 800];
const rightSides = [1, 4];

/** A symmetric matrix with a heavy diagonal, from a fixed sequence: moment matrices are like that. */
function symmetricSystem(size: number): DenseSystem {
  let state = 12345;
  const next = () => {
    state = (1103515245 * state + 12345) % 2147483648;
    return state / 1073741824 - 1;
  };
  const matrix = new Float64Array(2 * size * size);
  for (let i = 0; i < size; i++) {
    for (let j = i; j < size; j++) {
      const [re, im] = [next(), next() + (i === j ? 2 * size : 0)];
      for (const at of [i * size + j, j * size + i]) {
        matrix[2 * at] = re;
        matrix[2 * at + 1] = im;
      }
    }
  }
  return { size, matrix, right: new Float64Array(2 * size).map((_, i) => (i % 2 === 0 ? 1 : 0)) };
}

export const textbookName = (size: number): string => `textbook solve of ${size} unknowns`;

/** What every machine can be compared by: a solve in plain TypeScript. */
export function textbookCase(size: number): Case {
  const system = symmetricSystem(size);
  return here(textbookName(size), () => void textbookLu(system));
}

function twinCase(name: string, kernels: Kernels, { size, matrix }: DenseSystem, count: number): Case {
  const part = (offset: 0 | 1) => Float64Array.from({ length: size * size }, (_, i) => matrix[2 * i + offset]!);
  const [re, im] = [part(0), part(1)];
  return here(name, () => {
    const right = {
      count,
      length: size,
      re: new Float64Array(count * size).fill(1),
      im: new Float64Array(count * size),
    };
    kernels.solveSymmetric({ size, re: re.slice(), im: im.slice() }, right);
  });
}

const [fastName, readableName] = ["fast twin", "readable twin"];

async function timed(size: number, count: number, lapack: Lapack | null): Promise<readonly Timing[]> {
  const system = symmetricSystem(size);
  const cases: Case[] = [
    twinCase(fastName!, fastKernels, system, count),
    twinCase(readableName!, referenceKernels, system, count),
    textbookCase(size),
  ];
  if (lapack) {
    cases.push({ name: "zgesv", run: () => lapack.time("zgesv", size, count) });
    cases.push({ name: "zsysv", run: () => lapack.time("zsysv", size, count) });
  }
  const rounds = size > 400 ? 7 : size > 200 ? 15 : 30;
  return interleaved(cases, rounds, size > 400 ? 2 : 8);
}

interface Row {
  readonly size: number;
  readonly count: number;
  readonly timings: readonly Timing[];
}

function budgetOf(name: string, limit: number, rows: readonly Row[]): Budget {
  const counted = rows.filter(({ size, count }) => size >= 100 && count === 1);
  const ratios = counted.map(({ timings }) => ratioTo(timingNamed(timings, name), timingNamed(timings, "zgesv")));
  return {
    what: `dense solve, ${name}, worst of 100 to 800 unknowns`,
    ...{ limit, unit: "times zgesv", bound: "most" },
    measured: Math.max(...ratios),
    against: counted.map(({ size }, i) => `${size}: ${threeDigits(ratios[i]!)}`).join(", "),
  };
}

function tableOf(rows: readonly Row[], base: string, lapack: Lapack | null): Table {
  const names = rows[0]!.timings.map(({ name }) => (name.startsWith("textbook") ? "textbook" : name));
  return {
    caption: `Dense complex symmetric solve, times ${base}`,
    columns: ["unknowns", "right-hand sides", `${base}, median ms`, ...names.filter((name) => name !== base)],
    rows: rows.map(({ size, count, timings }) => {
      const baseline = timings[names.indexOf(base)]!;
      const others = timings.filter((_, i) => names[i] !== base);
      return [
        ...[String(size), String(count), threeDigits(baseline.median)],
        ...others.map((timing) => threeDigits(ratioTo(timing, baseline))),
      ];
    }),
    note: lapack
      ? "The textbook solve has one right-hand side always."
      : `No python3 with numpy and scipy here (${howToInstall}): the ratios are to the readable twin.`,
  };
}

export async function denseSolves(): Promise<Section> {
  const lapack = await startLapack();
  const rows: Row[] = [];
  for (const count of rightSides)
    for (const size of sizes) rows.push({ size, count, timings: await timed(size, count, lapack) });
  lapack?.end();
  return {
    title: "Dense solve",
    budgets: lapack ? [budgetOf(fastName!, 2.2, rows), budgetOf(readableName!, 9, rows)] : [],
    tables: [tableOf(rows, lapack ? "zgesv" : readableName!, lapack)],
    figures: [],
    troubles: [],
  };
}
