import type { Problem } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { linesOf, piecesOf, stretchOf } from "./lines";

const problem = (line: number, column: number, endColumn: number): Problem => ({
  file: "a.yaml",
  line,
  column,
  endColumn,
  place: "",
  found: "",
  expected: "",
  message: "",
  nearest: null,
  mend: null,
});
const text = "feedpath: 1\npath:\n  - { line: RG-213/U, lenght: 28 m } # long";

describe("lines of the file", () => {
  it("keeps every letter, whatever is marked", () => {
    const lines = linesOf(text, [problem(3, 23, 29)]);
    expect(
      lines
        .map((line) =>
          piecesOf(line)
            .map((piece) => piece.text)
            .join(""),
        )
        .join("\n"),
    ).toBe(text);
  });

  it("marks the keys at the start of a line, the comment, and the wrong word", () => {
    const [first, , third] = linesOf(text, [problem(3, 23, 29)]);
    expect(piecesOf(first!)[0]).toMatchObject({ text: "feedpath:", look: "key" });
    expect(
      piecesOf(third!)
        .filter((piece) => piece.wrong)
        .map((piece) => piece.text),
    ).toEqual(["lenght"]);
    expect(piecesOf(third!).at(-1)).toMatchObject({ text: " # long", look: "comment" });
  });

  it("finds the stretch a problem points at, and stays inside the text", () => {
    const lines = linesOf(text, []);
    const { from, to } = stretchOf(lines, problem(3, 23, 29));
    expect(text.slice(from, to)).toBe("lenght");
    expect(stretchOf(lines, problem(99, 500, 600))).toEqual({ from: text.length, to: text.length });
    expect(stretchOf(linesOf("", []), problem(1, 1, 1))).toEqual({ from: 0, to: 0 });
  });
});
