import { runCommand } from "./program";
import { commandProblem, problemsForPeople } from "./tell/commandProblem";
import { exitStatus } from "./tell/exitStatus";
import { ProblemsFound } from "./tell/problemsFound";
import { endQuietlyWhenNobodyReads, openTerminal } from "./tell/terminal";
import { version } from "./tell/version";

const args = process.argv.slice(2);
const terminal = openTerminal(args);

function tellProblems({ problems }: ProblemsFound): number {
  if (terminal.json) terminal.printJson({ problems });
  else terminal.warn(problemsForPeople(problems));
  return exitStatus.problems;
}

/** The one JSON document where there is neither an answer nor a mistake of the caller's. */
function printJsonRemark(message: string, expected: string): void {
  if (terminal.json) {
    terminal.printJson({ problems: [commandProblem({ place: "", found: "", expected, message })] });
  }
}

function tellDefect(error: unknown): number {
  const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
  const message =
    "This is a defect of Feedpath, not of your file or your command. Please report it with the station file and the lines below.";
  printJsonRemark(`${message}\n${trace}`, "a report to the Feedpath authors");
  terminal.warn(
    `${message}\n\nfeedpath ${version}, Node ${process.versions.node}\ncommand: feedpath ${args.join(" ")}\n${trace}`,
  );
  return exitStatus.defect;
}

function interrupt(): void {
  const message = "Interrupted before the answer was complete.";
  printJsonRemark(message, "the command again");
  terminal.warn(message);
  process.exit(exitStatus.interrupted);
}

endQuietlyWhenNobodyReads();
process.on("SIGINT", interrupt);
try {
  process.exitCode = await runCommand(args, terminal);
} catch (error) {
  process.exitCode = error instanceof ProblemsFound ? tellProblems(error) : tellDefect(error);
}
