import { describe, expect, it } from "vitest";
import { documentOf } from "../document/documentOf";
import { exampleAnswer, exampleStationText } from "../fixture/exampleAnswer";
import { exampleFigure } from "../fixture/exampleFigure";
import { escapeMarkdown } from "./escapeMarkdown";
import { toMarkdown } from "./toMarkdown";

const figures = [exampleFigure(682, 360)];

describe("toMarkdown", () => {
  it("holds headline, verdict, picture in words, table, formula, file", () => {
    const text = toMarkdown(documentOf({ answer: exampleAnswer, figures, stationText: exampleStationText }));
    expect(text.startsWith("# Of 100 W, 69 W leave for the sky.\n\n*Where does my power go?*")).toBe(true);
    expect(text).toContain("**good**: The soil takes 18 W, the line 12 W");
    expect(text).toContain("12.2 W warm the line");
    expect(text).toContain("| line | 12.2 |");
    expect(text).toContain("`P₂ = P₁ · a(1 − |Γ|²)/(a² − |Γ|²) = 100 W");
    expect(text).toContain(`\`\`\`yaml\n${exampleStationText}\`\`\`\n`);
  });

  it("does not let a file close its own fence", () => {
    const text = toMarkdown(documentOf({ answer: exampleAnswer, figures, stationText: "a\n````\n<script>\n" }));
    expect(text).toContain("`````yaml\na\n````\n<script>\n`````\n");
  });

  it.each([
    ["# a", "\\# a"],
    ["- a", "\\- a"],
    ["1. a", "1\\. a"],
    ["<b>[x](y)", "\\<b\\>\\[x\\](y)"],
    ["a|b\nc\u202E", "a\\|b c‹U+202E›"],
  ])("escapes %j", (text, shown) => {
    expect(escapeMarkdown(text)).toBe(shown);
  });
});
