import { writeFileSync } from "node:fs";
import { questions } from "@feedpath/engine";
import { nearestWord, readStation } from "@feedpath/station-file";
import { fromCaller } from "../files/callerFolder";
import { exampleNames, exampleText, exampleTitle } from "../files/examples";
import { checkPlaceForFile } from "../files/replaceFile";
import { wrongCommand } from "../tell/commandProblem";
import { exitStatus } from "../tell/exitStatus";
import type { Terminal } from "../tell/terminal";
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

function begin(file: string, from: string, terminal: Terminal): number {
  checkExample(from);
  const text = exampleText(from);
  writeNew(file, text);
  const files = filesNamed(text);
  const missing =
    files.length > 0 ? `\nThe example names ${files.join(", ")}: put your own there, or take the lines out.` : "";
  terminal.remark(
    `Wrote ${file}, a copy of the example "${from}". Change it to your own station, then:\n` +
      `  feedpath check ${file}\n  feedpath ask ${questions[0]?.id} ${file}${missing}`,
  );
  return exitStatus.answered;
}

function listOfExamples(): string {
  const names = exampleNames();
  const width = Math.max(...names.map(({ length }) => length));
  return `\nThe examples:\n${names.map((name) => `  ${name.padEnd(width)}   ${exampleTitle(name)}`).join("\n")}\n`;
}

export const addBegin: AddCommand = (program, terminal, done) => {
  program
    .command("begin")
    .summary("start a new station file from an example")
    .description(
      "Writes a new station file, a copy of an example to change into your own. A file that exists is never touched.",
    )
    .argument("<file>", "name of the new file, such as mine.yaml")
    .option("--from <example>", "which example", usual)
    .option("--quiet", "no remarks")
    .addHelpText("after", listOfExamples)
    .addHelpText(
      "after",
      examples(
        ["feedpath begin mine.yaml", "a copy of the plainest example"],
        ["feedpath begin mine.yaml --from rooftop-flat", "a copy of another"],
      ),
    )
    .action((file: string, { from }: { from: string }) => done(begin(file, from, terminal)));
};
