import { createHash } from "node:crypto";
import type { Answer, ParameterDefinition, Parameters, Question, Refusal, Station } from "@feedpath/engine";
import { questions } from "@feedpath/engine";
import { withFigures } from "@feedpath/figures";
import { answerText, refusalText } from "@feedpath/report";
import { catalogueVersion, lineCatalogue } from "@feedpath/station-file";
import { type Command, Option } from "commander";
import { checkPlaceForFile } from "../files/replaceFile";
import { stationFrom } from "../files/stationFrom";
import { exampleValue, optionName, says, valueForm } from "../parameters/optionName";
import { readParameters } from "../parameters/readParameters";
import { drive } from "../run/drive";
import { progressLine } from "../run/progressLine";
import { openSolverThreads } from "../run/solverThreads";
import { exitStatus } from "../tell/exitStatus";
import type { Terminal } from "../tell/terminal";
import { version } from "../tell/version";
import { checkBand, chosenQuestion } from "./choices";
import { type AddCommand, examples } from "./command";
import { writeFigures, writeSheet } from "./handOver";
import { writeFilm, writeFrames } from "./handOverFilm";

interface AskOptions extends Readonly<Record<string, unknown>> {
  readonly sheet?: string;
  readonly figure?: readonly string[];
  readonly film?: string;
  readonly frames?: string;
  readonly band?: string;
}

/** Every question's parameters, each once; questions share a parameter by its name. */
const allParameters: readonly ParameterDefinition[] = [
  ...new Map(questions.flatMap(({ parameters }) => parameters.map((one) => [one.name, one] as const))).values(),
];

function addParameterOptions(command: Command): void {
  for (const parameter of allParameters) {
    const users = questions.filter(({ parameters }) => parameters.some(({ name }) => name === parameter.name));
    const text = `${says(parameter)} [${users.map(({ id }) => id).join(", ")}]`;
    const option = new Option(`${optionName(parameter)} <${valueForm(parameter)}>`, text);
    command.addOption(option.helpGroup("Parameters, each with the questions that have it:"));
  }
}

function answerExamples(): string {
  const asked = `feedpath ask ${questions[0]?.id}`;
  const withUnit = questions
    .flatMap(({ id, parameters }) => parameters.map((parameter) => ({ id, parameter })))
    .find(({ parameter }) => exampleValue(parameter).startsWith('"'));
  const parameterExample: readonly [string, string] | null = withUnit
    ? [
        `feedpath ask ${withUnit.id} mine.yaml ${optionName(withUnit.parameter)} ${exampleValue(withUnit.parameter)}`,
        "with a parameter; quotes keep value and unit together",
      ]
    : null;
  const list = questions.map(({ id, asked: words }) => `  ${id.padEnd(10)} ${words}`).join("\n");
  return `\nQuestions:\n${list}\n${examples(
    [`${asked} mine.yaml`, "the answer in words"],
    [`${asked} mine.yaml --sheet answer.html`, "the answer as a page, to read, print or send"],
    [`${asked} mine.yaml --figure stage.svg`, "the picture alone"],
    [`${asked} mine.yaml --json`, "everything, for another program"],
    ...(parameterExample ? [parameterExample] : []),
  )}`;
}

function answer(
  question: Question,
  station: Station,
  normalised: string,
  parameters: Parameters,
  terminal: Terminal,
): Promise<Answer | Refusal> {
  const threads = openSolverThreads();
  const context = {
    program: version,
    catalogue: catalogueVersion,
    fileHash: createHash("sha256").update(normalised).digest("hex"),
    lines: lineCatalogue,
    kept: threads.memory,
  };
  const progress = progressLine(terminal.quiet, process.stderr);
  return drive(question.run(station, parameters, context), progress.show, threads).finally(() => {
    threads.pool.close();
    progress.clear();
  });
}

function tellRefusal(refusal: Refusal, terminal: Terminal): number {
  if (terminal.json) terminal.printJson(refusal);
  else terminal.warn(refusalText(refusal));
  return exitStatus.refused;
}

async function ask(id: string, file: string, options: AskOptions, terminal: Terminal): Promise<number> {
  const question = chosenQuestion(id);
  const parameters = readParameters(question, allParameters, options);
  for (const output of [options.sheet, options.film, ...(options.figure ?? [])])
    if (output !== undefined) checkPlaceForFile(output);
  const { text, station, normalised } = await stationFrom(file);
  if (options.band !== undefined) checkBand(station, options.band);
  const asked = options.band === undefined ? parameters : { ...parameters, band: options.band };
  const result = await answer(question, station, normalised, asked, terminal);
  if ("refused" in result) return tellRefusal(result, terminal);
  if (options.sheet !== undefined) writeSheet(options.sheet, result, text, terminal);
  writeFigures(options.figure ?? [], result, terminal);
  if (options.film !== undefined) writeFilm(options.film, result, terminal);
  if (options.frames !== undefined) await writeFrames(options.frames, result, terminal);
  if (terminal.json) terminal.printJson(withFigures(result));
  else terminal.print(answerText(result));
  return exitStatus.answered;
}

const collect = (value: string, before: readonly string[] = []): readonly string[] => [...before, value];

export const addAsk: AddCommand = (program, terminal, done) => {
  const command = program
    .command("ask")
    .summary("ask a question of a station")
    .description("Works the station out and answers one question about it.")
    .argument("<question>", "one of the questions below")
    .argument("<station>", 'station file, or "-" for standard input')
    .option("--json", "print the answer as one JSON document")
    .option("--sheet <file.html>", "write the answer as a self-contained page")
    .option("--figure <file.svg>", "write one figure: the one named like the file, else the first; repeatable", collect)
    .option("--film <file.svg>", "write the film of an answer that has one, as a picture that moves by itself")
    .option("--frames <folder>", "write every moment of that film as a numbered PNG")
    .option("--band <name>", "which band, where the file has several")
    .option("--quiet", "no progress, no remarks");
  addParameterOptions(command);
  command.addHelpText("after", answerExamples);
  command.action(async (id: string, file: string, options: AskOptions) => done(await ask(id, file, options, terminal)));
};
