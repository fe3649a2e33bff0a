/** `band` on the worked station files: antenna never seen, antenna kept, answer kept. */
import {
  type Answer,
  chooseKernels,
  createSolutionMemory,
  findQuestion,
  isQuantity,
  type SolutionMemory,
  type Station,
} from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { createAnswerMemory, type SolverPool } from "@feedpath/workers";
import { type Budget, type Section, threeDigits } from "../report/section";
import { ask, exampleNames, exampleText, freshText, stationOf } from "../stations";
import { askOnThreads, startPool } from "../threads";
import { type Case, here, interleaved, ratioTo, roundsWithin, type Timing, timingNamed } from "../timing/interleaved";
import { textbookCase, textbookName } from "./solves";

/** The eight that the file's grammar was first written for; the others are measured too. */
const eight = [
  ...["allotment-trap", "attic-coils", "balcony-end-fed", "lawn-vertical"],
  ...["orchard-doublet", "phased-pair", "relay-box", "terrace-fan"],
];
const limit = 150;
/** Time for all rounds of one station. */
const secondsEach = 6;
const ways = ["antenna new, one thread", "antenna new, two threads", "antenna kept", "answer kept"] as const;

let made = 0;
/** Every line a little longer than ever before. */
function otherLines(station: Station): Station {
  made += 1;
  const factor = 1 + 1e-6 * made;
  const longer = (thing: unknown): unknown => {
    if (Array.isArray(thing)) return thing.map(longer);
    if (typeof thing !== "object" || thing === null) return thing;
    const entries = Object.entries(thing).map(([key, value]) => [key, longer(value)] as const);
    const copy = Object.fromEntries(entries);
    if (!("kind" in thing && thing.kind === "line")) return copy;
    if (!isQuantity(copy.length)) return copy;
    const { value, low, high } = copy.length;
    return { ...copy, length: { ...copy.length, value: value * factor, low: low * factor, high: high * factor } };
  };
  return { ...station, path: longer(station.path) as Station["path"] };
}

const context = { program: "bench", catalogue: "bench", fileHash: "" };

function casesOf(name: string, pool: SolverPool, memory: SolutionMemory, first: Answer): readonly Case[] {
  const text = exampleText(name);
  const answers = createAnswerMemory();
  const asked = (station: Station) => ({ question: findQuestion("band")!, station, parameters: {}, context });
  answers.set(asked(stationOf(text, name)), first);
  return [
    textbookCase(100),
    here(ways[0], () => void ask(stationOf(freshText(text), name), "band", createSolutionMemory())),
    {
      name: ways[1],
      run: async () => {
        await askOnThreads(stationOf(freshText(text), name), "band", createSolutionMemory(), pool);
        return null;
      },
    },
    here(ways[2], () => void ask(otherLines(stationOf(text, name)), "band", memory)),
    here(ways[3], () => {
      if (!answers.get(asked(stationOf(text, name)))) throw new Error(`${name}: its answer was not kept`);
    }),
  ];
}

interface Row {
  readonly name: string;
  readonly timings: readonly Timing[];
  /** Why there is no answer; null where there is. */
  readonly refused: string | null;
}

async function rowOf(name: string, pool: SolverPool): Promise<Row> {
  const memory = createSolutionMemory();
  const start = performance.now();
  const first = ask(stationOf(exampleText(name), name), "band", memory);
  if ("refused" in first) return { name, timings: [], refused: first.refused.why };
  const rounds = roundsWithin(secondsEach, performance.now() - start);
  // What takes seconds is compiled by the time the first has ended.
  const warmUp = rounds > 1 ? Math.ceil(rounds / 2) : 0;
  return { name, timings: await interleaved(casesOf(name, pool, memory, first), rounds, warmUp), refused: null };
}

function budgetOf(row: Row): Budget[] {
  if (row.refused !== null) return [];
  const base = timingNamed(row.timings, textbookName(100));
  return ways.slice(1).map((way): Budget => {
    const timing = timingNamed(row.timings, way);
    const against = `${threeDigits(ratioTo(timing, base))} times ${textbookName(100)}`;
    return {
      what: `\`band\` of ${row.name}, ${way}`,
      limit,
      unit: "ms",
      bound: "most",
      measured: timing.median,
      against,
    };
  });
}

function cellsOf({ name, timings, refused }: Row): readonly string[] {
  const place = eight.includes(name) ? "yes" : "";
  if (refused !== null) return [name, place, `refused: ${refused}`, ...ways.slice(1).map(() => "")];
  return [name, place, ...ways.map((way) => threeDigits(timingNamed(timings, way).median))];
}

export async function workedFiles(): Promise<Section> {
  chooseKernels(fastKernels);
  const pool = startPool(1);
  pool.warmUp();
  const rows: Row[] = [];
  for (const name of exampleNames()) rows.push(await rowOf(name, pool));
  pool.close();
  const counted = rows.filter(({ name }) => eight.includes(name));
  return {
    title: "`band` on the worked files",
    budgets: counted.flatMap(budgetOf),
    tables: [
      {
        caption: "`band` of 101 frequencies, whole answers with what uncertain values do, warm, fast twin; median ms",
        columns: ["station", "one of the eight", ...ways],
        rows: rows.map(cellsOf),
        note: "The file is read anew each time. Antenna new: every length of the file a little other than ever before. Antenna kept: every line of the path a little longer, solutions in memory. Answer kept: the same again.",
      },
    ],
    figures: [],
    troubles: counted.flatMap(({ name, refused }) =>
      refused === null ? [] : [`\`band\` of ${name} is refused, so that it has no time: ${refused}`],
    ),
  };
}
