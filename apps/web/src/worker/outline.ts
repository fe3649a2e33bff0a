/** Where the values of a station stand in its text, so that the page can show them in the file's order and change them in place. */
import { isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument, type YAMLMap } from "yaml";
import type { OutlineEntry, OutlineValue } from "./messages";

/** Values of one entry that find a place in the row; the file itself holds the rest. */
const mostValues = 4;
const mostOfTransmitter = 2;

/** Entries of a text that is known to be a valid station file, in the file's order. */
export function outlineEntries(text: string): readonly OutlineEntry[] {
  const lines = new LineCounter();
  const root = parseDocument(text, { lineCounter: lines }).contents;
  if (!isMap(root)) return [];
  const found: OutlineEntry[] = [];
  const outline: Outline = {
    text,
    lineCount: 0,
    add: (label, node, values) => {
      const { line } = lines.linePos(node.range?.[0] ?? 0);
      found.push({ label, line, values: values.slice(0, mostValues) });
    },
  };
  for (const { key, value } of pairsOf(root)) if (value) topEntry(outline, key, value);
  return found;
}

interface Outline {
  readonly text: string;
  /** Lines of the path so far: those without a name are counted. */
  lineCount: number;
  readonly add: (label: string, node: Node, values: readonly OutlineValue[]) => void;
}

function topEntry(outline: Outline, key: string, node: Node): void {
  const { text, add } = outline;
  if (key === "transmitter") add(key, node, leaves(text, node, "").slice(0, mostOfTransmitter));
  if (key === "ground") add(key, node, leaves(text, node, ""));
  if (key === "path" && isSeq(node)) pathEntries(outline, node.items as Node[]);
  if (key === "antenna") antennaEntry(outline, node);
  if (key === "antennas" && isMap(node)) for (const { value } of pairsOf(node)) if (value) antennaEntry(outline, value);
}

const pairsOf = (map: YAMLMap): { key: string; value: Node | null }[] =>
  (map.items as Pair<Node, Node | null>[]).map((pair) => ({
    key: isScalar(pair.key) ? String(pair.key.value) : "",
    value: pair.value,
  }));

function pathEntries(outline: Outline, items: readonly Node[]): void {
  for (const item of items) {
    if (!isMap(item)) continue;
    const pairs = pairsOf(item);
    const kind = pairs[0]?.key ?? "";
    if (kind === "line") outline.lineCount += 1;
    if (kind !== "feed")
      outline.add(partLabel(pairs, kind, outline.lineCount), item, partValues(outline.text, pairs, kind));
    const branches = pairs.find(({ key }) => key === "positions" || key === "branches")?.value;
    if (isMap(branches))
      for (const { value } of pairsOf(branches)) if (isSeq(value)) pathEntries(outline, value.items as Node[]);
  }
}

type Pairs = ReturnType<typeof pairsOf>;

/** Its name, else its kind; lines are counted, as in the answers. */
function partLabel(pairs: Pairs, kind: string, lineCount: number): string {
  const named = pairs.find(({ key }) => key === "name")?.value;
  if (isScalar(named)) return String(named.value);
  return kind === "line" ? `line ${lineCount}` : kind;
}

const notInRow = new Set(["positions", "branches", "name", "note", "route"]);

const partValues = (text: string, pairs: Pairs, kind: string): OutlineValue[] =>
  pairs
    .filter(({ key }) => !notInRow.has(key))
    .flatMap(({ key, value }) => (value ? leaves(text, value, key === kind ? "" : key) : []));

function antennaEntry({ text, add }: Outline, node: Node): void {
  if (!isMap(node)) return;
  const [shape] = pairsOf(node);
  if (shape?.value) add(shape.key, node, leaves(text, shape.value, ""));
}

/** "capacitors" for the range of the capacitors, "capacitors Q" for their Q. */
const keyWithin = (outer: string, inner: string): string =>
  outer === "" ? inner : inner === "range" ? outer : `${outer} ${inner}`;

/** Scalars below a node in order, each with the key it stands under; places and lists stay one value, as written. */
function leaves(text: string, node: Node, key: string): OutlineValue[] {
  if (isMap(node))
    return pairsOf(node).flatMap(({ key: inner, value }) => (value ? leaves(text, value, keyWithin(key, inner)) : []));
  const range = node.range;
  if (!range) return [];
  const written = text.slice(range[0], range[1]).trimEnd();
  return written === "" || written.length > 60
    ? []
    : [{ key, text: written, from: range[0], to: range[0] + written.length }];
}
