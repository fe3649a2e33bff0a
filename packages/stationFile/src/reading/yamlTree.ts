/** Strict YAML 1.2 to a plain tree of texts, lists and maps. Every scalar stays the text that was written. */
import type { Problem } from "@feedpath/engine";
import { type Document, isMap, isScalar, isSeq, parseDocument } from "yaml";
import { shown } from "../units/nearest";
import { commaPairs, joinedByComma } from "./flowComma";
import { limits } from "./limits";
import { type Key, type KeyPath, placeOf, problemAt, type SourceNode, type SourceText } from "./sourceText";
import { keyName, refuseDecoration, say, scalarText, type Tell } from "./strictYaml";

export type Tree = string | null | readonly Tree[] | { readonly [key: string]: Tree };

export interface YamlTree {
  readonly tree: Tree;
  readonly root: SourceNode;
  readonly problems: readonly Problem[];
}

type Node = Document["contents"];

interface Walk {
  readonly source: SourceText;
  readonly tell: Tell;
  nodes: number;
  /** A cap was met: what follows would only be told about what was left out. */
  capped: boolean;
}

interface Branch {
  readonly tree: Tree;
  readonly node: SourceNode;
}

/** The commonest slips of syntax in plain words, by the parser's code. */
const plainWords: Readonly<Record<string, string>> = {
  MULTIPLE_DOCS: "A station file is one document: a second begins here.",
  BAD_INDENT: "The indentation does not fit here, or a bracket opened above is not closed.",
  MISSING_CHAR: "A bracket, quote, comma or colon is missing before this.",
  BLOCK_AS_IMPLICIT_KEY:
    "A second colon on this line: write inner keys in braces, { key: value }, or on lines of their own.",
  TAB_AS_INDENT: "A tab indents this line: indent with spaces.",
};

const shortened = (message: string): string => message.slice(0, 200).replace(/\.$/, "");

/** Parses the text. Syntax errors come back alone: what follows from a broken structure would only confuse. */
export function yamlTree(source: SourceText): YamlTree {
  const document = parseDocument(source.text, {
    version: "1.2",
    schema: "failsafe",
    uniqueKeys: false,
    prettyErrors: false,
    merge: false,
    logLevel: "error",
  });
  const problems = document.errors.slice(0, limits.problems).map((error) => {
    const message = plainWords[error.code] ?? `${shortened(error.message)}.`;
    return problemAt(source, error.pos, "", say(message, "YAML 1.2"));
  });
  const tell: Tell = (range, path, fault) => {
    if (problems.length < limits.problems) problems.push(problemAt(source, range, placeOf(path), fault));
  };
  const walk: Walk = { source, tell, nodes: 0, capped: false };
  const start: readonly [number, number] = [0, 0];
  if (problems.length > 0) return { tree: null, root: { key: null, range: start, children: new Map() }, problems };
  const { tree, node } = branch(walk, document.contents, [], start, null);
  return { tree: walk.capped ? null : tree, root: node, problems };
}

function branch(
  walk: Walk,
  node: Node | unknown,
  path: KeyPath,
  missing: readonly [number, number],
  key: readonly [number, number] | null,
): Branch {
  const range = rangeOf(node) ?? missing;
  const empty: Branch = { tree: null, node: { key, range, children: new Map() } };
  walk.nodes++;
  if (walk.nodes > limits.nodes) {
    walk.capped = true;
    if (walk.nodes === limits.nodes + 1) {
      walk.tell(range, path, say(`The file has more than ${limits.nodes} keys and values.`, "a smaller file"));
    }
    return empty;
  }
  refuseDecoration(walk.tell, node, range, path);
  if (isScalar(node)) return { ...empty, tree: scalarText(node) };
  if (isSeq(node)) return list(walk, node.items, path, range, key);
  if (isMap(node)) return map(walk, node.items, path, range, key);
  return empty;
}

function rangeOf(node: unknown): readonly [number, number] | null {
  const range = (node as { readonly range?: readonly number[] | null } | null)?.range;
  return range?.[0] === undefined || range[1] === undefined ? null : [range[0], range[1]];
}

function tooMany(walk: Walk, count: number, range: readonly [number, number], path: KeyPath): boolean {
  if (count <= limits.entries) return false;
  walk.capped = true;
  walk.tell(range, path, say(`${count} entries stand here; at most ${limits.entries} are read.`, "fewer entries"));
  return true;
}

function list(
  walk: Walk,
  items: readonly unknown[],
  path: KeyPath,
  range: readonly [number, number],
  key: readonly [number, number] | null,
): Branch {
  const children = new Map<Key, SourceNode>();
  const trees: Tree[] = [];
  if (tooMany(walk, items.length, range, path)) return { tree: trees, node: { key, range, children } };
  const commas = joinedByComma(walk.source.text, items.map(rangeOf));
  for (const comma of commas.values()) walk.tell(comma.range, path, comma.fault);
  items.forEach((item, index) => {
    if (commas.has(index)) trees[trees.length - 1] = commas.get(index)?.fault.mend ?? null;
    if (commas.has(index)) return;
    const child = branch(walk, item, [...path, index], range, null);
    children.set(trees.length, child.node);
    trees.push(child.tree);
  });
  return { tree: trees, node: { key, range, children } };
}

function map(
  walk: Walk,
  pairs: readonly { readonly key: unknown; readonly value: unknown }[],
  path: KeyPath,
  range: readonly [number, number],
  key: readonly [number, number] | null,
): Branch {
  const children = new Map<Key, SourceNode>();
  const entries: Record<string, Tree> = {};
  const whole: Branch = { tree: entries, node: { key, range, children } };
  if (tooMany(walk, pairs.length, range, path)) return whole;
  const commas = commaPairs(walk.source.text, pairs, rangeOf);
  for (const comma of commas.values()) walk.tell(comma.range, path, comma.fault);
  pairs.forEach((pair, index) => {
    const comma = commas.get(index);
    if (comma) {
      // Read on with what was meant, so that the slip is told once.
      const before = Object.keys(entries).at(-1);
      if (before !== undefined) entries[before] = comma.fault.mend;
      return;
    }
    const keyRange = rangeOf(pair.key) ?? range;
    const name = keyName(walk.tell, pair.key, keyRange, path);
    if (name === null) return;
    if (Object.hasOwn(entries, name)) {
      walk.tell(keyRange, path, say(`The key "${shown(name)}" stands twice here.`, "each key once"));
      return;
    }
    const child = branch(walk, pair.value, [...path, name], keyRange, keyRange);
    entries[name] = child.tree;
    children.set(name, child.node);
  });
  return whole;
}
