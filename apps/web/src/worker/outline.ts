/** Where the values of a station stand in its text, so that the page can show them in the file's order and change them in place. */
import { visibleLine } from "@feedpath/report";
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
    counts: new Map(),
    add: (label, names, node, values) => {
      const { line } = lines.linePos(node.range?.[0] ?? 0);
      found.push({ label: visibleLine(label), names, line, values: values.slice(0, mostValues) });
    },
  };
  for (const { key, value } of pairsOf(root)) if (value) topEntry(outline, key, value);
  return found;
}

interface Outline {
  readonly text: string;
  /** Parts without a name so far, by kind: they are called by kind and count. */
  readonly counts: Map<string, number>;
  readonly add: (label: string, names: readonly string[], node: Node, values: readonly OutlineValue[]) => void;
}

function topEntry(outline: Outline, key: string, node: Node): void {
  const { text, add } = outline;
  if (key === "transmitter") add(key, [key], node, leaves(text, node, "").slice(0, mostOfTransmitter));
  if (key === "ground") add(key, ["soil"], node, leaves(text, node, ""));
  if (key === "path" && isSeq(node)) pathEntries(outline, node.items as Node[]);
  if (key === "antenna") antennaEntry(outline, node, []);
  if (key === "antennas" && isMap(node))
    for (const named of pairsOf(node)) if (named.value) antennaEntry(outline, named.value, [named.key]);
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
    const name = partName(pairs, kind, outline.counts);
    if (kind !== "feed") outline.add(name.label, [name.full], item, partValues(outline.text, pairs, kind));
    const branches = pairs.find(({ key }) => key === "positions" || key === "branches")?.value;
    if (isMap(branches))
      for (const { value } of pairsOf(branches)) if (isSeq(value)) pathEntries(outline, value.items as Node[]);
  }
}

type Pairs = ReturnType<typeof pairsOf>;

/** Kinds whose own value is the part's name. */
const namedByKind = new Set(["meter", "two-port", "switch", "tee", "band splitter"]);

/** `full` as in the answers: the name, or kind and count. `label` leaves the count out where only lines come in numbers. */
function partName(pairs: Pairs, kind: string, counts: Map<string, number>): { label: string; full: string } {
  const named = pairs.find(({ key }) => key === "name")?.value;
  if (isScalar(named)) return { label: String(named.value), full: String(named.value) };
  const own = pairs[0]?.value;
  if (namedByKind.has(kind) && isScalar(own)) return { label: kind, full: String(own.value) };
  const count = (counts.get(kind) ?? 0) + 1;
  counts.set(kind, count);
  const full = `${kind} ${count}`;
  return { label: kind === "line" || count > 1 ? full : kind, full };
}

const notInRow = new Set(["positions", "branches", "name", "note", "route"]);

const partValues = (text: string, pairs: Pairs, kind: string): OutlineValue[] =>
  pairs
    .filter(({ key }) => !notInRow.has(key))
    .flatMap(({ key, value }) => (value ? leaves(text, value, key === kind ? "" : key) : []));

function antennaEntry({ text, add }: Outline, node: Node, names: readonly string[]): void {
  if (!isMap(node)) return;
  const [shape] = pairsOf(node);
  if (shape?.value) add(shape.key, [shape.key, "wires", ...names], node, leaves(text, shape.value, ""));
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
