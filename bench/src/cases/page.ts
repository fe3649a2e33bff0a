/** The page as it is shipped, in headless Chromium: to its first answer, and every change after, in its worker. */
import { output, repositoryPath } from "../child/process";
import { type Budget, type Section, type Table, threeDigits } from "../report/section";
import { exampleText } from "../stations";
import { median } from "../timing/interleaved";

const station = "harbour-school-club";
const visits = 5;
const changes = 20;
/** Changes before those that count as warm. */
const settling = 6;

/** Milliseconds. */
interface Told {
  readonly seen: readonly { readonly paint: number; readonly answer: number; readonly blank: number }[];
  /** Of each question, one a change. */
  readonly times: readonly (readonly number[])[];
  readonly keys: readonly number[];
  readonly browser: string;
}

const warm = (times: readonly number[]): readonly number[] => times.slice(settling);

/** The file with the first value of a key a centimetre longer each time. */
const changed = (key: "height" | "length"): readonly string[] =>
  Array.from({ length: changes }, (_, i) =>
    exampleText(station).replace(
      new RegExp(`(${key}: )([\\d.]+)`),
      (_, name, value) => `${name}${(Number(value) + (i + 1) / 100).toFixed(2)}`,
    ),
  );

const asked = [
  { name: "`watts`, height changed", question: "watts", texts: changed("height"), limit: 16 },
  { name: "`watts`, line changed", question: "watts", texts: changed("length"), limit: 16 },
  { name: "`height`, line changed", question: "height", texts: changed("length"), limit: null },
  { name: "`band`, height changed", question: "band", texts: changed("height"), limit: null },
] as const;

function workerTable({ times }: Told): Table {
  return {
    caption: "In the page's worker, from the file's text to the whole answer with what uncertain values do",
    columns: ["question", "first, worker started for it, ms", "warm, median ms", "warm, fastest ms"],
    rows: asked.map(({ name }, i) => [
      name,
      ...[times[i]![0]!, median(warm(times[i]!)), Math.min(...warm(times[i]!))].map(threeDigits),
    ]),
    note: "",
  };
}

export async function pageInBrowser(): Promise<Section> {
  const told: Told = JSON.parse(
    await output([repositoryPath("bench/testing/page.mjs"), JSON.stringify({ visits, presses: changes, asked })]),
  );
  const { seen, times, keys, browser } = told;
  const [paint, answer] = [median(seen.map((one) => one.paint)), median(seen.map((one) => one.answer))];
  const most = (what: string, limit: number, unit: string, measured: number, against = ""): Budget => ({
    ...{ what, limit, unit, measured, against, bound: "most" },
  });
  const overBlank = (of: "paint" | "answer") =>
    `${threeDigits(median(seen.map((one) => one[of] / one.blank)))} times the paint of a page with one word`;
  return {
    title: "The page",
    budgets: [
      most("page, first paint, nothing kept", 1, "s", paint / 1000, overBlank("paint")),
      most("page, first answer, nothing kept", 2, "s", answer / 1000, overBlank("answer")),
      ...asked.flatMap(({ name, limit }, i) =>
        limit === null ? [] : [most(`page's worker, ${name}, warm`, limit, "ms", median(warm(times[i]!)))],
      ),
    ],
    tables: [
      workerTable(told),
      {
        caption: "On the page, from a local server",
        columns: ["from", "to", "median ms"],
        rows: [
          ["navigation, nothing kept", "first paint", threeDigits(paint)],
          ["navigation, nothing kept", "first answer", threeDigits(answer)],
          ["arrow key on the height, warm", "picture changed", threeDigits(median(warm(keys)))],
        ],
        note: "The picture is drawn once the whole answer is there.",
      },
    ],
    figures: [],
    troubles: [],
    libraries: [`Chromium ${browser}, headless.`],
  };
}
