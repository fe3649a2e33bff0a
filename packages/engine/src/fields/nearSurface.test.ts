import { describe, expect, it } from "vitest";
import { complexPermittivity } from "../ground/soilMedium";
import { chosenKernels } from "../kernels/chosen";
import { type Complex, magnitude, multiply, scale, subtract } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { vacuumImpedance } from "../numerics/vacuum";
import { testWavelength, upright } from "../wires/antennas.fixture";
import { grazingImpedance } from "./groundWaveFlat";
import { nearFieldSampler } from "./nearField";
import { apart, average, drive, layered, sloping, soils } from "./nearField.fixture";
import { powerAccount } from "./powerAccount";

const rule = gaussLegendre(8);
const wl = testWavelength;

describe("field at the soil's surface", () => {
  it("is the end of that above it", () => {
    for (const soil of [...soils, layered]) {
      const sampler = nearFieldSampler(drive(sloping, soil));
      for (const [x, y] of [
        [3, -2],
        [0.3, 0.1],
        [-30, 50],
      ] as const) {
        const [on, above] = [sampler([x, y, 0]), sampler([x, y, 1e-4])];
        // The field changes over metres.
        expect(apart(above.e, on.e)).toBeLessThan(1e-3);
        expect(apart(above.h, on.h)).toBeLessThan(1e-3);
      }
    }
  });

  it("meets the surface impedance of well conducting water", () => {
    const sea = { relativePermittivity: 80, conductivity: 5 };
    const sampler = nearFieldSampler(drive(sloping, { kind: "homogeneous", ...sea }));
    const eps = complexPermittivity(sea, 7.1e6);
    // Leontovich: E along the surface is the wave impedance of the water times H across it, to about 1/|eps|.
    const { vertical } = grazingImpedance(eps);
    for (const [x, y] of [
      [8, -6],
      [-30, 50],
    ] as const) {
      const { e, h } = sampler([x, y, 0]);
      const across = [scale(h[1], -1), h[0]].map((v) => multiply(v, scale(vertical, vacuumImpedance)));
      const along: Complex[] = [e[0], e[1]];
      const off = Math.hypot(...along.map((v, i) => magnitude(subtract(v, across[i]!))));
      expect(off / Math.hypot(...along.map(magnitude))).toBeLessThan(0.01);
    }
  });

  it("takes the power into the soil that the plane waves carry there", () => {
    // An upright antenna: rings from its foot to 100 wavelengths, where the wave has long been attenuated.
    const driven = drive(upright(0.3 * wl, 1e-3, 0.2 * wl), average);
    const sampler = nearFieldSampler(driven);
    const edges = [0, ...Array.from({ length: 14 }, (_, i) => 100 * wl * 2 ** (i - 13))];
    let power = 0;
    for (let p = 1; p < edges.length; p++) {
      const half = (edges[p]! - edges[p - 1]!) / 2;
      rule.points.forEach((x, i) => {
        const rho = edges[p - 1]! + half * (1 + x);
        const { e, h } = sampler([rho, 0, 0]);
        // Downwards: -(Ex Hy* - Ey Hx*).
        const down = e[1].re * h[0].re + e[1].im * h[0].im - e[0].re * h[1].re - e[0].im * h[1].im;
        power += 2 * Math.PI * rho * half * rule.weights[i]! * down;
      });
    }
    const { heatInSoil } = powerAccount(driven, chosenKernels());
    // Beyond 100 wavelengths the flow falls as distance^-4: what is cut is below 1e-3.
    expect(Math.abs(power / heatInSoil - 1)).toBeLessThan(1e-3);
  });
});
