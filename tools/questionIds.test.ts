import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { findQuestion, questions } from "@feedpath/engine";
import { questionsWithFigures } from "@feedpath/figures";
import { describe, expect, it } from "vitest";
import { saidWords } from "../apps/web/src/state/saidWords";
import { codeWords } from "./markdown.mjs";
import { root } from "./sourceFiles.mjs";

const ids = questions.map(({ id }) => id);
const sorted = (words: readonly string[]): readonly string[] => [...words].sort();
const read = (file: string): string => readFileSync(join(root, file), "utf8");

/** Ids in code type in the paragraph or table row of a document that tells of the questions. */
const idsIn = (text: string): readonly string[] => [...new Set(codeWords(text).filter((word) => findQuestion(word)))];

describe("the ids of the questions", () => {
  it("are the folders of the engine's questions", () => {
    const folders = readdirSync(join(root, "packages/engine/src/questions"), { withFileTypes: true });
    const names = folders.filter((entry) => entry.isDirectory() && entry.name !== "common").map(({ name }) => name);
    expect(sorted(names)).toEqual(sorted(ids));
  });

  it("are one word each, and the registry finds each", () => {
    for (const id of ids) {
      expect(id).toMatch(/^[a-z]+$/);
      expect(findQuestion(id)?.id).toBe(id);
    }
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("are those that have figures", () => {
    expect(sorted(questionsWithFigures)).toEqual(sorted(ids));
  });

  it("are those the page finds by what people say", () => {
    expect(sorted(Object.keys(saidWords))).toEqual(sorted(ids));
  });

  it("are named in the README and the change log", () => {
    expect(sorted(idsIn(read("README.md")))).toEqual(sorted(ids));
    expect(sorted(idsIn(read("CHANGELOG.md")))).toEqual(sorted(ids));
  });

  it("are not named by the command line, which goes through the registry", () => {
    const commands = readdirSync(join(root, "apps/cli/src/commands")).filter((file) => !file.endsWith(".test.ts"));
    const naming = commands.filter((file) =>
      ids.some((id) => read(`apps/cli/src/commands/${file}`).includes(`"${id}"`)),
    );
    expect(naming).toEqual([]);
  });
});
