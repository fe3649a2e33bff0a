import { describe, expect, it } from "vitest";
import { weightiestFirst } from "./weightiestFirst";

const of = (place: string, reason = "not given") => ({ name: place, value: "x", reason, place });
const moves = (place: string) => ({ input: "", place, says: "", atLow: 1, atHigh: 2 });

describe("order of the assumptions", () => {
  const assumptions = [
    of("antennas.0.shapes.0.shape.sag"),
    of("antennas.0.at"),
    of("path.parts.0.condition"),
    of("path", "no route is given; for the drawing only"),
    of("path.parts.2.resistance"),
    of("ground.conductivity"),
  ];

  it("begins with what moves the result and ends with form, and leaves nothing out", () => {
    const uncertainties = [moves("path.parts.2.resistance"), moves("ground.permittivity")];
    expect(weightiestFirst({ assumptions, uncertainties }).map(({ place }) => place)).toEqual([
      "path.parts.2.resistance",
      "ground.conductivity",
      "path.parts.0.condition",
      "antennas.0.shapes.0.shape.sag",
      "antennas.0.at",
      "path",
    ]);
  });

  it("takes soil for one of many where it moves nothing", () => {
    const [first] = weightiestFirst({ assumptions, uncertainties: [] });
    expect(first?.place).toBe("path.parts.0.condition");
  });
});
