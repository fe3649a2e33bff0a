/** The file's text as lines, with what is wrong on each. */
import type { Problem } from "@feedpath/engine";

export interface Line {
  /** Counts from 1. */
  readonly number: number;
  readonly text: string;
  /** Offset of its first character in the file. */
  readonly from: number;
  readonly problems: readonly Problem[];
}

export function linesOf(text: string, problems: readonly Problem[]): readonly Line[] {
  let from = 0;
  return text.split("\n").map((line, index) => {
    const start = from;
    from += line.length + 1;
    return { number: index + 1, text: line, from: start, problems: problems.filter((p) => p.line === index + 1) };
  });
}

/** Offsets of what a problem points at; a problem at a line's end takes at least one character. */
export function stretchOf(lines: readonly Line[], problem: Problem): { readonly from: number; readonly to: number } {
  const line = lines[Math.min(Math.max(problem.line, 1), lines.length) - 1];
  if (!line) return { from: 0, to: 0 };
  const clamp = (column: number) => line.from + Math.min(Math.max(column - 1, 0), line.text.length);
  return { from: clamp(problem.column), to: Math.max(clamp(problem.column), clamp(problem.endColumn)) };
}

export interface Piece {
  readonly text: string;
  readonly from: number;
  readonly look: "key" | "comment" | "words";
  readonly wrong: boolean;
}

/** A line cut where its look changes: keys, comments, and what is wrong. */
export function piecesOf(line: Line): readonly Piece[] {
  const { text } = line;
  const comment = text.search(/(^|\s)#/);
  const words = comment < 0 ? text.length : comment;
  const keyEnd = /^(?:\s*-\s+)?\s*[^{}[\],#:]+:(?=\s|$)/.exec(text)?.[0].length ?? 0;
  const dash = /^\s*(?:-\s+)?/.exec(text)?.[0].length ?? 0;
  const cuts = new Set([0, text.length, words, keyEnd > 0 ? dash : 0, keyEnd]);
  const wrong = line.problems.map((p) => ({ from: p.column - 1, to: Math.max(p.endColumn - 1, p.column) }));
  for (const { from, to } of wrong) cuts.add(Math.min(from, text.length)).add(Math.min(to, text.length));
  const places = [...cuts].sort((a, b) => a - b);
  return places.slice(0, -1).map((from, index) => ({
    text: text.slice(from, places[index + 1]),
    from,
    look: from >= words ? "comment" : from >= dash && from < keyEnd ? "key" : "words",
    wrong: wrong.some((stretch) => from >= stretch.from && from < stretch.to),
  }));
}
