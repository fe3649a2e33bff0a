import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { codeWords, shellLines } from "./markdown.mjs";
import { root, sourceFiles } from "./sourceFiles.mjs";

const scripts: Readonly<Record<string, string>> = JSON.parse(readFileSync(join(root, "package.json"), "utf8")).scripts;
const documents = sourceFiles()
  .filter((file) => file.endsWith(".md"))
  .map((file) => ({ file, text: readFileSync(join(root, file), "utf8") }));

/** "npm run lint" and "npm test -- packages/engine" to the script they name; null for npm's own commands. */
function scriptOf(command: string): string | null {
  const [, run, name] = /^npm (run )?([\w:-]+)/.exec(command) ?? [];
  if (run) return name ?? null;
  return name === "start" || name === "test" ? name : null;
}

describe("npm scripts that the documents name", () => {
  const named = documents
    .flatMap(({ text }) => [...shellLines(text), ...codeWords(text)])
    .flatMap((command) => scriptOf(command) ?? []);

  it("exist", () => {
    expect(named).toContain("test");
    expect([...new Set(named)].filter((name) => scripts[name] === undefined)).toEqual([]);
  });

  it("run programs that exist", () => {
    const programs = Object.values(scripts).flatMap((script) =>
      [...script.matchAll(/[\w/.-]+\.(?:mjs|ts)\b/g)].map(([file]) => file),
    );
    expect(programs).toContain("tools/test.mjs");
    expect(programs.filter((file) => !existsSync(join(root, file)))).toEqual([]);
  });
});

const withCommands = documents
  .map(({ file, text }) => ({ file, lines: shellLines(text).filter((line) => line.startsWith("npx feedpath")) }))
  .filter(({ lines }) => lines.length > 0);

describe.each(withCommands)("commands in $file, one after the other in an empty folder", ({ lines }) => {
  const folder = mkdtempSync(join(tmpdir(), "feedpath-documents-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  it.each([...new Set(lines)])("%s", (line) => {
    const args = line
      .replace(/^npx feedpath\s*/, "")
      .split(" ")
      .filter(Boolean);
    const { status, stderr } = spawnSync(process.execPath, [join(root, "apps/cli/bin/feedpath.mjs"), ...args], {
      cwd: folder,
      encoding: "utf8",
    });
    expect({ status, stderr: status === 0 ? "" : stderr }).toEqual({ status: 0, stderr: "" });
  });
});
