import type { Command } from "commander";
import type { Terminal } from "../tell/terminal";

/** Adds one command to the program. Its action returns the exit status through `done`. */
export type AddCommand = (program: Command, terminal: Terminal, done: (status: number) => void) => void;

/** Help that follows the options: examples one can type. */
export const examples = (...lines: readonly (readonly [string, string])[]): string => {
  const width = Math.max(...lines.map(([line]) => line.length));
  return `\nExamples:\n${lines.map(([line, says]) => `  ${line.padEnd(width)}   ${says}`.trimEnd()).join("\n")}\n`;
};
