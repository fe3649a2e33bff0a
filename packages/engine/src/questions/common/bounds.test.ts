import { describe, expect, it } from "vitest";
import { between } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { plainStation } from "../../testing/plainStation";
import { moveInputs, ranked } from "./bounds";

const station = plainStation({
  ground: { kind: "soil", name: "", permittivity: between(10, 16), conductivity: between(2e-3, 4e-3) },
});

const finish = <T>(steps: Generator<unknown, T>): T => {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
};

/** A result that is linear in both inputs, so that the bounds are known by hand. */
const linear = (s: Station) =>
  s.ground.kind === "soil" ? { result: s.ground.permittivity.value + 1000 * s.ground.conductivity.value } : null;

describe("bounds", () => {
  it("combines independent deviations as the root of the sum of their squares", () => {
    const bounds = finish(moveInputs(station, { result: 16 }, linear, "values"));
    expect(bounds.high.result).toBeCloseTo(16 + Math.hypot(3, 1), 12);
    expect(bounds.low.result).toBeCloseTo(16 - Math.hypot(3, 1), 12);
    expect(ranked(bounds, "result", 0.1).map((e) => e.input.name)).toEqual([
      "permittivity of the soil",
      "conductivity of the soil",
    ]);
  });

  it("names an input whose end cannot be worked out, and leaves that end out", () => {
    const refusing = (s: Station) => (s.ground.kind === "soil" && s.ground.permittivity.value > 15 ? null : linear(s));
    const bounds = finish(moveInputs(station, { result: 16 }, refusing, "values"));
    expect(bounds.skipped).toEqual(["permittivity of the soil"]);
    expect(bounds.high.result).toBeCloseTo(17, 12);
  });

  it("keeps the nominal value inside its bounds whichever way both ends move it", () => {
    const bounds = finish(
      moveInputs(
        station,
        { result: 0 },
        (s) => (s.ground.kind === "soil" ? { result: (s.ground.permittivity.value - 13) ** 2 } : null),
        "values",
      ),
    );
    expect(bounds.low.result).toBe(0);
    expect(bounds.high.result).toBeCloseTo(9, 12);
  });

  it("ranks an input by how far it moves a result from its nominal value, equal at both ends or not", () => {
    const valley = (s: Station) =>
      s.ground.kind === "soil"
        ? { swr: 1.2 + (s.ground.permittivity.value - 13) ** 2 + 10 * (s.ground.conductivity.value - 3e-3) }
        : null;
    const bounds = finish(moveInputs(station, { swr: 1.2 }, valley, "values"));
    expect(ranked(bounds, "swr", 0.001).map((e) => e.input.name)).toEqual([
      "permittivity of the soil",
      "conductivity of the soil",
    ]);
  });
});
