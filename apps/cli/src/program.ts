import { questions } from "@feedpath/engine";
import { Command, CommanderError } from "commander";
import { addAsk } from "./commands/ask";
import { addBegin } from "./commands/begin";
import { addCatalogue } from "./commands/catalogue";
import { addCheck } from "./commands/check";
import { examples } from "./commands/command";
import { addQuestions } from "./commands/questions";
import { addSchema } from "./commands/schema";
import { wrongCommand } from "./tell/commandProblem";
import { exitStatus } from "./tell/exitStatus";
import type { Terminal } from "./tell/terminal";
import { version } from "./tell/version";

const beginning = (): string =>
  examples(
    ["feedpath begin mine.yaml", "a station file to change into your own"],
    ["feedpath check mine.yaml", "is the file right?"],
    ["feedpath questions", "what can be asked"],
    [`feedpath ask ${questions[0]?.id} mine.yaml`, "ask it"],
    [`feedpath ask ${questions[0]?.id} mine.yaml --sheet answer.html`, "and keep the answer as a page"],
  ).replace("Examples:", "Begin here:");

function newProgram(terminal: Terminal, errorOutput: string[]): Command {
  return new Command("feedpath")
    .description("Works out a radio station from transmitter to sky and answers questions about it.")
    .version(version)
    .exitOverride()
    .configureOutput({
      writeOut: terminal.print,
      writeErr: (text) => errorOutput.push(text),
      // A mistake in the command is told like every other problem, by main.
      outputError: () => undefined,
    })
    .showSuggestionAfterError()
    .addHelpText("after", beginning);
}

/** What a mistyped command lacks, in words for people. */
function mistake(error: CommanderError, args: readonly string[]): Error {
  const said = error.message.replace(/^error: /, "").replace(/\s*\n\s*/g, " ");
  const [first = ""] = args;
  const isQuestion = questions.some(({ id }) => id === first);
  const hint: Record<string, string> = {
    "commander.unknownCommand": isQuestion
      ? `"${first}" is a question: feedpath ask ${args.join(" ")}`
      : "See: feedpath --help",
    "commander.excessArguments": 'Put quotes around a value or a name with a space in it, such as "20 deg".',
  };
  const expected = hint[error.code] ?? `See: feedpath ${first.startsWith("-") ? "" : `${first} `}--help`;
  const message = `${said.charAt(0).toUpperCase()}${said.slice(1)}${/[.)?]$/.test(said) ? "" : "."} ${expected}`;
  return wrongCommand({ place: "command", found: args.join(" "), expected, message });
}

/** Runs one command and returns its exit status. Throws ProblemsFound for a wrong command or file. */
export async function runCommand(args: readonly string[], terminal: Terminal): Promise<number> {
  const errorOutput: string[] = [];
  const program = newProgram(terminal, errorOutput);
  let status: number = exitStatus.answered;
  const done = (result: number): void => {
    status = result;
  };
  for (const add of [addAsk, addCheck, addQuestions, addCatalogue, addBegin, addSchema]) add(program, terminal, done);
  try {
    await program.parseAsync([...args], { from: "user" });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode === 0) return exitStatus.answered;
    if (error.code !== "commander.help") throw mistake(error, args);
    terminal.warn(errorOutput.join(""));
    return exitStatus.problems;
  }
  return status;
}
