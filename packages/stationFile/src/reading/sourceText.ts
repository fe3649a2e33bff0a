/** The text of a file with its lines, and the tree of its keys and values with their places in the text. */
import type { Problem } from "@feedpath/engine";
import type { Fault } from "../units/fault";
import { shown } from "../units/nearest";

export type Key = string | number;
export type KeyPath = readonly Key[];

export interface SourceNode {
  /** Offsets in the text: of the key that leads here (null in lists), and of the value. */
  readonly key: readonly [number, number] | null;
  readonly range: readonly [number, number];
  readonly children: ReadonlyMap<Key, SourceNode>;
}

export interface SourceText {
  readonly file: string;
  readonly text: string;
  /** Offset of the first character of each line. */
  readonly lineStarts: readonly number[];
}

export function sourceText(file: string, text: string): SourceText {
  const lineStarts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) lineStarts.push(at + 1);
  return { file, text, lineStarts };
}

/** Line and column, both from 1, of an offset. */
function position(source: SourceText, offset: number): { readonly line: number; readonly column: number } {
  let low = 0;
  let high = source.lineStarts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((source.lineStarts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: offset - (source.lineStarts[low] ?? 0) + 1 };
}

/** A problem about a stretch of text; what runs over several lines is marked on its first. */
export function problemAt(source: SourceText, range: readonly [number, number], place: string, fault: Fault): Problem {
  const { text } = source;
  const from = Math.min(Math.max(range[0], 0), text.length);
  const lineEnd = text.indexOf("\n", from);
  const stop = Math.min(Math.max(range[1], from), lineEnd < 0 ? text.length : lineEnd);
  const found = text.slice(from, stop).trimEnd();
  const { line, column } = position(source, from);
  const whole = range[1] <= stop;
  return {
    file: source.file,
    line,
    column,
    endColumn: column + found.length,
    place,
    found: shown(found),
    expected: fault.expected,
    message: fault.message,
    nearest: fault.nearest,
    mend: whole ? fault.mend : null,
  };
}

/** The node at a path, or its nearest ancestor that stands in the file. */
export function nodeAt(root: SourceNode, path: KeyPath): SourceNode {
  let node = root;
  for (const key of path) {
    const child = node.children.get(key);
    if (!child) break;
    node = child;
  }
  return node;
}

/** "antenna.dipole.length", "path.2.line": keys joined by dots, list items counted from 1. */
export const placeOf = (path: KeyPath): string =>
  path.map((key) => (typeof key === "number" ? String(key + 1) : key)).join(".");
