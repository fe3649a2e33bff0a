import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { engineLayers, packageLayers } from "./layers.mjs";
import { codeWords, localLinks } from "./markdown.mjs";
import { root, sourceFiles } from "./sourceFiles.mjs";

const text = readFileSync(join(root, "ARCHITECTURE.md"), "utf8");
const words = [...new Set(codeWords(text))];
const paths = words.filter(
  (word) => /^[\w.@-]+(\/[\w.@-]+)*\/?$/.test(word) && (/[/.]/.test(word) || existsSync(join(root, word))),
);
const commands = words.filter((word) => /^(npm|npx) /.test(word));
const names = words.filter((word) => /^[A-Za-z]\w*$/.test(word) && !paths.includes(word));

const code = sourceFiles()
  .filter((file) => /\.(ts|tsx|mjs)$/.test(file) && !/^tools\/.*\.test\.ts$/.test(file))
  .map((file) => readFileSync(join(root, file), "utf8"))
  .join("\n");

describe("ARCHITECTURE.md", () => {
  it("is read by this test: it has paths, names and commands", () => {
    expect(paths.length).toBeGreaterThan(20);
    expect(names.length).toBeGreaterThan(5);
    expect([...paths, ...names, ...commands].sort()).toEqual([...words].sort());
  });

  it("names paths that exist", () => {
    expect(paths.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  it("uses names that the code declares, or properties it has", () => {
    const declared = (name: string): boolean =>
      new RegExp(`\\b(const|function|interface|type|class) ${name}\\b|\\breadonly ${name}\\??:`).test(code);
    expect(names.filter((name) => !declared(name))).toEqual([]);
  });

  it("tells of every folder that the import rules know", () => {
    const folders = [
      ...Object.keys(engineLayers).map((layer) => `packages/engine/src/${layer}`),
      ...Object.keys(packageLayers),
    ];
    expect(folders.filter((folder) => folder !== "packages/engine" && !paths.includes(folder))).toEqual([]);
  });
});

describe("documents that the code points to", () => {
  it("exist", () => {
    const named = [...code.matchAll(/\bdocs\/[\w/-]+\.md\b/g)].map(([path]) => path);
    expect(named).toContain("docs/conventions.md");
    expect([...new Set(named)].filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });
});

describe("links between the documents", () => {
  const documents = sourceFiles().filter((file) => file.endsWith(".md"));

  it.each(documents)("lead somewhere: %s", (file) => {
    const targets = localLinks(readFileSync(join(root, file), "utf8"));
    expect(targets.filter((target) => !existsSync(join(root, dirname(file), target)))).toEqual([]);
  });
});
