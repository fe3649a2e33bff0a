/** Whole processes: the command line from start to end, by turns with an empty Node process. */
import { repositoryPath, wholeProcess } from "../child/process";
import { type Budget, type Section, threeDigits } from "../report/section";
import { interleaved, ratioTo, timingNamed } from "../timing/interleaved";

const feedpath = repositoryPath("apps/cli/bin/feedpath.mjs");
const station = repositoryPath("examples/harbour-school-club.yaml");
const empty = "empty Node process";

const cases = [
  { name: "command line, to its help", limit: 0.4, args: [feedpath, "--help"] },
  {
    name: "command line, to the first answer of `watts`",
    limit: 1.5,
    args: [feedpath, "ask", "watts", station, "--json"],
  },
] as const;

export async function programs(): Promise<Section> {
  const timings = await interleaved(
    [
      { name: empty, run: () => wholeProcess(["-e", "0"]) },
      ...cases.map(({ name, args }) => ({ name, run: () => wholeProcess(args) })),
    ],
    5,
    1,
  );
  const base = timingNamed(timings, empty);
  const budgets = cases.map(({ name, limit }): Budget => {
    const timing = timingNamed(timings, name);
    const against = `${threeDigits(ratioTo(timing, base))} times an ${empty}`;
    return { what: name, limit, unit: "s", bound: "most", measured: timing.median / 1000, against };
  });
  return {
    title: "Command line",
    budgets,
    tables: [
      {
        caption: "Whole processes, from start to end, in the repository",
        columns: ["process", "median ms", "fastest ms"],
        rows: timings.map(({ name, median, fastest }) => [name, threeDigits(median), threeDigits(fastest)]),
        note: "The budget is for the installed program; here its TypeScript is compiled at every start.",
      },
    ],
    figures: [],
    troubles: [],
  };
}
