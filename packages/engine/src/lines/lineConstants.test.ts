import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Metal, RoundConductor } from "../conductors/conductor";
import { complex, reciprocal } from "../numerics/complex";
import { exactly } from "../quantity/quantity";
import { decibelsPerNeper, fromImmittance, lineConstants } from "./lineConstants";
import type { CoaxialLine, DataSheetLine, ParallelWireLine } from "./lineModel";

const copper: Metal = { name: "copper", conductivity: 58e6, permeability: 1 };
const perfect: Metal = { name: "perfect", conductivity: Number.POSITIVE_INFINITY, permeability: 1 };
const air = { name: "air", permittivity: 1, lossTangent: 0 };

const wire = (metal: Metal, radius: number): RoundConductor => ({
  form: "solid",
  layers: [{ metal, outerRadius: radius }],
  holeRadius: 0,
  effectiveRadiusRatio: 1,
  resistanceFactor: 1,
});

describe("coaxial line from its build", () => {
  const line: CoaxialLine = {
    kind: "coaxial",
    inner: wire(copper, 1.13e-3),
    outer: { innerRadius: 3.625e-3, wall: Number.POSITIVE_INFINITY, metal: copper, resistanceFactor: 1 },
    dielectric: { name: "polyethylene", permittivity: 2.25, lossTangent: 2e-4 },
  };

  // f, Re Z0, Im Z0, dB/100 m, rad/m. d = 2.26, D = 7.25 mm. Source: telegrapher's equations with Bessel conductor terms,
  // evaluated independently with 30 digits by mpmath.
  it.each([
    [1e3, 72.9514198393372, -46.5581828433456, 0.0272944403615487, 4.92159757846802e-5],
    [1e5, 49.0056018894942, -2.45787118231828, 0.14462040796597, 0.00330650481872111],
    [3.6e6, 46.9972340679104, -0.400166606560444, 0.86410904230554, 0.114156816506419],
    [1.42e7, 46.7966585822427, -0.198959884817528, 1.73364341246269, 0.448363869071841],
    [1e9, 46.617454196551, -0.0195831481751987, 16.9410254458654, 31.4540306093465],
  ])("has the published constants at %f Hz", (frequency, re, im, attenuation, phase) => {
    const found = lineConstants(line, frequency);
    expect(found.z0.re / re).toBeCloseTo(1, 9);
    expect(found.z0.im / im).toBeCloseTo(1, 9);
    expect((found.gamma.re * decibelsPerNeper * 100) / attenuation).toBeCloseTo(1, 9);
    expect(found.gamma.im / phase).toBeCloseTo(1, 9);
  });

  it("takes the effective diameter of strands: RG-213/U by its plain and its effective diameter", () => {
    // Z0 48.945 ohm with 0.939 d, 46.435 ohm with d = 2.26, D = 7.24 mm, eps 2.26: arithmetic of the handbook formula, 1e-3.
    const strands = (effectiveRadiusRatio: number): CoaxialLine => ({
      ...line,
      inner: { ...wire(perfect, 1.13e-3), effectiveRadiusRatio },
      outer: { innerRadius: 3.62e-3, wall: Number.POSITIVE_INFINITY, metal: perfect, resistanceFactor: 1 },
      dielectric: { name: "polyethylene", permittivity: 2.26, lossTangent: 0 },
    });
    expect(Math.abs(lineConstants(strands(0.939), 1e7).z0.re - 48.945)).toBeLessThan(1e-3);
    expect(Math.abs(lineConstants(strands(1), 1e7).z0.re - 46.435)).toBeLessThan(1e-3);
  });

  it("refuses an inner conductor that does not fit, and a frequency of nothing", () => {
    expect(() => lineConstants({ ...line, inner: wire(copper, 4e-3) }, 1e7)).toThrow(/expected the first larger/);
    expect(() => lineConstants(line, 0)).toThrow(/expected a positive number/);
  });
});

