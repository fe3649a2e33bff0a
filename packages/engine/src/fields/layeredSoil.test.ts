import { describe, expect, it } from "vitest";
import type { SoilLayer } from "../ground/layeredSoil";
import { magnitude, one, subtract } from "../numerics/complex";
import { dipole, groundPlane, impedance, upright } from "../wires/antennas.fixture";
import { driveAntenna } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Soil, Structure } from "../wires/structure";
import { powerAccount } from "./powerAccount";

const sand = { relativePermittivity: 3, conductivity: 1e-4 };
const ice = { relativePermittivity: 3.2, conductivity: 1e-5 };
const sea = { relativePermittivity: 70, conductivity: 5 };
const wet = { relativePermittivity: 30, conductivity: 1e-2 };
const loam = { relativePermittivity: 15, conductivity: 6e-3 };
const stone = { relativePermittivity: 8, conductivity: 1e-3 };

const over = (top: Omit<SoilLayer, "thickness">, thickness: number, bottom: Omit<SoilLayer, "thickness">): Soil => ({
  kind: "layered",
  layers: [
    { ...top, thickness },
    { ...bottom, thickness: null },
  ],
});

const account = (structure: Structure, soil: Soil, frequency: number) =>
  powerAccount(driveAntenna(solveAntenna(structure, soil, frequency, undefined, { refinement: 1 }), [one]));

describe("antennas over soil in layers", () => {
  const soils = [
    { name: "dry sand over sea water", soil: over(sand, 2, sea) },
    { name: "ice over wet ground", soil: over(ice, 3, wet) },
    { name: "loam over stone", soil: over(loam, 1, stone) },
  ];
  it.each(soils)("account for every watt: $name", ({ soil }) => {
    for (const frequency of [1.8e6, 7.1e6, 28.5e6]) {
      const scale = 7.1e6 / frequency;
      const antennas = [
        { name: "dipole", structure: dipole(20 * scale, 1e-3, 10 * scale, 5.8e7) },
        { name: "low dipole", structure: dipole(20 * scale, 1e-3, 1.2 * scale, 5.8e7) },
        { name: "upright", structure: upright(12 * scale, 2e-3, 7 * scale) },
      ];
      for (const { name, structure } of antennas) {
        const { residue, heatInSoil, radiated } = account(structure, soil, frequency);
        expect(Math.abs(residue), `${name}, ${frequency} Hz`).toBeLessThan(1e-3);
        expect(heatInSoil).toBeGreaterThan(0);
        expect(radiated).toBeGreaterThan(0);
      }
    }
  });

  it("account for every watt with raised radials", () => {
    expect(Math.abs(account(groundPlane(1), over(loam, 1, stone), 7.1e6).residue)).toBeLessThan(1e-3);
  });

  it("account for every watt with wires on the soil", () => {
    for (const soil of [over(sand, 2, sea), over(wet, 0.1, sand)])
      expect(Math.abs(account(dipole(20, 1e-3, 0.005), soil, 7.1e6).residue)).toBeLessThan(1e-3);
  });

  it("have the impedance and the watts they have over one soil when the layers are alike", () => {
    const one: Soil = { kind: "homogeneous", ...loam };
    for (const structure of [dipole(20, 1e-3, 3), upright(12, 2e-3, 7), dipole(16, 1e-3, 0.005)]) {
      const [a, b] = [over(loam, 0.8, loam), one].map((soil) =>
        solveAntenna(structure, soil, 7.1e6, undefined, { refinement: 1 }),
      );
      // Both ways of integration state 1e-6 of the free-space kernel: below 1e-3 ohm here.
      expect(magnitude(subtract(impedance(a!), impedance(b!)))).toBeLessThan(1e-3);
      const [p, q] = [account(structure, over(loam, 0.8, loam), 7.1e6), account(structure, one, 7.1e6)];
      expect(Math.abs(p.heatInSoil / q.heatInSoil - 1)).toBeLessThan(1e-3);
      expect(Math.abs(p.radiated / q.radiated - 1)).toBeLessThan(1e-4);
    }
  });
});
