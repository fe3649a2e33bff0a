/** Example stations as they stand, slightly different each time, or without their uncertainties; and asking them. */
import { readdirSync, readFileSync } from "node:fs";
import {
  type Answer,
  exactly,
  findQuestion,
  isQuantity,
  type Parameters,
  type Refusal,
  type SolutionMemory,
  type Station,
} from "@feedpath/engine";
import { lineCatalogue, readStation } from "@feedpath/station-file";

const folder = new URL("../../examples/", import.meta.url);

/** Names of the worked station files, without the ending. */
export const exampleNames = (): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => name.slice(0, -".yaml".length))
    .sort();

export const exampleText = (name: string): string => readFileSync(new URL(`${name}.yaml`, folder), "utf8");

export function stationOf(text: string, name: string): Station {
  const readFile = (beside: string): string => readFileSync(new URL(beside, folder), "utf8");
  const { station, problems } = readStation(text, { fileName: `${name}.yaml`, readFile });
  if (!station) throw new Error(`${name}: ${problems.map((p) => p.message).join("\n")}`);
  return station;
}

/** Every length in metres of the file times a factor; names of bands (`40 m:`), losses (`dB/100 m`) and prices (`per 100 m`) stay. */
export const scaledText = (text: string, factor: number): string =>
  text.replaceAll(/(?<![\w/.]|per )(\d+(?:\.\d+)?) m(?![\w:])/g, (_, length) => `${Number(length) * factor} m`);

let made = 0;
/** The same station, its lengths longer by less than a hundred-thousandth, never the same twice: nothing kept answers. */
export function freshText(text: string): string {
  made += 1;
  return scaledText(text, 1 + 1e-8 * (made % 1000));
}

/** The station without uncertainty: every value its nominal one. */
export function plain(station: Station): Station {
  const nominal = (thing: unknown): unknown => {
    if (isQuantity(thing)) return exactly(thing.value, thing.basis);
    if (Array.isArray(thing)) return thing.map(nominal);
    if (typeof thing !== "object" || thing === null) return thing;
    return Object.fromEntries(Object.entries(thing).map(([key, value]) => [key, nominal(value)]));
  };
  return nominal(station) as Station;
}

/** The whole answer, in this thread. With a memory, antennas solved before are found there. */
export function ask(
  station: Station,
  id: string,
  kept?: SolutionMemory,
  parameters: Parameters = {},
): Answer | Refusal {
  const question = findQuestion(id);
  if (!question) throw new Error(`no question "${id}"`);
  const context = { program: "bench", catalogue: "bench", fileHash: "", lines: lineCatalogue };
  const run = question.run(station, parameters, kept ? { ...context, kept } : context);
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
}

/** The answer; throws where the question is refused. */
export function answerTo(station: Station, id: string, kept?: SolutionMemory, parameters?: Parameters): Answer {
  const result = ask(station, id, kept, parameters);
  if ("refused" in result) throw new Error(`${station.title}, ${id}: ${result.refused.why}`);
  return result;
}
