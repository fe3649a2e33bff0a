import type { Problem } from "@feedpath/engine";
import { problemsText } from "@feedpath/report";
import { ProblemsFound } from "./problemsFound";

const commandLine = "command line";

/** What is wrong with a command; `place` is the option or argument. */
export interface Mistake {
  readonly place: string;
  readonly found: string;
  readonly expected: string;
  readonly message: string;
  readonly nearest?: string | null;
}

/** A mistake in the command, in the shape of a problem of a file. */
export function commandProblem(mistake: Mistake): Problem {
  const { nearest = null } = mistake;
  return { ...mistake, file: commandLine, line: 1, column: 1, endColumn: 1, nearest, mend: nearest };
}

export const wrongCommand = (mistake: Mistake): ProblemsFound => new ProblemsFound([commandProblem(mistake)]);

function mistakeText({ message, nearest }: Problem): string {
  return nearest === null ? message : `${message}\nDid you mean "${nearest}"?`;
}

/** Problems for people: of the command as sentences, of a file with place, found and expected. */
export function problemsForPeople(problems: readonly Problem[]): string {
  const mistakes = problems.filter(({ file }) => file === commandLine);
  const faults = problems.filter(({ file }) => file !== commandLine);
  const parts = [...mistakes.map(mistakeText), ...(faults.length > 0 ? [problemsText(faults)] : [])];
  return parts.join("\n");
}
