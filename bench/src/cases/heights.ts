/** The study of 25 heights: warm, and as the first thing a fresh process does. */
import { chooseKernels, type Kernels, referenceKernels } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { dipole, fresh, leg, refinementFor, solvePoint } from "../antennas";
import { program } from "../child/process";
import { type Budget, type Section, threeDigits } from "../report/section";
import { answerTo, exampleText, freshText, plain, stationOf } from "../stations";
import { here, interleaved, median, ratioTo, timingNamed } from "../timing/interleaved";
import { timingTable } from "../timing/timingTable";
import { textbookCase, textbookName } from "./solves";

const heights = 25;
const coldRuns = 5;
const station = "harbour-school-club";

function study(kernels: Kernels, refinement: number): void {
  const length = fresh(leg);
  for (let i = 0; i < heights; i++) solvePoint(dipole(2 + i, length), kernels, refinement);
}

function wholeAnswer(kernels: Kernels): void {
  chooseKernels(kernels);
  answerTo(plain(stationOf(freshText(exampleText(station)), station)), "height");
}

interface Cold {
  readonly work: number;
  readonly process: number;
}

async function cold(what: string, refinement: number) {
  const runs: Cold[] = [];
  for (let i = 0; i < coldRuns; i++) runs.push(await program<Cold>("coldHeights.ts", what, String(refinement)));
  return { work: median(runs.map((run) => run.work)), process: median(runs.map((run) => run.process)) };
}

export async function heightStudies(): Promise<Section> {
  const refinement = refinementFor(dipole(12), 91);
  const { unknowns } = solvePoint(dipole(12), fastKernels, refinement).solution;
  const names = ["study, fast twin", "study, readable twin", "answer, fast twin", "answer, readable twin"] as const;
  const timings = await interleaved(
    [
      textbookCase(100),
      here(names[0], () => study(fastKernels, refinement)),
      here(names[1], () => study(referenceKernels, refinement)),
      here(names[2], () => wholeAnswer(fastKernels)),
      here(names[3], () => wholeAnswer(referenceKernels)),
    ],
    9,
    4,
  );
  const base = timingNamed(timings, textbookName(100));
  const against = (name: string) =>
    `${threeDigits(ratioTo(timingNamed(timings, name), base))} times ${textbookName(100)}`;
  const coldStudy = await cold("study", refinement);
  const coldAnswer = await cold("answer", refinement);
  const most = (what: string, limit: number, measured: number, ratio: string): Budget => ({
    ...{ what, limit, measured, against: ratio, unit: "ms", bound: "most" },
  });
  const overWarm = ({ work }: Cold, name: string) =>
    `${threeDigits(work / timingNamed(timings, name).median)} times the warm one`;
  const warm = (name: string) => timingNamed(timings, name).median;
  return {
    title: "25 heights",
    budgets: [
      most(
        `25 heights of a dipole, ${unknowns} unknowns, each with its greatest gain, warm`,
        100,
        warm(names[0]),
        against(names[0]),
      ),
      most("25 heights, whole answer of `height`, warm", 100, warm(names[2]), against(names[2])),
      most("25 heights in a fresh process, program loaded", 250, coldStudy.work, overWarm(coldStudy, names[0])),
      most(
        "25 heights, whole answer of `height` in a fresh process, program loaded",
        250,
        coldAnswer.work,
        overWarm(coldAnswer, names[2]),
      ),
    ],
    tables: [
      timingTable("25 heights, warm, the antenna never seen before", "case", timings, base),
      {
        caption: "25 heights in a fresh process, fast twin",
        columns: ["case", "work alone, ms", "since the process began, ms"],
        rows: [
          ["study", threeDigits(coldStudy.work), threeDigits(coldStudy.process)],
          ["answer", threeDigits(coldAnswer.work), threeDigits(coldAnswer.process)],
        ],
        note: "Since the process began counts reading the program too, which is TypeScript and compiled at every start.",
      },
    ],
    figures: [],
    troubles: [],
  };
}
