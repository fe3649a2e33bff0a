import { describe, expect, it } from "vitest";
import type { Mark } from "../kit/figure";
import { exampleAnswer, exampleDrawing, mixes } from "../testing/exampleAnswer";
import { section } from "./stage";

const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((one) => (one.kind === "group" ? [one, ...flat(one.marks)] : [one]));

/** Depths in metres of dashed level lines in the soil, by the scale of the wires' height. */
function boundaries(layerDepths: readonly number[], width: number): number[] {
  const soil = { ...exampleDrawing.soil, layerDepths };
  const answer = { ...exampleAnswer(Object.values(mixes)[0]!), drawing: { ...exampleDrawing, soil } };
  const marks = flat(section(answer, { width }).marks);
  const level = marks.flatMap((m) => (m.kind === "line" && m.y1 === m.y2 && m.stroke.role === "soilInk" ? [m] : []));
  return level.filter((m) => m.stroke.dash !== undefined).map((m) => m.y1);
}

describe("layers of soil in the section", () => {
  it("are parted by dashed lines at their depths, to scale, as far as the drawing goes down", () => {
    const [first, second] = boundaries([1, 2], 1112);
    const [only, ...others] = boundaries([1, 400], 1112);
    expect(only).toBe(first);
    expect(others).toEqual([]);
    const [half] = boundaries([0.5], 1112);
    expect(second! - first!).toBeCloseTo(2 * (first! - half!), 6);
  });

  it("are left out for one soil", () => {
    expect(boundaries([], 390)).toEqual([]);
  });
});
