import { describe, expect, it } from "vitest";
import { solidWireImpedance, surfaceResistance } from "../conductors/solidWire";
import { vacuumImpedance } from "../numerics/vacuum";
import { exactly } from "../quantity/quantity";
import { lineConstants } from "./lineConstants";
import type { BuiltLine, Dielectric, FourWireLine, Metal, ParallelWireLine, RoundConductor } from "./lineModel";
import { twistedPairRule, twistLength } from "./twistedPairLine";

const copper: Metal = { name: "copper", conductivity: 58e6, permeability: 1 };
const perfect: Metal = { name: "perfect", conductivity: Number.POSITIVE_INFINITY, permeability: 1 };
const air: Dielectric = { name: "air", permittivity: 1, lossTangent: 0 };
const polyethylene: Dielectric = { name: "polyethylene", permittivity: 2.26, lossTangent: 3e-4 };
const wire = (diameter: number, metal = copper): RoundConductor => ({
  form: "solid",
  layers: [{ metal, outerRadius: diameter / 2 }],
  holeRadius: 0,
  effectiveRadiusRatio: 1,
  resistanceFactor: 1,
});
const pair = (diameter: number, spacing: number): ParallelWireLine => ({
  kind: "parallel-wire",
  wire: wire(diameter),
  spacing: exactly(spacing),
  dielectric: air,
});
const z0 = (line: BuiltLine, f = 1e7) => lineConstants(line, f).z0.re;
const velocity = (line: BuiltLine, f = 1e7) => lineConstants(line, f).velocityFactor;

describe("parallel-wire line with insulation", () => {
  const ribbon = (thickness: number, filled: number): ParallelWireLine => ({
    ...pair(0.8e-3, 7.5e-3),
    insulation: { form: "web", outerRadius: 1e-3, thickness, filled, dielectric: polyethylene },
  });

  // checks/values/parallelWire.json pair.twin300: 300 ohm, 0.82 (handbooks; 0.80 to 0.85). The sizes are of such a ribbon, from memory.
  it("finds a 300-ohm ribbon near its published numbers from its sizes", () => {
    expect(Math.abs(z0(ribbon(1.5e-3, 1)) - 300)).toBeLessThan(15);
    expect(Math.abs(velocity(ribbon(1.5e-3, 1)) - 0.82)).toBeLessThan(0.03);
  });

  // pair.window.z: 18 AWG solid clad steel 400 ohm within 5 %, 0.902 within 0.01. Spacing 20 mm, web 1.5 mm, 3/4 filled: from memory.
  it("finds a window line near its measured numbers from its sizes", () => {
    const line: ParallelWireLine = {
      ...pair(1.024e-3, 20e-3),
      insulation: { form: "web", outerRadius: 1.1e-3, thickness: 1.5e-3, filled: 0.75, dielectric: polyethylene },
    };
    expect(Math.abs(z0(line) / 400 - 1)).toBeLessThan(0.05);
    expect(Math.abs(velocity(line) - 0.902)).toBeLessThan(0.01);
  });

  it("lies between sleeves alone and a full web, linear in the filled share", () => {
    const c = (line: ParallelWireLine) => lineConstants(line, 1e7).capacitance;
    const sleeves: ParallelWireLine = {
      ...pair(0.8e-3, 7.5e-3),
      insulation: { form: "sleeves", outerRadius: 1e-3, dielectric: polyethylene },
    };
    expect(c(ribbon(1.5e-3, 0)) / c(sleeves)).toBeCloseTo(1, 12);
    expect((c(ribbon(1.5e-3, 0)) + c(ribbon(1.5e-3, 1))) / 2 / c(ribbon(1.5e-3, 0.5))).toBeCloseTo(1, 12);
    expect(c(pair(0.8e-3, 7.5e-3))).toBeLessThan(c(sleeves));
  });

  it("loses in the insulation less than if all were filled with it", () => {
    const { conductance, capacitance } = lineConstants(ribbon(1.5e-3, 1), 1e7);
    const tangent = conductance / (2 * Math.PI * 1e7 * capacitance);
    expect(tangent).toBeGreaterThan(0);
    expect(tangent).toBeLessThan(3e-4);
  });

  it("refuses a share above the whole", () => {
    expect(() => z0(ribbon(1.5e-3, 1.2))).toThrow(/share of 0 to 1/);
  });
});

