import { describe, expect, it } from "vitest";
import { settledBy } from "./inputs";
import { asSentence, theName } from "./phrases";

describe("small words", () => {
  it.each([
    ["tuner", "the tuner"],
    ["field tuner", "the field tuner"],
    ["tuner 2", "tuner 2"],
  ])("%s is %s in a sentence", (name, told) => {
    expect(theName(name)).toBe(told);
  });

  it("makes a remark a sentence, once", () => {
    expect(asSentence("not computed yet: the hat")).toBe("Not computed yet: the hat.");
    expect(asSentence("Done.")).toBe("Done.");
  });

  it.each([
    ["loss of transformer 1", "path.parts.3.loss", "before and behind transformer 1, into a dummy load"],
    ["the loss of RG-213/U", "path.parts.0.line.model.loss.0.decibelsPerMetre", "Open or short the far end"],
    ["the impedance of RG-213/U", "path.parts.0.line.model.impedance", "Open, then short"],
    [
      "permittivity of the insulation",
      "antennas.0.shapes.0.shape.wire.insulation.permittivity",
      "where the SWR is lowest",
    ],
    ["length of line 1", "path.parts.1.length", "with a tape"],
  ])("%s is settled by something that can be done", (input, place, says) => {
    expect(settledBy({ input, place })).toContain(says);
  });

  it("promises no reading that tells soils apart: that is worked out for each station", () => {
    expect(settledBy({ input: "the soil", place: "ground.permittivity" })).toBeNull();
  });
});
