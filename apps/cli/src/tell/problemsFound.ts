import type { Problem } from "@feedpath/engine";

/** Thrown when the file or the command is wrong; the program then tells the problems and ends with status 2. */
export class ProblemsFound extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map((problem) => problem.message).join("\n"));
    this.problems = problems;
  }
}
