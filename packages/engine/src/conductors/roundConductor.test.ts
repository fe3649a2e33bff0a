import { describe, expect, it } from "vitest";
import type { Metal, RoundConductor } from "./conductor";
import { outerConductorImpedance } from "./outerConductor";
import { roundConductorImpedance } from "./roundConductor";
import { solidWireImpedance, surfaceResistance } from "./solidWire";

const copper: Metal = { name: "copper", conductivity: 58e6, permeability: 1 };
const steel: Metal = { name: "steel", conductivity: 5.8e6, permeability: 200 };
const perfect: Metal = { name: "perfect", conductivity: Number.POSITIVE_INFINITY, permeability: 1 };

const round = (layers: RoundConductor["layers"], holeRadius = 0): RoundConductor => ({
  form: holeRadius > 0 ? "tube" : "solid",
  layers,
  holeRadius,
  effectiveRadiusRatio: 1,
  resistanceFactor: 1,
});
const omega = (megahertz: number): number => 2e6 * Math.PI * megahertz;

describe("round conductor", () => {
  // Outer radius and wall in skin depths; R and X over Rs/(2 pi b). Source: Schelkunoff's form, 30 digits by mpmath.
  it.each([
    [10, 0.25, 4.05202140374046, 0.166639523247921],
    [10, 1, 1.13807324840885, 0.649725168516298],
    [50, 0.5, 2.02113473572207, 0.332802222974083],
    [50, 1.5708, 0.92725973660459, 0.917083188717483],
    [50, 5, 1.00994952536863, 0.999896614854276],
  ])("gives the tube of outer radius %f and wall %f skin depths", (radius, wall, resistance, reactance) => {
    const depth = 1e-5;
    const w = 2 / (depth ** 2 * 4e-7 * Math.PI * copper.conductivity);
    const tube = round([{ metal: copper, outerRadius: radius * depth }], (radius - wall) * depth);
    const unit = surfaceResistance(copper.conductivity, 1, w) / (2 * Math.PI * radius * depth);
    const found = roundConductorImpedance(tube, w);
    expect(found.re / unit / resistance).toBeCloseTo(1, 9);
    expect(found.im / unit / reactance).toBeCloseTo(1, 9);
  });

  // Copper-clad steel, 1.024 mm, cladding 33.28 um. Source: two-layer Bessel solution, 120 digits by mpmath; the steel's
  // constants (10 % IACS, mu_r 200) are an assumption of the record.
  it.each([
    [0.1, 0.155494331157767, 0.0122913279926884],
    [1.8, 0.167672516857727, 0.0519197398935182],
    [7.1, 0.208365236438429, 0.180670579017586],
    [145, 0.9818222503105, 0.976554659378125],
  ])("gives copper-clad steel at %f MHz", (megahertz, resistance, reactance) => {
    const clad = round([
      { metal: steel, outerRadius: 0.512e-3 - 33.28e-6 },
      { metal: copper, outerRadius: 0.512e-3 },
    ]);
    const found = roundConductorImpedance(clad, omega(megahertz));
    expect(found.re / resistance).toBeCloseTo(1, 9);
    expect(found.im / reactance).toBeCloseTo(1, 9);
  });

  it("does not see a boundary between two layers of one metal", () => {
    const split = round([
      { metal: copper, outerRadius: 0.3e-3 },
      { metal: copper, outerRadius: 0.7e-3 },
      { metal: copper, outerRadius: 1e-3 },
    ]);
    for (const megahertz of [1e-3, 0.1, 3.6, 1000]) {
      const whole = solidWireImpedance(1e-3, copper.conductivity, 1, omega(megahertz));
      const found = roundConductorImpedance(split, omega(megahertz));
      expect(found.re / whole.re).toBeCloseTo(1, 11);
      expect(found.im / whole.im).toBeCloseTo(1, 9);
    }
  });

  it("joins the direct current of layers in parallel", () => {
    const layers = [
      { metal: steel, outerRadius: 0.5e-3 },
      { metal: copper, outerRadius: 0.6e-3 },
    ];
    const slow = roundConductorImpedance(round(layers), 2 * Math.PI);
    const area = Math.PI * 1e-6;
    expect(1 / slow.re).toBeCloseTo(area * (0.25 * steel.conductivity + 0.11 * copper.conductivity), 5);
    expect(roundConductorImpedance(round(layers), 0).re / slow.re).toBeCloseTo(1, 5);
  });

  it("hides everything below a perfect skin, and refuses radii that do not grow", () => {
    const plated = [
      { metal: steel, outerRadius: 0.5e-3 },
      { metal: perfect, outerRadius: 0.6e-3 },
    ];
    expect(roundConductorImpedance(round(plated), omega(1))).toEqual({ re: 0, im: 0 });
    expect(() => roundConductorImpedance(round([...plated].reverse()), omega(1))).toThrow(/radii that grow/);
  });
});

describe("outer conductor", () => {
  const screen = { innerRadius: 3.62e-3, wall: 0.2e-3, metal: copper, resistanceFactor: 1 };

  it("joins its direct-current resistance and, when thick, the endless wall", () => {
    const direct = outerConductorImpedance(screen, 0);
    expect(outerConductorImpedance(screen, 2 * Math.PI).re / direct.re).toBeCloseTo(1, 8);
    const endless = { ...screen, wall: Number.POSITIVE_INFINITY };
    const found = outerConductorImpedance(screen, omega(100));
    expect(found.re / outerConductorImpedance(endless, omega(100)).re).toBeCloseTo(1, 9);
    expect(outerConductorImpedance(endless, 0).re).toBe(0);
  });

  it("is less than the flat conductor of the same girth: the current spreads into the wall", () => {
    const w = omega(1);
    const flat = surfaceResistance(copper.conductivity, 1, w) / (2 * Math.PI * screen.innerRadius);
    const ratio = outerConductorImpedance({ ...screen, wall: Number.POSITIVE_INFINITY }, w).re / flat;
    // K0/K1 = 1 - 1/(2 g b) for large argument (Abramowitz and Stegun 9.7.2), so R falls by 1/(2 sigma b) = Rs delta/(2 b).
    const depth = 66.0854931008056e-6;
    // The next term is of the order of the square.
    expect(Math.abs(ratio - 1 + depth / (2 * screen.innerRadius))).toBeLessThan((depth / screen.innerRadius) ** 2);
    expect(ratio).toBeLessThan(1);
  });
});
