import { describe, expect, it } from "vitest";
import { shieldedConductor } from "../conductors/shieldedConductor";
import { magnitude } from "../numerics/complex";
import { lineConstants } from "./lineConstants";
import type { CoaxialLine, Shield } from "./lineModel";
import { shieldCoupling } from "./shieldCoupling";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
const line = (shield: Shield, wall = 1e-4): CoaxialLine => ({
  kind: "coaxial",
  inner: {
    form: "solid",
    layers: [{ metal: copper, outerRadius: 0.45e-3 }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  },
  outer: shieldedConductor({ innerRadius: 1.475e-3, metal: copper, shield, wall }),
  dielectric: { name: "polyethylene", permittivity: 2.26, lossTangent: 0 },
});
const braided = line({
  form: "braid",
  braid: { coverage: null, carriers: 16, ends: 7, wire: 0.127e-3, angle: 0.49, layers: 1 },
});

describe("coupling through a shield", () => {
  it("is (Zt l)^2/(4 Z1 Z2) for a line that is short against the wave, at both ends", () => {
    // A centimetre: what the inside loses along it, 3e-6 Np, changes nothing that is looked at.
    const [frequency, length] = [1e5, 0.01];
    const found = shieldCoupling(braided, frequency, length, { impedance: 150, velocityFactor: 1 })!;
    const { z0 } = lineConstants(braided, frequency);
    const share = (magnitude(found.transferImpedance) * length) ** 2 / (4 * 150 * z0.re);
    expect(found.nearEnd).toBeCloseTo(-10 * Math.log10(share), 4);
    expect(found.farEnd).toBeCloseTo(-10 * Math.log10(share), 4);
  });

  it("never reaches more, from a line of any length, than the screening attenuation says", () => {
    const greatest = Math.min(
      ...Array.from({ length: 400 }, (_, i) => shieldCoupling(braided, 3e7, 0.25 * (i + 1))!.farEnd),
    );
    const limit = shieldCoupling(braided, 3e7, 1)!.screeningAttenuation;
    expect(greatest).toBeGreaterThanOrEqual(limit);
    // The line's own loss keeps the ends a little below the bound.
    expect(greatest - limit).toBeLessThan(2);
  });

  it("is endless for an endless wall, better for a tube than for a braid, unknown for a braid that is", () => {
    expect(shieldCoupling(line({ form: "tube" }, 1), 1e8, 1)!.screeningAttenuation).toBeGreaterThan(300);
    const tube = shieldCoupling(line({ form: "tube" }), 3e7, 1)!.screeningAttenuation;
    expect(tube).toBeGreaterThan(shieldCoupling(braided, 3e7, 1)!.screeningAttenuation + 20);
    const unknown: Shield = {
      form: "braid",
      braid: { coverage: 0.95, carriers: null, ends: null, wire: null, angle: null, layers: 1 },
    };
    expect(shieldCoupling(line(unknown), 1e7, 1)).toBeNull();
  });

  it("refuses a line of no length", () => {
    expect(() => shieldCoupling(braided, 1e7, 0)).toThrow(/expected more than 0/);
  });
});
