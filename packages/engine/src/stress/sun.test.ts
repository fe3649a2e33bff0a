import { describe, expect, it } from "vitest";
import type { CoaxialLine } from "../lines/lineModel";
import type { Lying } from "../station/path";
import { atRest, heatAt, spreadLength, steadyTemperatures } from "./steadyHeat";
import { heatIntoAir, sunshine } from "./surfaceHeat";
import { leavingOf } from "./surroundings";
import { thermalLine } from "./thermalLine";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
const build: CoaxialLine = {
  kind: "coaxial",
  inner: {
    form: "solid",
    layers: [{ metal: copper, outerRadius: 1.13e-3 }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  },
  outer: { innerRadius: 3.62e-3, wall: Number.POSITIVE_INFINITY, metal: copper, resistanceFactor: 2 },
  dielectric: { name: "polyethylene", permittivity: 2.26, lossTangent: 3e-4 },
};
const air = { pressure: 101_325, temperature: 313.15 };
const site = { air, irradiance: 1000, soil: { temperature: 293.15, resistivity: 1, depth: 0.5 }, conduit: 3 };
const line = thermalLine({ designation: "", model: build, build, jacketDiameter: 10.29e-3, sources: [] }, 14e6, 0)!;
const leaving = (lies: Lying) => leavingOf(lies, line.surface, site, 30);

describe("a line in the sun", () => {
  it("is warm before it sends, as much leaving as the sun brings; in the shade as warm as the air", () => {
    const rest = atRest(line, leaving("in the sun"), air.temperature);
    expect(rest.inner).toBeCloseTo(rest.surface, 6);
    expect(heatIntoAir(line.surface, rest.surface, air) / sunshine(line.surface, site.irradiance)).toBeCloseTo(1, 6);
    expect(rest.inner - air.temperature).toBeGreaterThan(10);
    expect(atRest(line, leaving("in air"), air.temperature).inner).toBeCloseTo(air.temperature, 5);
  });

  it("spreads its heat over no more length than in the shade: a warm surface sheds it more easily", () => {
    const faint = { current: 1, voltage: 2500 };
    const spread = (lies: Lying): number => {
      const t = steadyTemperatures(line, faint, leaving(lies), air.temperature);
      const { inner, insulation, outer } = heatAt(line, faint, t);
      return spreadLength(line, t, atRest(line, leaving(lies), air.temperature), inner + insulation + outer);
    };
    expect(spread("in the sun") / spread("in air")).toBeLessThan(1);
    expect(spread("in the sun") / spread("in air")).toBeGreaterThan(0.7);
  });
});
