import { toSvg } from "@feedpath/figures";
import { describe, expect, it } from "vitest";
import { growthFigure } from "./growthFigure";

const figure = growthFigure({
  name: "growth",
  title: "Time against unknowns",
  counted: "unknown currents",
  counts: [200, 400, 800],
  curves: [
    { name: "fast", times: [20, 90, 700] },
    { name: "slow", times: [50, 400, null] },
  ],
});

describe("growthFigure", () => {
  it("labels both scales with what was measured, not with logarithms", () => {
    const svg = toSvg(figure, { theme: "light", idPrefix: "g", standalone: true });
    for (const text of [">0.01<", ">0.1<", ">1<", ">200<", ">400<", ">800<", ">fast<", ">slow<"])
      expect(svg).toContain(text);
  });

  it("carries its numbers as a table and says first and last", () => {
    expect(figure.table.rows).toEqual([
      [200, 20, 50],
      [400, 90, 400],
      [800, 700, null],
    ]);
    expect(figure.description).toContain("slow: 50.0 ms at 200 unknown currents, 400 ms at 400.");
  });
});
