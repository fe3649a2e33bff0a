import { commandProblem, problemsForPeople } from "./commandProblem";
import { exitStatus } from "./exitStatus";
import type { ProblemsFound } from "./problemsFound";
import type { Terminal } from "./terminal";
import { version } from "./version";

/** The one JSON document where there is neither an answer nor a mistake of the caller's. */
function printJsonRemark(message: string, expected: string, terminal: Terminal): void {
  if (terminal.json) {
    terminal.printJson({ problems: [commandProblem({ place: "", found: "", expected, message })] });
  }
}

export function tellProblems({ problems }: ProblemsFound, terminal: Terminal): number {
  if (terminal.json) terminal.printJson({ problems });
  else terminal.warn(problemsForPeople(problems));
  return exitStatus.problems;
}

export function tellDefect(error: unknown, args: readonly string[], terminal: Terminal): number {
  const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
  const message =
    "This is a defect of Feedpath, not of your file or your command. Please report it with the station file and the lines below.";
  printJsonRemark(`${message}\n${trace}`, "a report to the Feedpath authors", terminal);
  terminal.warn(
    `${message}\n\nfeedpath ${version}, Node ${process.versions.node}\ncommand: feedpath ${args.join(" ")}\n${trace}`,
  );
  return exitStatus.defect;
}

export function tellInterrupted(terminal: Terminal): number {
  const message = "Interrupted before the answer was complete.";
  printJsonRemark(message, "the command again", terminal);
  // The line with the progress may stand there unfinished.
  terminal.warn(process.stderr.isTTY ? `\n${message}` : message);
  return exitStatus.interrupted;
}
