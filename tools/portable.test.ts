import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root, sourceFiles } from "./sourceFiles.mjs";

/** Folders of one person's or one build machine's disk. Written in two pieces, so that this file does not find itself. */
const machineFolders = [
  ["/ho", "me/"],
  ["/Us", "ers/"],
  ["/ro", "ot/"],
  ["/wo", "rk/"],
  ["/tm", "p/"],
  ["C:\\Us", "ers"],
].map((pieces) => pieces.join(""));
const registryHosts = [
  ["registry.npm", "js.org"],
  ["registry.yarn", "pkg.com"],
].map((pieces) => pieces.join(""));

const isText = (content: Buffer): boolean => !content.subarray(0, 8000).includes(0);

/** A path begins where no letter, dot or digit stands before it: "a/home/b" in a sentence or an address is none. */
const holds = (text: string, word: string): boolean => {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    if (at === 0 || !/[\w.\-/]/.test(text[at - 1] ?? "")) return true;
  }
  return false;
};

describe("every file of the project", () => {
  const files = sourceFiles().map((file) => ({ file, content: readFileSync(join(root, file)) }));
  const texts = files
    .filter(({ content }) => isText(content))
    .map(({ file, content }) => ({ file, text: content.toString() }));

  it("is read by this test", () => {
    expect(texts.length).toBeGreaterThan(50);
    expect(holds(`see "${machineFolders[0]}someone"`, machineFolders[0] ?? "")).toBe(true);
  });

  it.each([...machineFolders, ...registryHosts])("does not mention %s", (word) => {
    const found = texts.filter(({ text }) => holds(text, word)).map(({ file }) => file);
    expect(found).toEqual([]);
  });
});
