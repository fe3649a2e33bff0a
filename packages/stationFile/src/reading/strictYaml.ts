/** What YAML allows and a station file does not: anchors, aliases, tags, merge keys, keys that are no words. */
import { isAlias, isMap, isScalar, isSeq } from "yaml";
import type { Fault } from "../units/fault";
import { shown } from "../units/nearest";
import { limits } from "./limits";
import type { KeyPath } from "./sourceText";

/** Tells a fault of a stretch of the text. */
export type Tell = (range: readonly [number, number], path: KeyPath, fault: Fault) => void;

export const say = (message: string, expected: string): Fault => ({
  message,
  expected,
  nearest: null,
  mend: null,
});

/** Anchors, aliases and tags. */
export function refuseDecoration(tell: Tell, node: unknown, range: readonly [number, number], path: KeyPath): void {
  if (isAlias(node)) {
    const fault = say(`Aliases (*${shown(node.source)}) are not read. Write the value out.`, "the value itself");
    tell(range, path, fault);
    return;
  }
  if (!isScalar(node) && !isSeq(node) && !isMap(node)) return;
  if (node.anchor !== undefined) {
    tell(range, path, say(`Anchors (&${shown(node.anchor)}) are not read. Leave it out.`, "the value alone"));
  }
  if (node.tag !== undefined) {
    tell(range, path, say(`Tags (${shown(node.tag)}) are not read. Leave it out.`, "the value alone"));
  }
}

/** The text of a scalar; null for a key with nothing after it. The failsafe schema keeps every scalar a text. */
export function scalarText(scalar: { readonly value: unknown; readonly type?: string | null }): string | null {
  const text = String(scalar.value ?? "");
  return text === "" && scalar.type === "PLAIN" ? null : text;
}

/** A key as text, or null (with a problem) where it cannot be one. */
export function keyName(tell: Tell, key: unknown, range: readonly [number, number], path: KeyPath): string | null {
  refuseDecoration(tell, key, range, path);
  const name = isScalar(key) ? scalarText(key) : null;
  if (name === null) {
    tell(range, path, say("A key must be a word or a short text.", "a key"));
    return null;
  }
  if (name === "<<") {
    tell(range, path, say("Merge keys (<<) are not read. Write the keys out.", "the keys themselves"));
    return null;
  }
  if (name.length > limits.value) {
    tell(
      range,
      path,
      say(`This key has ${name.length} characters; at most ${limits.value} are read.`, "a shorter key"),
    );
    return null;
  }
  if (name in Object.prototype || name.trim() === "" || /[\p{Cc}\p{Cs}]/u.test(name)) {
    tell(range, path, say(`"${shown(name)}" cannot be a key or a name here. Choose another.`, "another name"));
    return null;
  }
  return name;
}