describe("parallel-wire line from its build", () => {
  const pair = (metal: Metal, diameter: number, spacing: number): ParallelWireLine => ({
    kind: "parallel-wire",
    wire: wire(metal, diameter / 2),
    spacing: exactly(spacing),
    dielectric: air,
  });

  // Z0 = (eta0/pi) acosh(D/d), exact; values by mpmath.
  it.each([
    [1.05, 37.7648267469277],
    [2, 157.925618000641],
    [21.327534964818, 450],
    [75, 600.854938384425],
  ])("has the exact impedance at D/d = %f", (ratio, impedance) => {
    const found = lineConstants(pair(perfect, 2e-3, ratio * 2e-3), 1e7);
    expect(found.z0.re / impedance).toBeCloseTo(1, 9);
    expect(Math.abs(found.z0.im) / impedance).toBeLessThan(1e-15);
  });

  // Diameter, spacing (mm), MHz, R of the exact wires without proximity, R in the limit of small skin depth with proximity.
  // Source: Bessel form and handbook formula by mpmath.
  it.each([
    [2, 150, 3.6, 0.160347580721591, 0.157581727318918],
    [1.628, 25.4, 28.5, 0.548810607856784, 0.545767819784837],
    [1.024, 20, 14.2, 0.621811728388097, 0.6120123640555],
  ])(
    "has the resistance of wires of %f mm at %f mm and %f MHz",
    (diameter, spacing, megahertz, exactWires, thinSkin) => {
      const found = lineConstants(pair(copper, diameter / 1e3, spacing / 1e3), megahertz * 1e6);
      const ratio = spacing / diameter;
      const proximity = ratio / Math.sqrt(ratio ** 2 - 1);
      const direct = 2 / (copper.conductivity * Math.PI * (diameter / 2e3) ** 2);
      expect(found.resistance / (direct + proximity * (exactWires - direct))).toBeCloseTo(1, 9);
      expect(found.resistance).toBeGreaterThan(thinSkin);
    },
  );

  it("has twice the direct-current resistance of a wire at the low end", () => {
    const found = lineConstants(pair(copper, 2e-3, 4e-3), 1);
    expect(found.resistance * copper.conductivity * Math.PI * 1e-6).toBeCloseTo(2, 8);
  });
});

describe("telegrapher's equations", () => {
  // R = 0.01 ohm, L = 0.25 uH, G = 1 nS, C = 100 pF per metre: Z0 and gamma by mpmath.
  it.each([
    [60, 370.611813112387, -357.524303848073, 1.38489605304993e-5, 1.36142118890416e-5],
    [1e5, 50.0253109367918, -1.59034647997355, 9.99744416738825e-5, 0.00314318139630492],
    [1e8, 50.000000025343, -0.00159115154275473, 0.000100024999949352, 3.14159265518055],
  ])("gives Z0 and gamma at %f Hz", (frequency, re, im, attenuation, phase) => {
    const omega = 2 * Math.PI * frequency;
    const immittance = { series: complex(0.01, omega * 2.5e-7), shunt: complex(1e-9, omega * 1e-10), notes: [] };
    const found = fromImmittance(immittance, frequency, 0);
    expect(found.z0.re / re).toBeCloseTo(1, 9);
    expect(found.z0.im / im).toBeCloseTo(1, 9);
    expect(found.gamma.re / attenuation).toBeCloseTo(1, 9);
    expect(found.gamma.im / phase).toBeCloseTo(1, 9);
    expect(found.capacitance).toBeCloseTo(1e-10, 20);
  });
});

describe("options", () => {
  const sheet: DataSheetLine = {
    kind: "data sheet",
    side: "coaxial",
    impedance: exactly(50),
    velocityFactor: exactly(0.66),
    loss: [{ frequency: 1e7, decibelsPerMetre: exactly(0.02) }],
  };

  it("adds excess loss decibel by decibel, leaves Z0, and keeps R and G consistent with both", () => {
    const plain = lineConstants(sheet, 3e6);
    const wet = lineConstants(sheet, 3e6, { excessDecibelsPerMetre: 0.05 });
    expect((wet.gamma.re - plain.gamma.re) * decibelsPerNeper).toBeCloseTo(0.05, 12);
    expect(wet.z0).toEqual(plain.z0);
    const omega = 2 * Math.PI * 3e6;
    const again = fromImmittance(
      {
        series: complex(wet.resistance, omega * wet.inductance),
        shunt: complex(wet.conductance, omega * wet.capacitance),
        notes: [],
      },
      3e6,
      0,
    );
    expect(again.gamma.re / wet.gamma.re).toBeCloseTo(1, 10);
    expect(again.z0.im / wet.z0.im).toBeCloseTo(1, 8);
  });

  it("raises conductor loss by 0.2 percent per kelvin", () => {
    // +0.2 %/K, source: resistivity of copper +0.393 %/K at 20 C (IEC 60028) under the square root of skin effect.
    const warm = lineConstants(sheet, 1e8, { temperature: 303.15 });
    expect(warm.gamma.re / lineConstants(sheet, 1e8).gamma.re).toBeCloseTo(1.0195, 3);
  });

  it("never gives a line that makes power, whatever the data sheet says", () => {
    const points = fc.array(
      fc.record({
        frequency: fc.double({ min: 1e5, max: 1e9, noNaN: true }),
        loss: fc.double({ min: 1e-5, max: 2, noNaN: true }),
      }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(points, fc.double({ min: 1e5, max: 1e9, noNaN: true }), (loss, frequency) => {
        const model: DataSheetLine = {
          ...sheet,
          loss: loss.map((p) => ({ frequency: p.frequency, decibelsPerMetre: exactly(p.loss) })),
        };
        const found = lineConstants(model, frequency);
        expect(found.resistance).toBeGreaterThanOrEqual(0);
        expect(found.conductance).toBeGreaterThanOrEqual(0);
        expect(found.gamma.re).toBeGreaterThan(0);
        expect(reciprocal(found.z0).re).toBeGreaterThan(0);
      }),
      { numRuns: 100 },
    );
  });
});
