import type { Problem } from "@feedpath/engine";
import { visibleLine } from "../words/visible";
import { wrapped } from "./layout";

function problemText(problem: Problem): string {
  const { file, line, column, message, found, expected, nearest, mend } = problem;
  const more: readonly string[] = [
    ...(message.includes(found) || found === "" ? [] : [`found: ${found}`]),
    ...(message.includes(expected) || expected === "" ? [] : [`expected: ${expected}`]),
    ...(nearest === null || message.includes(nearest) ? [] : [`nearest: ${nearest}`]),
    ...(mend === null || mend === nearest ? [] : [`write: ${mend}`]),
  ];
  return [
    `${visibleLine(file)}:${line}:${column}`,
    wrapped(visibleLine(message), "  "),
    ...more.map((text) => wrapped(visibleLine(text), "    ")),
  ].join("\n");
}

/** All problems of a file or command (exit 2), each with file:line:column, what was found and expected, and the nearest word. */
export function problemsText(problems: readonly Problem[]): string {
  const count = problems.length === 1 ? "1 problem" : `${problems.length} problems`;
  return `${[...problems.map(problemText), `${count}.`].join("\n")}\n`;
}
