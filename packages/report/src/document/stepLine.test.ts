import { describe, expect, it } from "vitest";
import { formulaText } from "../formula/formulaText";
import { stepLine } from "./stepLine";

const shown = (formula: string | undefined, substituted: string | undefined, value?: number, unit = "W"): string =>
  stepLine({
    text: "",
    source: "",
    explains: [],
    ...(formula === undefined ? {} : { formula }),
    ...(substituted === undefined ? {} : { substituted }),
    ...(value === undefined ? {} : { result: { value, unit } }),
  })
    .map((piece) => (piece.kind === "result" ? piece.text : formulaText(piece.latex)))
    .join(" | ");

describe("the line of a step", () => {
  it("goes on from formula to numbers to result", () => {
    expect(shown("P = UI", "10 \\times 2", 20)).toBe("P = UI | = 10 × 2 | = 20.0 W");
    expect(shown("P = UI", undefined, 20)).toBe("P = UI | = 20.0 W");
    expect(shown(undefined, undefined, 20)).toBe("= 20.0 W");
  });

  it("does not repeat a result that the numbers end with", () => {
    expect(shown("L = a l", "1.7 \\times 28 = 0.476 \\; \\mathrm{dB}", 0.47612, "dB")).toBe(
      "L = al | = 1.7 × 28 | = 0.476 dB",
    );
    expect(shown("L = a l", "L = 0.5", 0.476, "dB")).toBe("L = al | L = 0.5");
  });

  it("tells a result that numbers with a left side of their own do not end with", () => {
    expect(shown("P = P_1 - P_2", "P_1 = 100, \\; P_2 = 87.8 \\; \\mathrm{W}", 12.2)).toBe(
      "P = P₁ − P₂ | P₁ = 100, | P₂ = 87.8 W | so 12.2 W",
    );
  });
});
