import { describe, expect, it } from "vitest";
import { inlinesOf } from "./inlines";
import { wordsOf } from "./names";
import { complexText, frequencyText, numberText, quantityText, swrText, valueText, wattsText } from "./numbers";

describe("numbers as people read them", () => {
  it.each([
    [0, "0"],
    [87.83, "87.8"],
    [-25.149, "−25.1"],
    [1234.6, "1235"],
    [0.00412, "0.00412"],
    [1.5e-7, "1.5 × 10^−7"],
    [2e9, "2 × 10^9"],
  ])("%d to three digits is %s", (value, text) => {
    expect(numberText(value)).toBe(text);
  });

  it("puts units as they are set", () => {
    expect(frequencyText(7.1e6)).toBe("7.1 MHz");
    expect(frequencyText(50)).toBe("50 Hz");
    expect(quantityText(52, "deg")).toBe("52°");
    expect(quantityText(50, "ohm")).toBe("50 Ω");
    expect(complexText({ re: 83.14, im: -25.11, unit: "ohm" })).toBe("83.1 − j25.1 Ω");
    expect(swrText(1.76, 50)).toBe("1.8 on 50 Ω");
    expect(swrText(null, 50)).toBe("without end on 50 Ω");
    expect(wattsText(68.67)).toBe("68.7");
    expect(valueText({ value: null, unit: "1", reason: "nothing is connected" })).toBe("nothing is connected");
  });
});

describe("sentences", () => {
  it.each([
    ["Of 100 W, 69.5 W leave.", ["100 W", "69.5 W"]],
    ["28 m of RG-213/U at 1.7 dB/100 m", ["28 m", "1.7 dB/100 m"]],
    ["83.1 − j25.1 Ω is not 50 Ω", ["83.1 − j25.1 Ω", "50 Ω"]],
    ["a 40 m dipole, 52° up, less than 0.1 %.", ["40 m", "52°", "0.1 %"]],
    ["47 CFR 1.1310 and ITU-R P.368 do not hold 2m3", ["47", "1.1310"]],
  ])("%s has its numbers apart", (text, numbers) => {
    const pieces = inlinesOf(text);
    expect(pieces.filter((piece) => piece.kind === "number").map((piece) => piece.text)).toEqual(numbers);
    expect(pieces.map((piece) => piece.text).join("")).toBe(text);
  });

  it("turns names of values into words", () => {
    expect(wordsOf("swrAtTransmitter")).toBe("SWR at transmitter");
    expect(wordsOf("heatInSoil")).toBe("heat in soil");
  });
});
