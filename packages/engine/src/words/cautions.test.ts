import { describe, expect, it } from "vitest";
import { powerCautions } from "./cautions";

describe("cautions", () => {
  it("tell the peak of the voltage, which is what arcs, and call it so", () => {
    const [voltage] = powerCautions({ feedVoltage: 100, watts: 100, people: 0, overSoil: true });
    expect(voltage).toMatch(/^141 V peak at the feed point/);
  });
});
