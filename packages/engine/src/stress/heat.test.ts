import { describe, expect, it } from "vitest";
import { cableMetals, tinned } from "../conductors/metals";
import { roundConductorAt } from "../conductors/metalTemperature";
import { roundConductorImpedance } from "../conductors/roundConductor";
import { strandedConductor } from "../conductors/strandedConductor";
import type { LineEntry, ParallelWireLine } from "../lines/lineModel";
import { exactly } from "../quantity/quantity";
import type { Lying } from "../station/path";
import { coaxialBuild, copperMetal } from "../testing/coaxialBuild";
import { coefficientOf, metalArea } from "./conductorHeat";
import { gapReference } from "./standardAir";
import { heatAt, steadyTemperatures, swingLeft, timesToReach } from "./steadyHeat";
import { convection, cylinderNusselt, radiation, stefanBoltzmann } from "./surfaceHeat";
import { leavingOf, type Site, soilResistance } from "./surroundings";
import { type ThermalLine, thermalLine } from "./thermalLine";
import { hottestInLast, timeConstant, warmInTurns, warmOver } from "./transientHeat";

const build = coaxialBuild({ inner: 1.13e-3, outer: 3.62e-3, outerFactor: 2 });
const entry: LineEntry = { designation: "a line", model: build, build, jacketDiameter: 10.29e-3, sources: [] };
const pairBuild: ParallelWireLine = {
  kind: "parallel-wire",
  wire: build.inner,
  spacing: exactly(0.1),
  dielectric: { name: "air", permittivity: 1, lossTangent: 0 },
};
const pair: LineEntry = { designation: "a pair", model: pairBuild, build: pairBuild, sources: [] };

const air = { pressure: 101_325, temperature: 313.15 };
const site: Site = { air, irradiance: 1000, soil: { temperature: 293.15, resistivity: 1, depth: 0.5 }, conduit: 3 };
const ways: readonly Lying[] = ["in air", "in the sun", "buried", "in a conduit", "on a drum"];

const line = thermalLine(entry, 14e6, 0)!;
const leaving = (lies: Lying, of: ThermalLine = line) => leavingOf(lies, of.surface, site, 30);
const ambientOf = (lies: Lying): number => (lies === "buried" ? site.soil.temperature : air.temperature);
const drive = { current: 30, voltage: 75_000 };

describe("metal that warms", () => {
  it("is that of the strands, without the air between them: 7/9 of the circle round seven", () => {
    const [solid, stranded] = [strandedConductor(1, 2.25e-3, copperMetal), strandedConductor(7, 0.75e-3, copperMetal)];
    expect(metalArea(stranded).along / metalArea(solid).along).toBeCloseTo(7 / 9, 12);
    expect(metalArea(stranded).heatCapacity / metalArea(solid).heatCapacity).toBeCloseTo(7 / 9, 12);
  });
});

describe("surfaces", () => {
  it("convect as formulas for a horizontal cylinder have it", () => {
    // Churchill and Chu's formula by hand: (0.6 + 0.387 Ra^(1/6) / 1.199)², within 5 % of Morgan's 0.48 Ra^0.25 at 1e6 (from memory).
    expect(cylinderNusselt(1e6, 0.7) / (0.48 * 1e6 ** 0.25)).toBeCloseTo(1, 1);
    expect(cylinderNusselt(1e4, 0.7)).toBeCloseTo(
      (0.6 + (0.387 * 1e4 ** (1 / 6)) / (1 + (0.559 / 0.7) ** 0.5625) ** (8 / 27)) ** 2,
      12,
    );
  });

  it("radiate by Stefan and Boltzmann, and give nothing to air as warm as they", () => {
    const black = { diameter: 1 / Math.PI, emissivity: 1, absorptivity: 1 };
    expect(radiation(black, 400, air)).toBeCloseTo(stefanBoltzmann * (400 ** 4 - air.temperature ** 4), 9);
    expect(radiation(black, air.temperature, air) + convection(black, air.temperature, air)).toBe(0);
    expect(convection(black, air.temperature - 20, air)).toBeLessThan(0);
  });

  it("convect less in thin air", () => {
    const surface = { diameter: 0.01 };
    expect(convection(surface, 350, { ...air, pressure: 60_000 })).toBeLessThan(convection(surface, 350, air));
  });
});

