import { describe, expect, it } from "vitest";
import { toldTogether } from "./toldTogether";

const of = (name: string, value: string, reason = "not given") => ({ name, value, reason, place: "" });

describe("assumptions told together", () => {
  it("joins owners of one value for one reason, and nothing else", () => {
    const told = toldTogether([
      of("condition of line 1", "dry"),
      of("excess loss of line 1", "0 dB/m"),
      of("condition of line 2", "dry"),
      of("condition of line 3", "wet"),
      of("condition of line 4", "dry", "stated elsewhere"),
      of("line run", "straight down"),
    ]);
    expect(told.map(({ name, value }) => `${name}: ${value}`)).toEqual([
      "condition of line 1, line 2: dry",
      "excess loss of line 1: 0 dB/m",
      "condition of line 3: wet",
      "condition of line 4: dry",
      "line run: straight down",
    ]);
  });
});
