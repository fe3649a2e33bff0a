import { describe, expect, it } from "vitest";
import type { Figure, Mark } from "../kit/figure";
import { type TextMark, textBox } from "../kit/labelBoard";
import { exampleAnswer, exampleDrawing } from "../testing/exampleAnswer";
import { wattsRangeText } from "./doubtMarks";
import { ribbonPlan } from "./ribbonPlan";
import { stage } from "./stage";
import { stageStyle } from "./stageOptions";
import { stagePlan } from "./stagePlan";

const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((one) => (one.kind === "group" ? flat(one.marks) : [one]));
const texts = (figure: Figure): TextMark[] => flat(figure.marks).filter((one) => one.kind === "text");
const words = (figure: Figure): string[] => texts(figure).map((one) => one.text.replaceAll("\u00a0", " "));

describe("the stage of a rare station", () => {
  it("tells the ends of a doubt apart", () => {
    const plain = (low: number, high: number) => wattsRangeText(low, high).replaceAll("\u00a0", " ");
    expect(plain(58.3, 77.6)).toBe("58 to 78 W");
    expect(plain(11.7, 12.2)).toBe("11.7 to 12.2 W");
    expect(plain(1, 1.1)).toBe("1.0 to 1.1 W");
    expect(plain(12.01, 12.04)).toBe("12.01 to 12.04 W");
    expect(plain(0.02, 0.03)).toBe("20 to 30 mW");
  });

  it("says that a field without a direction is the same at all angles", () => {
    const base = exampleAnswer();
    const tables = base.tables.map((table) => {
      const gain = { unit: "dBi", values: table.columns.elevation?.values.map(() => 2.1) ?? [] };
      return table.name === "elevationCut" ? { ...table, columns: { ...table.columns, gain } } : table;
    });
    const figure = stage({ ...base, tables }, { width: 1112 });
    expect(words(figure)).toContain("the same at all angles");
    expect(words(figure).some((text) => text.startsWith("strongest"))).toBe(false);
    expect(figure.description).toContain("In the cut the field is the same at all angles.");
  });

  it("stands the transmitter beside the feed point where there is no line", () => {
    const base = exampleAnswer();
    const [first, , last] = base.joints;
    const answer = { ...base, joints: [first!, last!], parts: [], drawing: { ...exampleDrawing, lineRoute: [] } };
    const marks = flat(stage(answer, { width: 1112 }).marks);
    const box = marks.find((one) => one.kind === "rect" && one.id === "transmitter" && one.width > 20);
    const ring = marks.find((one) => one.kind === "circle" && one.id === "feed point");
    if (box?.kind !== "rect" || ring?.kind !== "circle") throw new Error("no transmitter or no feed point");
    expect(box.x + box.width).toBeLessThanOrEqual(ring.cx - ring.r);
  });

  it("writes no watts across the tick of a joint, at any power", () => {
    for (const whole of [0.5, 100, 1500]) {
      const shares = { sky: 0.6 * whole, soil: 0.2 * whole, line: 0.19 * whole, wires: 0.01 * whole };
      const base = exampleAnswer(shares, whole);
      const lineRoute = [
        [0, -3, 0],
        [0, 0, 0],
        [0, 0, 12],
      ];
      const answer = { ...base, drawing: { ...exampleDrawing, lineRoute } };
      const figure = stage(answer, { width: 1112 });
      const { joints } = ribbonPlan(answer, stagePlan(answer, stageStyle({ width: 1112 })), 0);
      const boxes = texts(figure)
        .filter((one) => one.role === "onPower")
        .map(textBox);
      expect(boxes.length).toBeGreaterThan(0);
      for (const { x } of joints) expect(boxes.some((box) => x > box.left && x < box.right)).toBe(false);
    }
  });

  it("tells the height of an antenna that is too low for an arrow", () => {
    const wires = exampleDrawing.wires.map(({ name, from, to }) => ({
      name,
      from: [from[0]!, from[1]!, 1],
      to: [to[0]!, to[1]!, 1],
    }));
    const low = {
      ...exampleDrawing,
      wires,
      feedPoint: [0, 0, 1],
      lineRoute: [
        [0, -27, 0],
        [0, 0, 0],
        [0, 0, 1],
      ],
    };
    expect(words(stage({ ...exampleAnswer(), drawing: low }, { width: 1112 }))).toContain("1 m up");
  });
});
