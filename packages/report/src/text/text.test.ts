import type { Problem } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { exampleAnswer } from "../fixture/exampleAnswer";
import { answerText } from "./answerText";
import { tableText, wrapped } from "./layout";
import { problemsText } from "./problemsText";
import { refusalText } from "./refusalText";

describe("answerText", () => {
  const text = answerText(exampleAnswer);

  it("says headline, verdict, watts, joints, working, basis and cautions in this order", () => {
    const order = [
      "Where does my power go?",
      "Of 100 W, 69 W leave for the sky.",
      "good: The soil takes 18 W",
      "Where the watts go",
      "  28 m of RG-213/U        12.1",
      "At each joint",
      "76.0 − j23.0  1.8 on 50 Ω",
      "P₂ = P₁ · a(1 − |Γ|²)/(a² − |Γ|²)",
      "= 87.8 W",
      "“SWR 1.9 throws",
      "Matters most: soil (dry to wet)",
      "line loss: 1.7 dB/100 m (catalogue)",
      "keep them out of reach",
      "Current on the outside of the line",
    ];
    const places = order.map((words) => text.indexOf(words));
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it("keeps to 80 columns", () => {
    expect(Math.max(...text.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  it("writes out control and direction characters of a hostile title", () => {
    const hostile = answerText({ ...exampleAnswer, station: "a\u001b[31mred\u202Eb\nc" });
    expect(hostile).toContain("a‹U+001B›[31mred‹U+202E›b c");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: its absence is what is tested
    expect(hostile).not.toMatch(/[\u001b\u202e]/);
  });

  it("shows at most nine rows of a swept table and tells how many there are", () => {
    expect(text).toContain("9 of 21 rows");
    expect(text).toMatch(/7\.03 MHz +–/);
  });

  it("leaves out what an answer without a path does not have", () => {
    const bare = answerText({ ...exampleAnswer, joints: [], parts: [], values: {}, tables: [], verdict: null });
    expect(bare).not.toMatch(/Where the watts go|At each joint|good:/);
  });
});

describe("layout", () => {
  it("never breaks a number from its unit", () => {
    const text = wrapped(`${"x".repeat(76)} 12 W ${"y".repeat(72)} 40 m`);
    expect(text.split("\n")).toEqual(["x".repeat(76), `12 W ${"y".repeat(72)}`, "40 m"]);
  });

  it("cuts a long first column so that the numbers stay inside 80 columns", () => {
    const columns = [
      { name: "part", unit: "", numeric: false },
      { name: "power", unit: "W", numeric: true },
    ];
    const lines = tableText({ caption: "", columns, rows: [["p".repeat(200), "12.5"]] }).split("\n");
    expect(lines.at(-1)).toMatch(/^ {2}p+… +12\.5$/);
    expect([...lines.at(-1)!].length).toBeLessThanOrEqual(80);
  });
});

describe("problemsText and refusalText", () => {
  const problem: Problem = {
    file: "stations/club.yaml",
    line: 7,
    column: 23,
    endColumn: 29,
    place: "path.0",
    found: "lenght",
    expected: "one of length, line",
    message: "A line has no key “lenght”.",
    nearest: "length",
    mend: "length",
  };

  it("tells file, line and column, message, what was expected and the nearest word", () => {
    expect(problemsText([problem])).toBe(
      "stations/club.yaml:7:23\n  A line has no key “lenght”.\n    expected: one of length, line\n    nearest: length\n1 problem.\n",
    );
  });

  it("tells a mend that differs from the nearest word, and counts", () => {
    const text = problemsText([problem, { ...problem, nearest: null, mend: "5 mS/m" }]);
    expect(text).toContain("    write: 5 mS/m\n");
    expect(text).toContain("2 problems.");
  });

  it("says why a question is refused and what would make it answerable", () => {
    const refusal = {
      schema: "feedpath-answer-1",
      question: "height",
      asked: "How high should it hang?",
      station: "Roof",
      refused: { why: "The file gives no height.", wouldMakeItAnswerable: "a height in the file." },
    } as const;
    expect(refusalText(refusal)).toBe(
      "“How high should it hang?” cannot be answered for Roof.\nThe file gives no height.\nTo make it answerable: a height in the file.\n",
    );
  });
});
