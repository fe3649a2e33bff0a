import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { agreement } from "./ledger/ledgerEntry";
import { publishedRows } from "./ledger/publishedRow";
import { coveredRows, uncoveredRows } from "./ledger/topic";
import { allTopics } from "./topics/allTopics";

const page = readFileSync(new URL("../../docs/ledger.md", import.meta.url), "utf8");

describe("docs/ledger.md", () => {
  it("lists the rows that are computed, in order: run `npm run ledger` when this fails", () => {
    const listed = [...page.matchAll(/^\| `([^`]+?)(?: \/ [^`]*)?` \|/gm)].map((match) => match[1]!);
    const computed = allTopics.flatMap((topic) => coveredRows(topic).map(({ row }) => row.id));
    expect([...new Set(listed)]).toEqual(computed);
  });

  it("counts what is not covered", () => {
    for (const topic of allTopics) {
      const { numbers, statements } = uncoveredRows(topic);
      const row = new RegExp(`^\\| ${topic.title} \\|.*\\| ${numbers.length} \\| ${statements.length} \\|$`, "m");
      expect(page).toMatch(row);
    }
  });
});

describe("checks/values", () => {
  const rows = allTopics.flatMap((topic) => publishedRows(topic.name));
  it("has one row an id, with a source and a status, and evidence or a script behind each", () => {
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    for (const row of rows) {
      expect(row.source, row.id).not.toBe("");
      expect(row.status, row.id).toMatch(
        /^(standard|handbook|computed by an independent script|common practice, no source|from memory)$/,
      );
    }
  });
});

describe("agreement", () => {
  it("fails for a NaN, and just beyond the tolerance", () => {
    expect(agreement(1, Number.NaN, { absolute: 1 }).agrees).toBe(false);
    expect(agreement(100, 101, { relative: 0.01 }).agrees).toBe(true);
    expect(agreement(100, 101.1, { relative: 0.01 }).agrees).toBe(false);
    const bounds = { resistance: 1, reactance: 2 };
    expect(agreement({ re: 70, im: 40 }, { re: 71, im: 42 }, bounds).agrees).toBe(true);
    expect(agreement({ re: 70, im: 40 }, { re: 70, im: 42.1 }, bounds).agrees).toBe(false);
    expect(agreement({ re: 70, im: 40 }, { re: Number.NaN, im: 40 }, bounds).agrees).toBe(false);
  });
});
