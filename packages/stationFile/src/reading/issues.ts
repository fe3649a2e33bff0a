/** Issues of the schema as problems in the file. */
import type { Problem } from "@feedpath/engine";
import type * as z from "zod";
import type { FaultParams } from "../schema/faults";
import type { Fault } from "../units/fault";
import { type KeyPath, nodeAt, placeOf, problemAt, type SourceNode, type SourceText } from "./sourceText";

/** Where a problem about a path of the file is marked: its key, its value, or the nearest thing that stands there. */
export function markedRange(root: SourceNode, path: KeyPath, at: "key" | "value"): readonly [number, number] {
  const node = nodeAt(root, path);
  const empty = node.range[0] === node.range[1];
  return (at === "key" || empty) && node.key ? node.key : node.range;
}

type Issue = z.core.$ZodIssue;

const fault = (message: string, expected: string): Fault => ({ message, expected, nearest: null, mend: null });

function faultOf(issue: Issue, key: string): Fault {
  const { input } = issue;
  if (issue.code === "invalid_type") {
    const expected = issue.message;
    if (input === null || input === undefined) return fault(`"${key}" has no value. Expected: ${expected}.`, expected);
    const found = Array.isArray(input) ? "a list" : typeof input === "object" ? "keys with values" : "a single value";
    return fault(`"${key}" cannot be ${found}. Expected: ${expected}.`, expected);
  }
  if (issue.code === "too_small")
    return fault(`"${key}" needs at least ${issue.minimum} entries.`, `at least ${issue.minimum}`);
  return fault(issue.message, "");
}

const paramsOf = (issue: Issue): FaultParams | null =>
  issue.code === "custom" && issue.params?.fault !== undefined ? (issue.params as FaultParams) : null;

/** One problem per issue, in the order of the file. */
export function problemsOf(source: SourceText, root: SourceNode, issues: readonly Issue[]): readonly Problem[] {
  return issues.map((issue) => {
    const path = issue.path.map((key) => (typeof key === "symbol" ? String(key) : key));
    const names = path.filter((key) => typeof key === "string");
    const params = paramsOf(issue);
    const told = params?.fault ?? faultOf(issue, names.at(-1) ?? "station");
    return problemAt(source, markedRange(root, path, params?.at ?? "value"), placeOf(path), told);
  });
}
