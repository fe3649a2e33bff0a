import { writeFileSync } from "node:fs";
import { questions, starters } from "@feedpath/engine";
import { nearestWord, readStation } from "@feedpath/station-file";
import { fromCaller } from "../files/callerFolder";
import { exampleNames, exampleText, exampleTitle } from "../files/examples";
import { checkPlaceForFile } from "../files/replaceFile";
import { wrongCommand } from "../tell/commandProblem";
import { exitStatus } from "../tell/exitStatus";
import type { Terminal } from "../tell/terminal";
import { antennaText, bothGiven, frequencyAlone } from "./beginAntenna";
import { type AddCommand, examples } from "./command";

/** The plainest station: one dipole, one line. */
const usual = "harbour-school-club";

function checkExample(name: string): void {
  const names = exampleNames();
  if (names.includes(name)) return;
  throw wrongCommand({
    place: "--from",
    found: name,
    expected: `one of ${names.join(", ")}`,
    message: `There is no example "${name}". The examples are ${names.join(", ")}.`,
    nearest: nearestWord(name, names),
  });
}

function writeNew(file: string, text: string): void {
  checkPlaceForFile(file);
  try {
    writeFileSync(fromCaller(file), text, { flag: "wx" });
  } catch (error) {
    const exists = error instanceof Error && "code" in error && error.code === "EEXIST";
    const message = exists
      ? `"${file}" is there already and is left as it is. Choose another name.`
      : `"${file}" cannot be written: ${error instanceof Error ? error.message : String(error)}.`;
    throw wrongCommand({ place: "file", found: file, expected: "the name of a new file", message });
  }
}

/** Files the example names; they stay where they are, so the new file must be told its own. */
function filesNamed(text: string): readonly string[] {
  const names: string[] = [];
  readStation(text, {
    fileName: "example",
    readFile: (name: string) => {
      names.push(name);
      return null;
    },
  });
  return names;
}

interface Asked {
  readonly from?: string;
  readonly antenna?: string;
  readonly frequency?: string;
}

/** Writes the text, or prints it where no file is named. */
function handOut(file: string | undefined, text: string, what: string, terminal: Terminal): number {
  if (file === undefined) {
    terminal.print(text);
    return exitStatus.answered;
  }
  writeNew(file, text);
  const files = filesNamed(text);
  const missing =
    files.length > 0 ? `\nThe example names ${files.join(", ")}: put your own there, or take the lines out.` : "";
  terminal.remark(
    `Wrote ${file}, ${what}. Change it to your own station, then:\n` +
      `  feedpath check ${file}\n  feedpath ask ${questions[0]?.id} ${file}${missing}`,
  );
  return exitStatus.answered;
}

function begin(file: string | undefined, asked: Asked, terminal: Terminal): number {
  const { from = usual, antenna, frequency } = asked;
  if (antenna !== undefined) {
    if (asked.from !== undefined) throw bothGiven(antenna);
    const text = antennaText(antenna, frequency);
    return handOut(file, text, `${antenna} with its usual dimensions`, terminal);
  }
  if (frequency !== undefined) throw frequencyAlone(frequency);
  checkExample(from);
  return handOut(file, exampleText(from), `a copy of the example "${from}"`, terminal);
}

function listOfExamples(): string {
  const names = exampleNames();
  const width = Math.max(...names.map(({ length }) => length));
  return `\nThe examples:\n${names.map((name) => `  ${name.padEnd(width)}   ${exampleTitle(name)}`).join("\n")}\n`;
}

function listOfAntennas(): string {
  const width = Math.max(...starters.map(({ name }) => name.length));
  return `\nThe antennas:\n${starters.map(({ name, says }) => `  ${name.padEnd(width)}   ${says}`).join("\n")}\n`;
}

export const addBegin: AddCommand = (program, terminal, done) => {
  program
    .command("begin")
    .summary("start a new station file from an example or a usual antenna")
    .description(
      "Writes a new station file to change into your own: a copy of an example, or a usual antenna with its usual dimensions at a frequency. A file that exists is never touched; without a file the text is printed.",
    )
    .argument("[file]", "name of the new file, such as mine.yaml")
    .option("--from <example>", `which example (default: "${usual}")`)
    .option("--antenna <name>", "which antenna instead of an example")
    .option("--frequency <value>", 'its frequency, such as "7.1 MHz"')
    .option("--quiet", "no remarks")
    .addHelpText("after", listOfAntennas)
    .addHelpText("after", listOfExamples)
    .addHelpText(
      "after",
      examples(
        ["feedpath begin mine.yaml", "a copy of the plainest example"],
        ["feedpath begin mine.yaml --from rooftop-flat", "a copy of another"],
        ['feedpath begin mine.yaml --antenna "inverted L" --frequency 7.1MHz', "a usual antenna"],
      ),
    )
    .action((file: string | undefined, asked: Asked) => done(begin(file, asked, terminal)));
};