describe("twisted pair", () => {
  const twisted = (turn: number): BuiltLine & { kind: "twisted pair" } => ({
    kind: "twisted pair",
    wire: wire(0.5e-3),
    sleeve: { outerRadius: 0.5e-3, dielectric: polyethylene },
    turn,
  });

  it("is the straight pair in sleeves as the twist goes, and longer with it", () => {
    const straight: ParallelWireLine = {
      ...pair(0.5e-3, 1e-3),
      insulation: { form: "sleeves", outerRadius: 0.5e-3, dielectric: polyethylene },
    };
    const [a, b] = [lineConstants(twisted(1e3), 1e7), lineConstants(straight, 1e7)];
    expect(a.z0.re / b.z0.re).toBeCloseTo(1, 9);
    expect(a.gamma.re / b.gamma.re).toBeCloseTo(1, 9);
    const tight = lineConstants(twisted(1e-2), 1e7);
    expect(tight.gamma.im / b.gamma.im).toBeCloseTo(Math.hypot(1, 0.1 * Math.PI), 9);
    expect(tight.z0.re / b.z0.re).toBeCloseTo(1, 9);
    expect(twistLength(twisted(1e-2))).toBeCloseTo(Math.hypot(1, 0.1 * Math.PI), 12);
    expect(lineConstants(twisted(4e-3), 1e7).notes).toHaveLength(1);
  });

  it("keeps the published rule of thumb beside it", () => {
    // 45 degrees: 0.25 + 0.0004 * 2025 = 1.06.
    expect(twistedPairRule(twisted(Math.PI * 1e-3), 3)).toBeCloseTo(1 + 1.06 * 2, 12);
  });
});

describe("wire over plane", () => {
  const over = (ratio: number, metal = copper, plane = copper): BuiltLine => ({
    kind: "wire over plane",
    wire: wire(2e-3, metal),
    height: exactly(2e-3 * ratio),
    plane,
    dielectric: air,
  });

  // checks/values/parallelWire.json wire_over_plane.z0.*: (eta0/2pi) acosh(2h/d), 1e-9.
  it.each([
    [0.75, 57.7054703413138],
    [1, 78.9628090003203],
    [5, 179.469126876397],
    [50, 317.6776182978],
  ])("h/d %d: %d ohm", (ratio, expected) => {
    expect(z0(over(ratio, perfect, perfect)) / expected).toBeCloseTo(1, 9);
  });

  it("has half the impedance of the pair with its image, and its plane's resistance beside half of the pair's", () => {
    const line = lineConstants(over(2), 1e8);
    const image = lineConstants(pair(2e-3, 8e-3), 1e8);
    const plane = surfaceResistance(58e6, 1, 2e8 * Math.PI) / (2 * Math.PI * Math.sqrt(16e-6 - 1e-6));
    expect(line.resistance - image.resistance / 2).toBeCloseTo(plane, 12);
    expect(z0(over(2, perfect, perfect)) / z0({ ...pair(2e-3, 8e-3), wire: wire(2e-3, perfect) })).toBeCloseTo(0.5, 12);
  });

  it("refuses a wire in its plane", () => {
    expect(() => z0(over(0.5))).toThrow(/does not touch/);
  });
});

