/** Real answers of every question for a real file: what the engine says must be readable on every surface. */
import { readFileSync } from "node:fs";
import { type Answer, questions } from "@feedpath/engine";
import { figuresOf } from "@feedpath/figures";
import { readStation } from "@feedpath/station-file";
import { beforeAll, describe, expect, it } from "vitest";
import {
  answerSheet,
  answerText,
  documentOf,
  formulaText,
  parseAnswer,
  sheetFigureSizes,
  toMarkdown,
  typesetFormula,
} from "./index";

/** It has no route of its line, no radials and nothing near by: other stations speak for those questions. */
const usual = "harbour-school-club.yaml";
const others: Readonly<Record<string, string>> = {
  outside: "coax-as-counterpoise.yaml",
  radials: "meadow-vertical.yaml",
  nearby: "eaves-and-mast.yaml",
};
const fileOf = (id: string): string => others[id] ?? usual;
const textOf = (id: string): string =>
  readFileSync(new URL(`../../../examples/${fileOf(id)}`, import.meta.url), "utf8");

function ask(question: (typeof questions)[number]): Answer {
  const { station, problems } = readStation(textOf(question.id), { fileName: fileOf(question.id) });
  if (station === null) throw new Error(JSON.stringify(problems));
  const run = question.run(station, {}, { program: "test", catalogue: "test", fileHash: "0".repeat(64) });
  let step = run.next();
  while (!step.done) step = run.next();
  if ("refused" in step.value) throw new Error(step.value.refused.why);
  return step.value;
}

function inputOf(answer: Answer) {
  const figures = figuresOf(answer, sheetFigureSizes.paper);
  return {
    answer,
    figures,
    narrowFigures: figuresOf(answer, sheetFigureSizes.phone),
    stationText: textOf(answer.question),
  };
}

describe.each(questions)("$id for a whole station", (question) => {
  let answer: Answer;
  beforeAll(() => {
    answer = ask(question);
    // Radials are solved in dozens of layouts.
  }, 120_000);

  it("is valid data and reads back as itself", () => {
    expect(parseAnswer(JSON.stringify(answer))).toEqual(answer);
  });

  it("uses only formulas that can be typeset and read in a terminal", () => {
    for (const step of answer.working) {
      for (const latex of [step.formula, step.substituted]) {
        if (latex === undefined) continue;
        expect(typesetFormula(latex)).toContain("<math");
        expect(formulaText(latex)).not.toMatch(/[\\{}]/);
      }
    }
  });

  it("has its pictures in both sizes, each with its text, and refers to nothing outside", () => {
    const input = inputOf(answer);
    expect(input.figures.length).toBeGreaterThan(0);
    const sheet = answerSheet(input);
    expect(sheet.match(/<svg[^>]*role="img"/g)).toHaveLength(2 * input.figures.length);
    const ids = [...sheet.matchAll(/\sid="([^"]*)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(sheet).not.toMatch(/<script|<link|<img|@import|\ssrc=|https?:/i);
  });

  it("says the same headline in the terminal, on the sheet and in Markdown", () => {
    expect(answerText(answer)).toContain(answer.headline);
    const heading = /<h1>(.*?)<\/h1>/.exec(answerSheet(inputOf(answer)))![1]!;
    expect(heading.replaceAll(/<[^>]*>/g, "")).toBe(answer.headline);
    expect(toMarkdown(documentOf(inputOf(answer))).split("\n")[0]).toBe(`# ${answer.headline}`);
  });

  it("keeps the terminal to 80 columns but for formulas that do not break", () => {
    const long = answerText(answer)
      .split("\n")
      .filter((line) => [...line].length > 80);
    expect(long.filter((line) => !line.startsWith("       "))).toEqual([]);
  });

  it("loses no caution, assumption, step or joint on its sheet", () => {
    const shown = answerSheet(inputOf(answer))
      .replaceAll(/<[^>]*>/g, "")
      .replaceAll("&#39;", "'")
      .replaceAll("&quot;", '"')
      .replaceAll("&amp;", "&");
    const said = [
      ...answer.cautions,
      ...answer.notCovered,
      ...answer.assumptions.map((assumption) => assumption.reason),
      ...answer.working.flatMap((step) => [step.text, step.source]),
      ...answer.joints.map((joint) => joint.name),
      ...answer.rulesOfThumb.map((rule) => rule.rule),
    ];
    expect(said.filter((text) => !shown.includes(text))).toEqual([]);
  });
});
