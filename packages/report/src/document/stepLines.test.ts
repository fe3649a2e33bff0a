import { describe, expect, it } from "vitest";
import { formulaText } from "../formula/formulaText";
import { stepLines } from "./stepLines";

const shown = (formula: string | undefined, substituted: string | undefined, value?: number, unit = "W"): string =>
  stepLines({
    text: "",
    source: "",
    explains: [],
    ...(formula === undefined ? {} : { formula }),
    ...(substituted === undefined ? {} : { substituted }),
    ...(value === undefined ? {} : { result: { value, unit } }),
  })
    .map((line) => line.map((piece) => (piece.kind === "result" ? piece.text : formulaText(piece.latex))).join(" | "))
    .join(" || ");

describe("the line of a step", () => {
  it("goes on from formula to numbers to result", () => {
    expect(shown("P = UI", "10 \\times 2", 20)).toBe("P = UI | = 10 × 2 | = 20.0 W");
  });

  it("calls a result equal to nothing but the numbers before it", () => {
    expect(shown("r' = r k", undefined, 20)).toBe("r' = rk | so 20.0 W");
    expect(shown(undefined, undefined, 20)).toBe("20.0 W");
    expect(shown("a, b", "\\frac{1 + 2}{2} = 1.5, \\sqrt{1 \\times 2} = 1.41")).toBe(
      "a, | b || (1 + 2)/2 = 1.5, | √(1 × 2) = 1.41",
    );
  });

  it("does not repeat a result that the numbers end with", () => {
    expect(shown("L = a l", "1.7 \\times 28 = 0.476 \\; \\mathrm{dB}", 0.47612, "dB")).toBe(
      "L = al | = 1.7 × 28 | = 0.476 dB",
    );
    expect(shown("L = a l", "L = 0.5", 0.476, "dB")).toBe("L = al || L = 0.5");
  });

  it("finds the result among several equal sides, and a left side with a number in brackets", () => {
    expect(
      shown("L = a", "L = \\frac{100}{68.7} = 1.63 \\; \\mathrm{dB} = 0.27 \\; \\mathrm{units}", 1.632, "dB"),
    ).toBe("L = a || L = 100/68.7 | = 1.63 dB | = 0.27 units");
    expect(shown("G = U", "G(20^\\circ) = 2.2, G(90^\\circ) = 5.2")).toBe("G = U || G(20°) = 2.2, | G(90°) = 5.2");
    expect(shown("P = a", "2 \\times 3 = 2 + 4", 2)).toBe("P = a | = 2 × 3 | = 2 + 4 | = 2.0 W");
  });

  it("tells a result that numbers with a left side of their own do not end with", () => {
    expect(shown("P = P_1 - P_2", "P_1 = 100, \\; P_2 = 87.8 \\; \\mathrm{W}", 12.2)).toBe(
      "P = P₁ − P₂ || P₁ = 100, | P₂ = 87.8 W | so 12.2 W",
    );
  });
});
