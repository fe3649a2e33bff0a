import { describe, expect, it } from "vitest";
import { lobesOf } from "./patternTables";

const cutOf = (power: (elevation: number) => number) => {
  const values = Array.from({ length: 181 }, (_, i) => Math.max(-60, 10 * Math.log10(power(i))));
  return { name: "elevationCut", axis: "elevation", columns: { gain: { unit: "dBi", values } } };
};

describe("lobes of a cut", () => {
  it.each([2, 3.3, 8])("are as wide as their half power points are apart, between degrees too: %s", (s) => {
    // A lobe 10 exp(-x^2/(2 s^2)): full width at half power 2 s sqrt(2 ln 2) (arithmetic).
    const [lobe] = lobesOf(
      cutOf((e) => 10 * Math.exp(-((e - 30) ** 2) / (2 * s * s)) + 1e-9),
      0,
    );
    expect(lobe!.elevation).toBe(30);
    expect(Math.abs(lobe!.width! - 2 * s * Math.sqrt(2 * Math.LN2))).toBeLessThan(0.1);
  });

  it("beyond the zenith face the other way", () => {
    const [lobe] = lobesOf(
      cutOf((e) => Math.exp(-((e - 150) ** 2) / 50) + 1e-9),
      300,
    );
    expect(lobe).toMatchObject({ elevation: 30, azimuth: 120 });
  });
});
