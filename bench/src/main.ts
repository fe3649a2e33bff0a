/** `npm run bench`: the budgets that apply now, timed by turns with a baseline and printed as ratios to it. */
import { readFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { antennaCases, plainStation, point } from "./antennaCases";
import { type Lapack, startLapack } from "./baseline/lapack";
import { interleaved, type Timing } from "./interleaved";
import { processCases } from "./processCases";
import { solveCases } from "./solveCases";

const print = (text: string): void => {
  process.stdout.write(`${text}\n`);
};

function table(title: string, timings: readonly Timing[], baseline: string): void {
  const base = timings.find((t) => t.name === baseline)!.median;
  print(`\n${title}\n`);
  print("| case | median ms | fastest ms | median over baseline |");
  print("|---|---|---|---|");
  for (const { name, median, fastest } of timings)
    print(`| ${name} | ${median.toPrecision(3)} | ${fastest.toPrecision(3)} | ${(median / base).toPrecision(3)} |`);
}

async function solves(lapack: Lapack | null): Promise<void> {
  for (const size of [50, 100, 200, 400]) {
    const rounds = size > 200 ? 9 : 25;
    table(
      `Dense complex symmetric solve, ${size} unknowns`,
      await interleaved(solveCases(size, lapack), rounds, 8),
      lapack ? "zgesv" : "textbook",
    );
  }
}

async function antennas(): Promise<void> {
  const file = new URL("../../examples/harbour-school-club.yaml", import.meta.url);
  const baseline = solveCases(100, null)[0]!;
  const cases = [
    { ...baseline, name: "textbook solve, 100 unknowns" },
    ...antennaCases(plainStation(readFileSync(file, "utf8"))),
  ];
  print(`\nThe point has ${point(12, 7.1e6).unknowns} unknowns.`);
  table("Dipole over soil, warm", await interleaved(cases, 11, 4), "textbook solve, 100 unknowns");
}

async function main(): Promise<void> {
  const lapack = await startLapack();
  print(`Node ${process.version}, ${availableParallelism()} processors.`);
  print(
    lapack
      ? `numpy ${lapack.version}, one thread.`
      : "No numpy with scipy: on Debian, apt-get install python3-numpy python3-scipy. Ratios are to the textbook solve.",
  );
  await antennas();
  await solves(lapack);
  lapack?.end();
  table("Processes", await interleaved(processCases, 5, 1), "empty Node process");
}

await main();