describe("lines in the soil", () => {
  it("meet ρ/(2π) ln(4 depth/diameter) of a thin line deep down", () => {
    expect(soilResistance(0.01, 0.5, 1) / (Math.log(200) / (2 * Math.PI))).toBeCloseTo(1, 4);
    expect(() => soilResistance(0.01, 0.004, 1)).toThrow(/wholly/);
  });
});

describe("steady heat", () => {
  it("balances: what is made leaves, in every way a line may lie", () => {
    for (const lies of ways) {
      const out = leaving(lies);
      const t = steadyTemperatures(line, drive, out, ambientOf(lies));
      const heat = heatAt(line, drive, t);
      const made = heat.inner + heat.insulation + heat.outer;
      expect(out(t.surface) / made).toBeCloseTo(1, 5);
      expect((t.outer - t.surface) / line.jacket / made).toBeCloseTo(1, 5);
      expect((t.inner - t.outer) / line.insulation / (heat.inner + heat.insulation / 2)).toBeCloseTo(1, 4);
    }
  });

  it("is as warm as the air without power, warmer in the sun, and rises with power, loss and lack of air", () => {
    const none = { current: 0, voltage: 0 };
    expect(steadyTemperatures(line, none, leaving("in air"), air.temperature).inner).toBeCloseTo(air.temperature, 4);
    expect(steadyTemperatures(line, none, leaving("in the sun"), air.temperature).inner).toBeGreaterThan(
      air.temperature + 5,
    );
    for (const lies of ways) {
      const at = (times: number) =>
        steadyTemperatures(
          line,
          { current: times * drive.current, voltage: times * drive.voltage },
          leaving(lies),
          ambientOf(lies),
        ).inner;
      for (const times of [0.1, 1, 3]) expect(at(1.2 * times)).toBeGreaterThan(at(times));
    }
    const inner = (lies: Lying) => steadyTemperatures(line, drive, leaving(lies), air.temperature).inner;
    expect(inner("in a conduit")).toBeGreaterThan(inner("in air"));
    expect(inner("on a drum")).toBeGreaterThan(inner("in a conduit"));
  });

  it("raises the resistance of copper by 0.393 % a kelvin under the root", () => {
    const cold = heatAt(line, drive, { inner: gapReference, outer: gapReference });
    const hot = heatAt(line, drive, { inner: gapReference + 60, outer: gapReference });
    // Exact wires: skin depth is 1/64 of the radius here, of which a quarter share of the steady resistance goes with the first power.
    const at = (kelvin: number) =>
      roundConductorImpedance(roundConductorAt(build.inner, kelvin), 2 * Math.PI * 14e6).re;
    expect(hot.inner / cold.inner / (at(gapReference + 60) / at(gapReference))).toBeCloseTo(1, 4);
    expect(Math.abs(hot.inner / cold.inner / Math.sqrt(1 + 0.00393 * 60) - 1)).toBeLessThan(1 / 64 / 4);
    expect(hot.outer).toBe(cold.outer);
  });

  it("warms tinned copper nearly as copper: thin tin carries little", () => {
    const [plain, tin] = [strandedConductor(1, 2.26e-3, cableMetals.copper), tinned(1.13e-3)].map((conductor) =>
      coefficientOf(conductor, 2 * Math.PI * 14e6),
    );
    expect(tin! / plain!).toBeLessThan(1.05);
    expect(cableMetals.tin.temperatureCoefficient / 0.00393).toBeGreaterThan(1.1);
  });

  it("shares the line's own resistance and insulation loss, none of it twice", () => {
    const heat = heatAt(line, { current: 2, voltage: 5000 }, { inner: 293.15, outer: 293.15 });
    const wave = thermalLine({ ...entry, model: build }, 14e6, 0.01)!;
    expect(heat.inner + heat.outer).toBeCloseTo(2 * (line.inner + line.outer), 12);
    expect(wave.inner + wave.outer).toBeGreaterThan(line.inner + line.outer);
    expect(thermalLine(pair, 14e6, 0)!.outer).toBe(0);
    expect(
      thermalLine(
        {
          ...entry,
          model: {
            kind: "data sheet",
            side: "coaxial",
            impedance: exactly(50),
            velocityFactor: exactly(0.66),
            loss: [{ frequency: 1e7, decibelsPerMetre: exactly(0.02) }],
          },
          build: null,
        },
        14e6,
        0,
      ),
    ).toBeNull();
  });

  it("finds the power that reaches a limit, and none where the air alone does", () => {
    const at = (times: number) =>
      steadyTemperatures(
        line,
        { current: times * drive.current, voltage: times * drive.voltage },
        leaving("in air"),
        air.temperature,
      ).inner;
    const times = timesToReach(at, 353.15);
    expect(at(times)).toBeCloseTo(353.15, 1);
    expect(timesToReach(at, 300)).toBe(0);
    expect(timesToReach(() => 313.15, 353.15)).toBe(Number.POSITIVE_INFINITY);
  });

  it("spreads what alternates: all of it over no length, a half where 2βℓ is 1", () => {
    expect(swingLeft(0.5, 0)).toBe(1);
    expect(swingLeft(0.5, 1)).toBe(0.5);
  });
});

