import { findQuestion } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { readParameter } from "./readParameter";

const load = findQuestion("bounce")!.parameters.find(({ name }) => name === "load")!;

describe("a quantity in whose place words may stand", () => {
  it("is read as either", () => {
    expect(readParameter(load, "open")).toEqual({ value: "open" });
    expect(readParameter(load, "25 ohm")).toEqual({ value: 25 });
  });

  it("names the words where it is neither, and keeps to its range", () => {
    expect(readParameter(load, "warm")).toMatchObject({
      problem: { message: expect.stringContaining("Or one of: open, shorted.") },
    });
    expect(readParameter(load, "-5 ohm")).toHaveProperty("problem");
  });
});
