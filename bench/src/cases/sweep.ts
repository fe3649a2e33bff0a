/** The sweep of 101 frequencies, as `band` does it: few exact solves, the rest interpolated within a stated error. */
import { chooseKernels, type Kernels, referenceKernels } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { dipole, frequency, fresh, leg, refinementFor, solvePoint, solvePointAt } from "../antennas";
import { type Section, threeDigits } from "../report/section";
import { answerTo, exampleText, freshText, plain, stationOf } from "../stations";
import { here, interleaved, ratioTo, timingNamed } from "../timing/interleaved";
import { timingTable } from "../timing/timingTable";
import { textbookCase, textbookName } from "./solves";

const station = "harbour-school-club";
const points = 101;
const [fast, readable, each] = ["answer, fast twin", "answer, readable twin", "every frequency solved, fast twin"];

function wholeAnswer(kernels: Kernels): void {
  chooseKernels(kernels);
  answerTo(plain(stationOf(freshText(exampleText(station)), station)), "band");
}

/** What the interpolation saves: the same span, each frequency solved with its greatest gain. */
function everyFrequency(refinement: number): void {
  const antenna = dipole(12, fresh(leg));
  for (let i = 0; i < points; i++) solvePointAt(antenna, frequency * (0.98 + (0.04 * i) / (points - 1)), refinement);
}

export async function sweep(): Promise<Section> {
  const refinement = refinementFor(dipole(12), 91);
  const { unknowns } = solvePoint(dipole(12), fastKernels, refinement).solution;
  const timings = await interleaved(
    [
      textbookCase(100),
      here(fast!, () => wholeAnswer(fastKernels)),
      here(readable!, () => wholeAnswer(referenceKernels)),
      here(each!, () => everyFrequency(refinement)),
    ],
    9,
    5,
  );
  const base = timingNamed(timings, textbookName(100));
  const answer = timingNamed(timings, fast!);
  return {
    title: "101 frequencies",
    budgets: [
      {
        what: "sweep of 101 frequencies of a dipole with its error bound, whole answer of `band`, warm",
        ...{ limit: 60, unit: "ms", bound: "most", measured: answer.median },
        against: `${threeDigits(ratioTo(answer, base))} times ${textbookName(100)}`,
      },
    ],
    tables: [
      timingTable(
        "101 frequencies, warm, the antenna never seen before",
        "case",
        timings,
        base,
        `The answer holds the station of a dipole without uncertain values: pattern, path and words at its frequency besides the sweep. The last row solves a dipole of ${unknowns} unknowns at each frequency, greatest gain included.`,
      ),
    ],
    figures: [],
    troubles: [],
  };
}
