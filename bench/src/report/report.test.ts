import { describe, expect, it } from "vitest";
import { budgetTable, markdownTable } from "./markdown";
import { withMarked } from "./markedText";
import { type Budget, isReached, threeDigits } from "./section";

const budget: Budget = {
  what: "a study",
  limit: 100,
  unit: "ms",
  measured: 80,
  bound: "most",
  against: "2 times zgesv",
};

describe("budgets", () => {
  it("are reached at the limit itself, from either side", () => {
    expect(isReached({ ...budget, measured: 100 })).toBe(true);
    expect(isReached({ ...budget, measured: 101 })).toBe(false);
    expect(isReached({ ...budget, bound: "least", measured: 99 })).toBe(false);
    expect(isReached({ ...budget, bound: "least", measured: 100 })).toBe(true);
  });

  it("are never reached by what is no number", () => {
    expect(isReached({ ...budget, measured: Number.NaN })).toBe(false);
    expect(isReached({ ...budget, bound: "least", measured: Number.NaN })).toBe(false);
  });

  it("say how far off they are", () => {
    const table = budgetTable([budget, { ...budget, bound: "least", measured: 50 }]);
    expect(table).toContain("| at most 100 ms  | 80.0 ms  | 0.800");
    expect(table).toContain("no (2.00 times over)");
  });
});

describe("tables", () => {
  it("pad their columns and keep a bar in a cell", () => {
    expect(markdownTable(["a", "long name"], [["x|y", "1"]])).toBe(
      "| a    | long name |\n| ---- | --------- |\n| x\\|y | 1         |",
    );
  });

  it("write numbers with three digits", () => {
    expect([0.01234, 1.234, 123.4, 12345, 0].map(threeDigits)).toEqual(["0.0123", "1.23", "123", "12345", "0.00"]);
  });
});

describe("withMarked", () => {
  const page = "before\n<!-- n: begin -->\nold\n<!-- n: end -->\nafter";

  it("replaces what stands between the markers, again and again", () => {
    const once = withMarked(page, "n", "new");
    expect(once).toBe("before\n<!-- n: begin -->\n\nnew\n\n<!-- n: end -->\nafter");
    expect(withMarked(once, "n", "new")).toBe(once);
  });

  it("says which markers it did not find", () => {
    expect(() => withMarked(page, "m", "new")).toThrow('no place for "m"');
  });
});
