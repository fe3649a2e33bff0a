import type { LineRow } from "@feedpath/report";
import { describe, expect, it } from "vitest";
import { matching, ordered } from "./order";

const row = (designation: string, family: string, jacket: number | null, voltage?: number): LineRow => ({
  designation,
  about: `about ${designation}`,
  family,
  own: false,
  side: "coaxial",
  impedance: null,
  velocityFactor: null,
  loss: null,
  losses: [],
  jacket,
  ratings:
    voltage === undefined ? {} : { voltage: { value: voltage, low: voltage, high: voltage, basis: "catalogue" } },
  price: null,
  sources: [],
  notes: [],
});
const rows = [row("b", "one", 0.01, 100), row("a", "two", null, 300), row("c", "one", 0.005)];
const names = (found: readonly LineRow[]) => found.map(({ designation }) => designation).join("");

describe("the list of lines", () => {
  it("stands by family, in the order given", () => {
    expect(ordered(rows, "family").map(([family, own]) => [family, names(own)])).toEqual([
      ["one", "bc"],
      ["two", "a"],
    ]);
  });

  it("is ordered by a value, what is not known last", () => {
    expect(names(ordered(rows, "thickness")[0]![1])).toBe("cba");
    expect(names(ordered(rows, "voltage")[0]![1])).toBe("abc");
    expect(names(ordered(rows, "price")[0]![1])).toBe("bac");
  });

  it("is searched for every word", () => {
    expect(names(matching(rows, "ONE about"))).toBe("bc");
    expect(names(matching(rows, " "))).toBe("bac");
  });
});
