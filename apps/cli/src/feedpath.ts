import { runCommand } from "./program";
import { tellDefect, tellProblems } from "./tell/outcome";
import { ProblemsFound } from "./tell/problemsFound";
import type { Terminal } from "./tell/terminal";

/** The whole program but for its process: runs a command, tells how it went, returns the exit status. Never throws. */
export async function feedpath(args: readonly string[], terminal: Terminal): Promise<number> {
  try {
    return await runCommand(args, terminal);
  } catch (error) {
    return error instanceof ProblemsFound ? tellProblems(error, terminal) : tellDefect(error, args, terminal);
  }
}
