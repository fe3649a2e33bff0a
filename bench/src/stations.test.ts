import { describe, expect, it } from "vitest";
import { exampleNames, exampleText, freshText, scaledText, stationOf } from "./stations";

describe("scaledText", () => {
  it("scales lengths in metres and nothing else", () => {
    const text =
      "  40 m: { at: [2.5 m up, 4 m north] }\n  loss: { 7 MHz: 2 dB/100 m }, wire: 2 mm, height: 12 m +- 0.5 m";
    expect(scaledText(text, 2)).toBe(
      "  40 m: { at: [5 m up, 8 m north] }\n  loss: { 7 MHz: 2 dB/100 m }, wire: 2 mm, height: 24 m +- 1 m",
    );
  });
});

describe("freshText", () => {
  it("leaves every example readable, and is never the same twice", () => {
    for (const name of exampleNames()) {
      const [once, again] = [freshText(exampleText(name)), freshText(exampleText(name))];
      expect(once).not.toBe(again);
      expect(() => stationOf(again, name)).not.toThrow();
    }
  });
});
