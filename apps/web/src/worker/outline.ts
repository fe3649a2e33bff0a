/** Where the values of a station stand in its text, so that the page can show them in the file's order and change them in place. */
import { isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument, type YAMLMap } from "yaml";
import type { OutlineEntry, OutlineValue } from "./messages";

/** Values of one entry that find a place in the row; the file itself holds the rest. */
const mostValues = 4;
const mostOfTransmitter = 2;

/** Entries of a text that is known to be a valid station file, in the file's order. */
export function outlineEntries(text: string): readonly OutlineEntry[] {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines });
  const root = document.contents;
  if (!isMap(root)) return [];
  const line = (node: Node): number => lines.linePos(node.range?.[0] ?? 0).line;
  const counts = new Map<string, number>();
  const found: OutlineEntry[] = [];
  const entry = (label: string, node: Node, values: readonly OutlineValue[]) =>
    found.push({ label, line: line(node), values: values.slice(0, mostValues) });

  for (const pair of pairsOf(root)) {
    if (!pair.value) continue;
    if (pair.key === "transmitter") entry("transmitter", pair.value, leaves(text, pair.value, "").slice(0, mostOfTransmitter));
    if (pair.key === "path" && isSeq(pair.value)) pathEntries(text, pair.value.items as Node[], counts, entry);
    if (pair.key === "antenna") antennaEntry(text, pair.value, entry);
    if (pair.key === "antennas" && isMap(pair.value))
      for (const antenna of pairsOf(pair.value)) if (antenna.value) antennaEntry(text, antenna.value, entry);
    if (pair.key === "ground") entry("ground", pair.value, leaves(text, pair.value, ""));
  }
  return found;
}

type AddEntry = (label: string, node: Node, values: readonly OutlineValue[]) => void;

const pairsOf = (map: YAMLMap): { key: string; value: Node | null }[] =>
  (map.items as Pair<Node, Node | null>[]).map((pair) => ({
    key: isScalar(pair.key) ? String(pair.key.value) : "",
    value: pair.value,
  }));

function pathEntries(text: string, items: readonly Node[], counts: Map<string, number>, add: AddEntry): void {
  for (const item of items) {
    if (!isMap(item)) continue;
    const pairs = pairsOf(item);
    const kind = pairs[0]?.key ?? "";
    const branches = pairs.find(({ key }) => key === "positions" || key === "branches")?.value;
    const count = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, count);
    const named = pairs.find(({ key }) => key === "name")?.value;
    const label = isScalar(named) ? String(named.value) : kind === "line" ? `line ${count}` : kind;
    const shown = pairs.filter(({ key }) => !["positions", "branches", "name", "note", "route"].includes(key));
    if (kind !== "feed")
      add(
        label,
        item,
        shown.flatMap(({ key, value }) => (value ? leaves(text, value, key === kind ? "" : key) : [])),
      );
    if (isMap(branches))
      for (const branch of pairsOf(branches))
        if (isSeq(branch.value)) pathEntries(text, branch.value.items as Node[], counts, add);
  }
}

function antennaEntry(text: string, node: Node, add: AddEntry): void {
  if (!isMap(node)) return;
  const [shape] = pairsOf(node);
  if (shape?.value) add(shape.key, node, leaves(text, shape.value, ""));
}

/** Scalars below a node in order, each with the key it stands under; places and lists stay one value, as written. */
function leaves(text: string, node: Node, key: string): OutlineValue[] {
  if (isMap(node))
    return pairsOf(node).flatMap(({ key: inner, value }) => (value ? leaves(text, value, key ? key : inner) : []));
  const range = node.range;
  if (!range) return [];
  const written = text.slice(range[0], range[1]).trimEnd();
  return written === "" || written.length > 60 ? [] : [{ key, text: written, from: range[0], to: range[0] + written.length }];
}