describe("four-wire line", () => {
  const four = (side: number, joined: FourWireLine["joined"], metal = copper): FourWireLine => ({
    kind: "four-wire",
    wire: wire(2e-3, metal),
    side: exactly(side),
    joined,
    dielectric: air,
  });

  // Thin wires: (eta0/2pi) ln(sqrt2 s/d) across, ln(2 sqrt2 s/d) side by side; elementary.
  it.each([
    ["diagonals", Math.SQRT2],
    ["neighbours", 2 * Math.SQRT2],
  ] as const)("%s nears the formula of thin wires", (joined, factor) => {
    const formula = (side: number) => (vacuumImpedance / (2 * Math.PI)) * Math.log((factor * side) / 2e-3);
    const off = (side: number) => Math.abs(z0(four(side, joined, perfect)) / formula(side) - 1);
    expect(off(2)).toBeLessThan(1e-6);
    expect(off(0.02)).toBeLessThan(2e-3);
    expect(off(0.02)).toBeGreaterThan(off(0.2));
  });

  it("has the resistance of one wire where wires are thin, more where they are close", () => {
    const one = solidWireImpedance(1e-3, 58e6, 1, 2e10 * Math.PI).re;
    const rise = (side: number) => lineConstants(four(side, "diagonals"), 1e10).resistance / one - 1;
    expect(Math.abs(rise(2))).toBeLessThan(1e-6);
    // First order: the others' field across a wire, 1/(sqrt2 s) a charge, crowds the current as 1 + 2 (a/(sqrt2 s))^2.
    expect(rise(0.05) / (1e-3 / 0.05) ** 2).toBeCloseTo(1, 1);
    expect(rise(3e-3)).toBeGreaterThan((1e-3 / 3e-3) ** 2);
  });
});

describe("shielded pair", () => {
  const shielded = (inside: number, metal = copper): BuiltLine => ({
    kind: "shielded pair",
    wire: wire(1e-3, metal),
    spacing: exactly(3e-3),
    outer: { innerRadius: inside / 2, wall: Number.POSITIVE_INFINITY, metal, resistanceFactor: 1 },
    dielectric: polyethylene,
  });

  it("nears the pair alone in a wide shield, and has less impedance and more loss in a narrow one", () => {
    const alone: ParallelWireLine = { ...pair(1e-3, 3e-3), dielectric: polyethylene };
    expect(z0(shielded(4, perfect)) / z0({ ...alone, wire: wire(1e-3, perfect) })).toBeCloseTo(1, 5);
    const [narrow, wide] = [lineConstants(shielded(6e-3), 1e7), lineConstants(shielded(12e-3), 1e7)];
    expect(narrow.z0.re).toBeLessThan(wide.z0.re);
    expect(narrow.gamma.re).toBeGreaterThan(wide.gamma.re);
    expect(narrow.velocityFactor).toBeCloseTo(wide.velocityFactor, 2);
  });

  it("loses its shield towards direct current: the wires' resistance and the inductance of the pair alone are left", () => {
    const foil = { innerRadius: 4e-3, wall: 20e-6, metal: copper, resistanceFactor: 1 };
    const line = { ...shielded(8e-3), outer: foil } as BuiltLine;
    const alone: ParallelWireLine = { ...pair(1e-3, 3e-3), dielectric: polyethylene };
    const [low, bare] = [lineConstants(line, 1), lineConstants(alone, 1)];
    expect(low.resistance / bare.resistance).toBeCloseTo(1, 9);
    // What the shield does to the crowding in the wires stays in: some 0.1 %.
    expect(low.inductance / bare.inductance).toBeCloseTo(1, 2);
    expect(lineConstants(line, 1e7).inductance).toBeLessThan(0.95 * lineConstants(alone, 1e7).inductance);
  });

  // Handbook formula with p = spacing over wire, q = spacing over shield, good to about 1 %: from memory.
  it("agrees with the handbooks' formula", () => {
    const [p, q] = [3, 3 / 8];
    const bracket = Math.log((2 * p * (1 - q * q)) / (1 + q * q)) - ((1 + 4 * p * p) / (16 * p ** 4)) * (1 - 4 * q * q);
    const formula = (vacuumImpedance / (Math.PI * Math.sqrt(2.26))) * bracket;
    expect(Math.abs(z0(shielded(8e-3, perfect)) / formula - 1)).toBeLessThan(0.01);
  });
});