describe("heat in time", () => {
  const start = { inner: air.temperature, outer: air.temperature, surface: air.temperature };

  it("ends where the steady balance says", () => {
    const steady = steadyTemperatures(line, drive, leaving("in air"), air.temperature);
    const course = warmOver(line, start, drive, leaving("in air"), { seconds: 4 * 3600, steps: 400 });
    expect(course.temperatures.at(-1)!.inner).toBeCloseTo(steady.inner, 2);
  });

  it("keeps every joule: what is made is stored or leaves", () => {
    const out = leaving("in air");
    const course = warmOver(line, start, drive, out, { seconds: 600, steps: 6000 });
    const end = course.temperatures.at(-1)!;
    const stored =
      line.capacities[0] * (end.inner - start.inner) +
      line.capacities[1] * (end.outer - start.outer) +
      line.capacities[2] * (end.surface - start.surface);
    const flow = (i: number): number => {
      const t = course.temperatures[i]!;
      const heat = heatAt(line, drive, t);
      return heat.inner + heat.insulation + heat.outer - out(t.surface);
    };
    const net = course.times.slice(1).reduce((sum, _, i) => sum + (0.1 * (flow(i) + flow(i + 1))) / 2, 0);
    expect(stored / net).toBeCloseTo(1, 3);
  });

  it("warms a bare wire by the exponential of one thermal mass while the rise is small", () => {
    const wire = thermalLine(pair, 14e6, 0)!;
    const slope = 0.5;
    const straight = (t: number): number => slope * (t - air.temperature);
    const mass = wire.capacities[0] + wire.capacities[1] + wire.capacities[2];
    const faint = { current: 0.001, voltage: 0 };
    const tau = mass / slope;
    const end = steadyTemperatures(wire, faint, straight, air.temperature).inner;
    const course = warmOver(wire, start, faint, straight, { seconds: 5 * tau, steps: 2000 });
    expect(timeConstant(course, end)! / tau).toBeCloseTo(1, 2);
  });

  it("stays below the steady temperature when it pauses, and nears it as pauses vanish", () => {
    const out = leaving("in air");
    const steady = steadyTemperatures(line, drive, out, air.temperature).inner;
    const hottest = (on: number, of: number) =>
      hottestInLast(warmInTurns(line, start, drive, out, { rhythm: { on, of }, rounds: 80, steps: 12 }), 80);
    expect(hottest(60, 120)).toBeLessThan(steady);
    expect(hottest(118, 120)).toBeGreaterThan(hottest(60, 120));
    expect(hottest(120, 120)).toBeCloseTo(steady, 0);
  });
});
