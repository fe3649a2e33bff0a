import { describe, expect, it } from "vitest";
import { nudged } from "./nudge";

describe("nudged", () => {
  it.each([
    ["12 m", 1, false, "12.1 m"],
    ["12.1 m", -1, false, "12 m"],
    ["12 m", -1, true, "11 m"],
    ["40 %", 1, false, "41 %"],
    ["5 mS/m", 1, true, "15 mS/m"],
    ["3.50", 1, false, "3.51"],
    ["2 mm copper", 1, false, "3 mm copper"],
  ] as const)("moves %s by one step (%i, large %s) to %s", (text, direction, large, moved) => {
    expect(nudged(text, direction, large)).toBe(moved);
  });

  it.each(["east", "between 1 kohm and 5 kohm", "RG-213/U", "0.1 m"])("leaves %s alone going down", (text) => {
    expect(nudged(text, -1, false)).toBeNull();
  });
});
