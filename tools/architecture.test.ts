import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { engineLayers, packageLayers } from "./layers.mjs";
import { codeWords, localLinks } from "./markdown.mjs";
import { root, sourceFiles } from "./sourceFiles.mjs";

const existing = (path: string): boolean => existsSync(join(root, path));

/** Code words of a document, sorted by what they claim to be. */
function claims(file: string) {
  const words = [...new Set(codeWords(readFileSync(join(root, file), "utf8")))];
  const isPath = (word: string): boolean =>
    /^[\w.@-]+(\/[\w.@-]+)*\/?$/.test(word) && (/[/.]/.test(word) || existing(word));
  const paths = words.filter(isPath);
  const names = words.filter((word) => /^[A-Za-z]\w*$/.test(word) && !isPath(word));
  const others = words.filter((word) => !paths.includes(word) && !names.includes(word));
  return { paths, names, others };
}

const code = sourceFiles()
  .filter((file) => /\.(ts|tsx|mjs)$/.test(file) && !/^tools\/.*\.test\.ts$/.test(file))
  .map((file) => readFileSync(join(root, file), "utf8"))
  .join("\n");

const declared = (name: string): boolean =>
  new RegExp(`\\b(const|function|interface|type|class) ${name}\\b|\\breadonly ${name}\\??:`).test(code);

describe.each(["ARCHITECTURE.md", "docs/physics.md"])("%s", (file) => {
  const { paths, names, others } = claims(file);

  it("is read by this test: it has paths and names, and otherwise only commands", () => {
    expect(paths.length).toBeGreaterThan(15);
    expect(names.length).toBeGreaterThan(5);
    expect(others.filter((word) => !/^(npm|npx) /.test(word))).toEqual([]);
  });

  it("names paths that exist", () => {
    expect(paths.filter((path) => !existing(path))).toEqual([]);
  });

  it("uses names that the code declares, or properties it has", () => {
    expect(names.filter((name) => !declared(name))).toEqual([]);
  });
});

describe("ARCHITECTURE.md", () => {
  it("tells of every folder that the import rules know", () => {
    const folders = [
      ...Object.keys(engineLayers).map((layer) => `packages/engine/src/${layer}`),
      ...Object.keys(packageLayers).filter((name) => name !== "packages/engine"),
    ];
    const { paths } = claims("ARCHITECTURE.md");
    expect(folders.filter((folder) => !paths.includes(folder))).toEqual([]);
  });
});

describe("documents that the code points to", () => {
  it("exist", () => {
    const named = [...code.matchAll(/\bdocs\/[\w/-]+\.md\b/g)].map(([path]) => path);
    expect(named).toContain("docs/conventions.md");
    expect([...new Set(named)].filter((path) => !existing(path))).toEqual([]);
  });
});

describe("links between the documents", () => {
  const documents = sourceFiles().filter((file) => file.endsWith(".md"));

  it.each(documents)("lead somewhere: %s", (file) => {
    const targets = localLinks(readFileSync(join(root, file), "utf8"));
    expect(targets.filter((target) => !existsSync(join(root, dirname(file), target)))).toEqual([]);
  });
});
