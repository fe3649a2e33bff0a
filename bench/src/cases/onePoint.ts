/** One point of a level dipole over soil (kernels, matrix, solve, greatest gain): both twins and the script. */
import { referenceKernels } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { dipole, fresh, leg, refinementFor, solvePoint } from "../antennas";
import { disagreement, type MomentScript, type ScriptResult, startMomentScript } from "../baseline/momentScript";
import { howToInstall } from "../baseline/python";
import { type Budget, type Section, type Table, threeDigits } from "../report/section";
import { type Case, here, interleaved, median, ratioTo, timingNamed } from "../timing/interleaved";

const height = 12;
const wantedUnknowns = 91;
/** Ohm: the script is timed only where it says the same as the engine. */
const sameResult = 0.05;
const rounds = 15;

function stagesTable(results: readonly ScriptResult[]): Table {
  const stages = ["kernels over soil", "matrix", "solve", "greatest gain"] as const;
  return {
    caption: "Where the script spends its time",
    columns: ["stage", "median ms"],
    rows: stages.map((stage, i) => [stage, threeDigits(1e3 * median(results.map(({ seconds }) => seconds[i]!)))]),
    note: "",
  };
}

async function checked(script: MomentScript, refinement: number): Promise<{ agrees: boolean; sentence: string }> {
  const { solution, gain } = solvePoint(dipole(height), fastKernels, refinement);
  const { ohm, decibels } = disagreement(solution, gain, await script.run());
  const agrees = ohm < sameResult;
  const apart = `${ohm.toExponential(1)} ohm and ${decibels.toExponential(1)} dB from the engine on the same mesh`;
  const verdict = agrees ? `(at most ${sameResult} ohm)` : `(at most ${sameResult} ohm was wanted): it is not timed.`;
  return { agrees, sentence: `The script of the same method is ${apart} ${verdict}${agrees ? "." : ""}` };
}

export async function onePoint(): Promise<Section> {
  const refinement = refinementFor(dipole(height), wantedUnknowns);
  const { solution } = solvePoint(dipole(height), referenceKernels, refinement);
  const twin = (name: string, kernels: typeof fastKernels): Case =>
    here(name, () => void solvePoint(dipole(height, fresh(leg)), kernels, refinement));
  const cases = [twin("fast twin", fastKernels), twin("readable twin", referenceKernels)];
  const script = await startMomentScript(solution);
  const check = script ? await checked(script, refinement) : null;
  const results: ScriptResult[] = [];
  if (script && check?.agrees) {
    const run = async () => {
      const result = await script.run();
      results.push(result);
      return 1e3 * result.seconds.reduce((sum, one) => sum + one, 0);
    };
    cases.push({ name: "script", run });
  }
  const timings = await interleaved(cases, rounds, 5);
  script?.end();
  const fast = timingNamed(timings, "fast twin");
  const budgets: Budget[] = [];
  if (results.length > 0) {
    budgets.push({
      what: `one point of a dipole over soil, ${solution.unknowns} unknowns: against a numpy and scipy script`,
      ...{ limit: 250, unit: "times faster", bound: "least" },
      measured: 1 / ratioTo(fast, timingNamed(timings, "script")),
      against: `${threeDigits(fast.median)} ms against ${threeDigits(timingNamed(timings, "script").median)} ms`,
    });
  }
  const rows = timings.map((timing) => [
    timing.name,
    threeDigits(timing.median),
    threeDigits(timing.fastest),
    threeDigits(ratioTo(timing, fast)),
  ]);
  const table = {
    caption: `One point, ${solution.unknowns} unknowns, warm`,
    columns: ["by", "median ms", "fastest ms", "over the fast twin"],
    rows,
    note: check?.sentence ?? `No python3 with numpy and scipy here (${howToInstall}): no script to compare with.`,
  };
  return {
    title: "One point",
    budgets,
    tables: results.length > 0 ? [table, stagesTable(results)] : [table],
    figures: [],
    troubles: check && !check.agrees ? [check.sentence] : [],
  };
}
