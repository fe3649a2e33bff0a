import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cableMetals } from "../conductors/metals";
import { shieldedConductor } from "../conductors/shieldedConductor";
import { strandedConductor } from "../conductors/strandedConductor";
import { complex } from "../numerics/complex";
import { exactly } from "../quantity/quantity";
import { lineLoss } from "./alongLine";
import { attenuationParts } from "./attenuationParts";
import { lineConstants } from "./lineConstants";
import type { BuiltLine, CoaxialLine, Dielectric } from "./lineModel";

const { copper, aluminium, tin } = cableMetals;
const ratio = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const frequencies = ratio(2, 9).map((power) => 10 ** power);

/** Dielectrics of every form that is passive. */
const dielectrics: fc.Arbitrary<Dielectric> = fc.record({
  name: fc.constant("own"),
  permittivity: ratio(1, 4),
  lossTangent: ratio(0, 0.02),
  statedAt: fc.constant(1e8),
});

const wires = fc
  .record({
    count: fc.constantFrom(1, 7, 12, 19, 37, 50),
    metal: fc.constantFrom(copper, aluminium),
    tin: fc.boolean(),
  })
  .map(({ count, metal, tin: coat }) =>
    strandedConductor(count, 4e-4, metal, coat ? { coatings: [{ metal: tin, thickness: 2e-6 }] } : {}),
  );

const shields = fc.constantFrom(
  { form: "tube" } as const,
  { form: "corrugated", depth: 2e-3, pitch: 5e-3 } as const,
  {
    form: "braid",
    braid: { coverage: null, carriers: 24, ends: 6, wire: 0.16e-3, angle: 0.5, layers: 1 },
  } as const,
  {
    form: "foil and braid",
    foil: { metal: aluminium, thickness: 9e-6 },
    braid: { coverage: 0.6, carriers: null, ends: null, wire: null, angle: null, layers: 1 },
  } as const,
);

const coaxial: fc.Arbitrary<CoaxialLine> = fc.record({
  kind: fc.constant("coaxial" as const),
  inner: wires,
  outer: shields.map((shield) => shieldedConductor({ innerRadius: 4e-3, metal: copper, shield, wall: 2e-4 })),
  dielectric: dielectrics,
});

const built: fc.Arbitrary<BuiltLine> = fc.oneof(
  coaxial,
  fc.record({
    kind: fc.constant("parallel-wire" as const),
    wire: wires,
    spacing: ratio(4e-3, 0.2).map(exactly),
    dielectric: dielectrics,
  }),
  fc.record({
    kind: fc.constant("wire over plane" as const),
    wire: wires,
    height: ratio(4e-3, 0.2).map(exactly),
    plane: fc.constant(copper),
    dielectric: dielectrics,
  }),
  fc.record({
    kind: fc.constant("four-wire" as const),
    wire: wires,
    side: ratio(6e-3, 0.2).map(exactly),
    joined: fc.constantFrom("diagonals" as const, "neighbours" as const),
    dielectric: dielectrics,
  }),
);

const settings = { numRuns: 60 };

describe("every line from its build", () => {
  it("makes no power: resistance above 0, no negative conductance, a wave that fades and carries power its way", () => {
    fc.assert(
      fc.property(built, frequencies, (line, frequency) => {
        const { resistance, conductance, gamma, z0, inductance, capacitance } = lineConstants(line, frequency);
        for (const x of [resistance, gamma.re, gamma.im, z0.re, inductance, capacitance]) expect(x).toBeGreaterThan(0);
        expect(conductance).toBeGreaterThanOrEqual(0);
      }),
      settings,
    );
  });

  it("has parts of its attenuation that add up, none negative", () => {
    fc.assert(
      fc.property(built, frequencies, (line, frequency) => {
        const parts = attenuationParts(line, frequency);
        const whole = lineConstants(line, frequency).gamma.re;
        expect(Math.abs((parts.conductors + parts.dielectric) / whole - 1)).toBeLessThan(1e-12);
        expect(Math.abs((parts.inner! + parts.outer!) / parts.conductors - 1)).toBeLessThan(1e-12);
        expect(Math.min(parts.inner!, parts.outer!, parts.dielectric)).toBeGreaterThanOrEqual(0);
      }),
      settings,
    );
  });

  it("loses more the longer it is, whatever its load", () => {
    fc.assert(
      fc.property(
        built,
        frequencies,
        ratio(1, 2000),
        ratio(-500, 500),
        ratio(1, 20),
        ratio(1.01, 3),
        (line, frequency, resistance, reactance, length, times) => {
          const constants = lineConstants(line, frequency);
          const load = complex(resistance, reactance);
          const loss = (metres: number): number => lineLoss(constants, metres, load).atLoad;
          expect(loss(length * times)).toBeGreaterThanOrEqual(loss(length) - 1e-9);
        },
      ),
      settings,
    );
  });

  it("has more resistance the warmer it is", () => {
    fc.assert(
      fc.property(built, frequencies, ratio(220, 400), ratio(1, 100), (line, frequency, temperature, more) => {
        const at = (kelvin: number): number => lineConstants(line, frequency, { temperature: kelvin }).resistance;
        expect(at(temperature + more)).toBeGreaterThan(at(temperature));
      }),
      settings,
    );
  });
});

describe("a coaxial line towards direct current", () => {
  const line: CoaxialLine = {
    kind: "coaxial",
    inner: strandedConductor(7, 0.752e-3, copper),
    outer: shieldedConductor({ innerRadius: 3.62e-3, metal: copper, shield: { form: "tube" }, wall: 2e-4 }),
    dielectric: { name: "own", permittivity: 2.26, lossTangent: 0 },
  };

  it("has an impedance that rises as sqrt(R/(j omega C)), at 45 degrees, and as much attenuation as phase", () => {
    // Elementary: the next term is omega L/R, 3e-4 at 1 Hz here.
    const { z0, gamma, resistance, capacitance } = lineConstants(line, 1);
    const limit = Math.sqrt(resistance / (2 * Math.PI * capacitance) / 2);
    expect(Math.abs(z0.re / limit - 1)).toBeLessThan(1e-3);
    expect(Math.abs(z0.im / limit + 1)).toBeLessThan(1e-3);
    expect(Math.abs(gamma.re / gamma.im - 1)).toBeLessThan(1e-3);
  });

  it("has the resistance of both conductors' metal there", () => {
    const tube = 1 / (58e6 * Math.PI * (3.82e-3 ** 2 - 3.62e-3 ** 2));
    const strands = 1 / (58e6 * 7 * Math.PI * 0.376e-3 ** 2);
    const { resistance } = lineConstants(line, 1);
    expect(resistance).toBeGreaterThan(tube + strands);
    expect(resistance).toBeLessThan(1.02 * (tube + strands));
  });
});
