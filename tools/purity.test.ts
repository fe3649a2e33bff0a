import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { isTest, root, sourceFiles } from "./sourceFiles.mjs";

/** Part of the language, so the compiler lets them pass, but they make two runs of one file differ. */
const impure = [/\bMath\s*\.\s*random\b/, /\bDate\s*\.\s*now\b/, /\bnew\s+Date\b/, /(?<![\w.])Date\s*\(/];

const withoutComments = (text: string): string => text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|\s)\/\/.*$/gm, "");

describe("the pure packages", () => {
  const files = sourceFiles("packages").filter((file) => /\.tsx?$/.test(file) && !isTest(file));

  it("are read by this test", () => {
    expect(files.length).toBeGreaterThan(10);
  });

  it("use no clock and no randomness: the same file gives the same bytes", () => {
    const found = files.filter((file) => {
      const code = withoutComments(readFileSync(join(root, file), "utf8"));
      return impure.some((pattern) => pattern.test(code));
    });
    expect(found).toEqual([]);
  });
});
