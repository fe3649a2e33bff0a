import type { Answer } from "@feedpath/engine";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { figuresOf, questionsWithFigures, withFigures } from "../figuresOf";
import { inside, overlap } from "../kit/box";
import type { Figure } from "../kit/figure";
import { textBox } from "../kit/labelBoard";
import { textWidth } from "../kit/textWidth";
import { exampleAnswer } from "../testing/exampleAnswer";
import { exampleBand, exampleHeight, exampleWhy } from "../testing/exampleStudies";
import { insidePieces } from "./curveMarks";
import { heightPanels } from "./heightPanels";
import { impedanceCompromise } from "./impedanceCompromise";
import { panelFrame, swrSpan } from "./panelFrame";
import { swrAcrossBand } from "./swrAcrossBand";
import { arrangeVerticals } from "./verticals";

const plain = (text: string) => text.replaceAll("\u00a0", " ");
const texts = (figure: Figure) => figure.marks.filter((one) => one.kind === "text");
const words = (figure: Figure) => texts(figure).map((one) => plain(one.text));

const withValues = (answer: Answer, values: Answer["values"]): Answer => ({
  ...answer,
  values: { ...answer.values, ...values },
});

describe("curves", () => {
  const drawn = [320, 388, 520, 640].flatMap((width) => [
    { name: "band", width, figure: swrAcrossBand(exampleBand(), { width }) },
    { name: "height", width, figure: heightPanels(exampleHeight(), { width }) },
    { name: "why", width, figure: impedanceCompromise(exampleWhy(), { width }) },
  ]);

  it.each(drawn)("$name at $width px: no label outside or over another", ({ figure }) => {
    const frame = { left: 0, top: 0, right: figure.width, bottom: figure.height };
    const boxes = texts(figure).map((one) => ({ text: one.text, box: textBox(one) }));
    expect(boxes.filter(({ box }) => !inside(box, frame)).map(({ text }) => text)).toEqual([]);
    const over = boxes.flatMap((a, i) =>
      boxes
        .slice(i + 1)
        .filter((b) => overlap(a.box, b.box))
        .map((b) => [a.text, b.text]),
    );
    expect(over).toEqual([]);
  });

  it.each(drawn)("$name at $width px: every curve and mark carries its name", ({ name, figure }) => {
    const labels: Record<string, unknown[]> = {
      band: [
        "at the antenna",
        expect.stringMatching(/^on the meter/),
        "lowest SWR 7.19",
        "resonant (X = 0) 7.22",
        "limit 2",
        "wanted: 7.0 to 7.2 MHz",
      ],
      height: [
        "to the sky",
        "on the meter",
        "resistance R",
        "reactance X",
        "splits above 14.8 m",
        "6 m, best SWR",
        "12 m, as it is",
      ],
      why: [
        "peak power",
        "peak voltage",
        "attenuation",
        "geometric mean 50 Ω",
        "arithmetic mean 56 Ω",
        "most: 31 Ω",
        "least: 80 Ω",
        "50 Ω",
        "75 Ω",
      ],
    };
    expect(words(figure)).toEqual(expect.arrayContaining(labels[name]!));
  });

  const anywhere = fc.integer({ min: 0, max: 200 }).map((twentieths) => twentieths / 20);
  const lineOf = (text: string) => anywhere.map((at) => ({ at, text }));
  /** As many words as a chart has: two long ones, and two short ones. */
  const anyVerticals = fc
    .tuple(lineOf("geometric mean 48 Ω"), lineOf("12 m, as it is"), lineOf("50 Ω"), lineOf("75 Ω"))
    .chain((lines) => fc.subarray(lines, { minLength: 2 }));

  it("stand their lines' words in rows so that no line runs through any words", () => {
    fc.assert(
      fc.property(anyVerticals, fc.constantFrom(320, 640), (lines, width) => {
        const axis = { values: [0, 10], name: "" };
        const verticals = lines.map((one) => ({ ...one, main: false }));
        const placed = arrangeVerticals({ width, axis, panels: [], verticals, note: "" }, 42, width - 10);
        const boxes = placed.map(({ text, anchor, x, row }) => {
          const words = textWidth(text, 13, 600);
          const left = { start: x + 6, end: x - 6 - words, middle: x - words / 2 }[anchor];
          return { left, right: left + words, row };
        });
        for (const [i, { left, right, row }] of boxes.entries()) {
          expect(left >= 0 && right <= width).toBe(true);
          const begins = placed.filter((other, j) => {
            return j !== i && (other.anchor === "middle" ? other.row - 1 : other.row) >= row;
          });
          expect(begins.some(({ x }) => x > left && x < right)).toBe(false);
        }
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  it("tell what 50 and 75 ohm give away beside the curves, and in words", () => {
    const figure = impedanceCompromise(exampleWhy(), { width: 640 });
    expect(words(figure)).toEqual(expect.arrayContaining(["83 % of the most", "52 % of the most"]));
    expect(plain(figure.description)).toContain(
      "50 Ω holds 83 % of the most power and 98 % of the most voltage, and its attenuation is 9.1 % over the least.",
    );
    const silent = {
      ...exampleWhy(),
      values: { ...exampleWhy().values, peakPowerShareAt50: { value: null, unit: "%" } },
    };
    expect(words(impedanceCompromise(silent, { width: 640 }))).not.toContain("83 % of the most");
  });

  it("say the message with its number", () => {
    expect(swrAcrossBand(exampleBand(), { width: 520 }).title).toBe(
      "The line flatters: the antenna is at 2.3 where the meter shows 2.1",
    );
    expect(swrAcrossBand(exampleBand(1.2), { width: 520 }).title).toMatch(
      /^The line adds: the antenna is at 2\.3 where the meter shows 2\.6$/,
    );
    expect(swrAcrossBand(exampleBand(1), { width: 520 }).title).toBe("Antenna and meter agree: SWR 1.7 to 2.3");
    expect(plain(heightPanels(exampleHeight(), { width: 520 }).title)).toBe(
      "At 6 m the SWR is lowest, and 17 W fewer leave than at 12 m",
    );
    expect(plain(impedanceCompromise(exampleWhy(), { width: 520 }).title)).toBe(
      "Least attenuation is at 80 Ω, most peak power at 31 Ω; 50 Ω lies between",
    );
  });

  it("do not tempt with a height whose SWR reads no lower", () => {
    const base = exampleHeight();
    const tables = base.tables.map((table) => {
      const flat = { unit: "1", values: table.columns.height?.values.map(() => 1.01) ?? [] };
      return table.name === "height" ? { ...table, columns: { ...table.columns, swrAtTransmitter: flat } } : table;
    });
    const figure = heightPanels({ ...base, tables }, { width: 520 });
    // By hand from the invented law: 70 (1 - e^(-(20 - 1)/4.2)) - 0.012 (20 - 12)² = 68.5 W, 68.4 W at 19 m.
    expect(plain(figure.title)).toBe("65 W leave at 12 m, and 68 W at 20 m");
    expect(words(figure)).not.toContain("6 m, best SWR");
  });

  it("leave out the mark of a resonance that is not there, and say so", () => {
    const answer = withValues(exampleBand(), {
      resonantFrequency: { value: null, unit: "MHz", reason: "not in the span" },
    });
    const figure = swrAcrossBand(answer, { width: 520 });
    expect(words(figure).some((text) => text.startsWith("resonant"))).toBe(false);
    expect(figure.description).toContain("not resonant in this span");
  });

  it("draw no split line where the pattern does not split", () => {
    expect(words(heightPanels(exampleHeight(), { width: 520 }))).toContain("splits above 14.8 m");
    const answer = withValues(exampleHeight(), {
      splitHeight: { value: null, unit: "m", reason: "it does not split" },
    });
    expect(words(heightPanels(answer, { width: 520 })).some((text) => text.startsWith("splits"))).toBe(false);
  });

  it("keep all numbers in their table", () => {
    const { table } = heightPanels(exampleHeight(), { width: 320 });
    expect(table.columns.length).toBe(13);
    expect(table.rows.length).toBe(23);
    expect(table.rows[9]?.[0]).toBe(12);
  });

  it("name a table that is missing", () => {
    expect(() => heightPanels(exampleAnswer(), { width: 520 })).toThrow('has no table "height"');
  });
});

describe("a curve that leaves its panel", () => {
  const frame = panelFrame({ s: 1, left: 0, right: 100, top: 0, bottom: 100, narrow: false }, [0, 4], 0, 10);
  it("is cut where it crosses the edge, and the place is marked", () => {
    const { pieces, leaves } = insidePieces(frame, [0, 1, 2, 3, 4], [20, 10, 5, 5, 15]);
    expect(pieces.map(({ points }) => points)).toEqual([
      [
        [25, 0],
        [25, 0],
        [50, 50],
        [75, 50],
        [87.5, 0],
      ],
    ]);
    expect(leaves.map(({ up }) => up)).toEqual([true, true]);
  });
  it("breaks at a gap", () => {
    expect(insidePieces(frame, [0, 1, 2, 3, 4], [1, 2, null, 3, 4]).pieces.length).toBe(2);
  });
});

describe("scales", () => {
  it("say where they start", () => {
    const place = { s: 1, left: 0, right: 100, top: 0, bottom: 112, narrow: false };
    const ticks = (from: number, to: number) => panelFrame(place, [0, 4], from, to).yTicks.map(({ text }) => text);
    expect(ticks(1, 41)).toEqual(["1", "10", "20", "30", "40"]);
    expect(ticks(1, 2)[0]).toBe("1.0");
    expect(ticks(0, 100)[0]).toBe("0");
  });

  it("of SWR start at 1 and end at a round value", () => {
    expect(swrSpan([1.2, 1.9], 10)).toEqual([1, 2]);
    expect(swrSpan([1, 3.05], 10)).toEqual([1, 3.5]);
    expect(swrSpan([1, 40], 5)).toEqual([1, 5]);
  });
});

describe("figuresOf", () => {
  const answers = [exampleAnswer(), exampleBand(), exampleHeight(), exampleWhy()];
  it.each(answers.map((answer) => ({ id: answer.question, answer })))("knows $id", ({ answer }) => {
    const figures = figuresOf(answer, { width: 1112 });
    const expected: Record<string, string[]> = {
      watts: ["stage"],
      band: ["stage", "swrAcrossBand"],
      height: ["stage", "heightPanels"],
      why: ["impedanceCompromise"],
    };
    expect(figures.map((figure) => figure.name)).toEqual(expected[answer.question]);
    for (const figure of figures) {
      expect(figure.description.length).toBeGreaterThan(20);
      expect(figure.table.rows.length).toBeGreaterThan(0);
    }
  });
  it.each(answers.map((answer) => ({ id: answer.question, answer })))(
    "lists the figures of $id in the answer",
    ({ answer }) => {
      const listed = withFigures(answer);
      const narrow = figuresOf(answer, { width: 320 });
      expect(listed.figures).toEqual(narrow.map(({ name, title, description }) => ({ name, title, description })));
      expect({ ...listed, figures: [] }).toEqual({ ...answer, figures: [] });
    },
  );
  it("has none for a question it does not list", () => {
    expect(questionsWithFigures).not.toContain("no such question");
    expect(figuresOf({ ...exampleAnswer(), question: "no such question" }, { width: 1112 })).toEqual([]);
  });
});
