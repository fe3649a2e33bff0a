import { describe, expect, it } from "vitest";
import { sliderSteps, stepOfValue, typedValue, valueAtStep } from "./sliderText";

describe("a slider", () => {
  it.each([
    { from: 1, to: 4, scale: "linear" },
    { from: 1e-3, to: 0.2, scale: "log" },
  ] as const)("finds its steps again: $scale", (slider) => {
    for (const step of [0, 1, 77, sliderSteps]) expect(stepOfValue(slider, valueAtStep(slider, step))).toBe(step);
    expect([stepOfValue(slider, 0), stepOfValue(slider, 1e9)]).toEqual([0, sliderSteps]);
  });

  it("types values as people do", () => {
    expect(typedValue("length", 0.007_24)).toBe("7.24 mm");
    expect(typedValue("length", 2)).toBe("2 m");
    expect(typedValue("none", 2.256_78)).toBe("2.26");
  });
});
