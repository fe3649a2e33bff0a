import { describe, expect, it } from "vitest";
import { complex, one } from "../numerics/complex";
import { dipole, groundPlane, testFrequency, testWavelength, upright } from "../wires/antennas.fixture";
import { driveAntenna } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Soil, Structure } from "../wires/structure";
import { wireCurrents } from "../wires/wireCurrents";
import { gain, gainInDecibels } from "./gain";
import { elevationLobes } from "./lobes";
import { powerAccount } from "./powerAccount";
import { strongestDirection } from "./strongestDirection";

const wl = testWavelength;
const copper = 5.8e7;
const drive = (structure: Structure, soil: Soil, frequency = testFrequency) =>
  driveAntenna(solveAntenna(structure, soil, frequency), [one]);

const soils: readonly Soil[] = [
  { kind: "free space" },
  { kind: "perfect" },
  { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 },
  { kind: "homogeneous", relativePermittivity: 3, conductivity: 1e-4 },
  { kind: "homogeneous", relativePermittivity: 80, conductivity: 5 },
];

describe("power account", () => {
  const vee: Structure = {
    ...dipole(wl / 2, 1e-3, 12, copper),
    wires: dipole(wl / 2, 1e-3, 12, copper).wires.map((w, i) =>
      i === 0 ? { ...w, from: [0, -8, 6] as const } : { ...w, to: [0, 8, 6] as const },
    ),
  };
  const antennas = [
    { name: "low dipole", structure: dipole(wl / 2, 1e-3, 0.03 * wl, copper) },
    { name: "dipole", structure: dipole(wl / 2, 1e-3, 0.3 * wl, copper) },
    {
      name: "inverted vee with a lossy coil",
      structure: { ...vee, loads: [{ wire: 0, distance: 4, impedance: () => complex(15, 200) }] },
    },
    { name: "upright dipole", structure: upright(wl / 2, 5e-3, 0.3 * wl) },
    { name: "vertical over radials", structure: groundPlane(3) },
  ];
  it.each(antennas)("adds up: $name", ({ structure }) => {
    for (const soil of soils) {
      const account = powerAccount(drive(structure, soil));
      expect(Math.abs(account.residue), JSON.stringify(soil)).toBeLessThan(soil.kind === "homogeneous" ? 1e-3 : 1e-4);
      expect(account.radiated).toBeGreaterThan(0);
      expect(account.heatInSoil > 0).toBe(soil.kind === "homogeneous");
      expect(account.heatInLoads > 0).toBe(structure.loads.length > 0);
    }
  });

  it("adds up for elements as thick as those of a beam at 400 MHz, and gives its published gain", () => {
    // NBS Technical Note 688 (1976): reflector 0.482, director 0.424 wavelengths, spacing 0.2, rods of 0.0085
    // wavelengths, 7.1 dB over a dipole; accuracy 0.5 dB. The length of the driven element does not matter for gain.
    const f = 400e6;
    const l = 299792458 / f;
    const rod = (x: number, length: number, name: string) =>
      ({
        ...dipole(length, 0.00425 * l, 0).wires[0]!,
        name,
        from: [x, -length / 2, 0],
        to: [x, length / 2, 0],
      }) as const;
    const driven = dipole(0.46 * l, 0.00425 * l, 0);
    const beam: Structure = {
      ...driven,
      wires: [...driven.wires, rod(-0.2 * l, 0.482 * l, "reflector"), rod(0.2 * l, 0.424 * l, "director")],
    };
    const solved = drive(beam, { kind: "free space" }, f);
    expect(Math.abs(powerAccount(solved).residue)).toBeLessThan(1e-4);
    expect(Math.abs(10 * Math.log10(strongestDirection(solved).gain) - (7.1 + 2.15))).toBeLessThan(0.5);
  });

  it("adds up for a wire two centimetres above the soil", () => {
    const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };
    const account = powerAccount(drive(dipole(2, 1e-3, 0.02), soil));
    expect(Math.abs(account.residue)).toBeLessThan(1e-3);
  });

  // Share of the power that reaches the sky, sinusoidal current, exact integral in another form (own script, 1e-6).
  // Tolerance as for the impedance: 5 %.
  it.each([
    { relativePermittivity: 13, conductivity: 0.005, f: 14.2e6, h: 0.1, up: false, sky: 0.380334 },
    { relativePermittivity: 13, conductivity: 0.005, f: 14.2e6, h: 0.25, up: false, sky: 0.742402 },
    { relativePermittivity: 13, conductivity: 0.005, f: 3.6e6, h: 0.05, up: false, sky: 0.212771 },
    { relativePermittivity: 5, conductivity: 0.001, f: 14.2e6, h: 0.25, up: false, sky: 0.629097 },
    { relativePermittivity: 13, conductivity: 0.005, f: 14.2e6, h: 0.5, up: true, sky: 0.349168 },
  ])("sends to the sky what the exact integral says: $h wavelengths, upright $up", ({ f, h, up, sky, ...soil }) => {
    const length = 299792458 / f;
    const structure = (up ? upright : dipole)(length / 2, 1e-6 * length, h * length);
    const account = powerAccount(drive(structure, { kind: "homogeneous", ...soil }, f));
    expect(Math.abs(account.radiated / account.powerIn / sky - 1)).toBeLessThan(0.05);
  });
});

describe("gain", () => {
  it("of a thin half-wave dipole is 2.15 dBi broadside and falls off towards its ends", () => {
    // 4/Cin(2 pi) = 1.64092, 2.1509 dBi (sinusoidal current; Balanis 2005 sec. 4.6, from memory).
    const driven = drive(dipole(wl / 2, 1e-6 * wl, 10), { kind: "free space" });
    expect(Math.abs(gainInDecibels(driven, 0, Math.PI / 2) - 2.1509)).toBeLessThan(0.03);
    expect(gain(driven, 0, 0)).toBeLessThan(1e-6);
    // Equal all around the wire: of equal directions the one on the horizon is told.
    const best = strongestDirection(driven);
    expect(best.gain).toBeCloseTo(gain(driven, Math.PI / 2, 0), 6);
    expect(best.elevation).toBe(0);
    expect(best.azimuth).toBeCloseTo(Math.PI / 2, 9);
  });

  // Perfect ground, sinusoidal current (closed form, exact eta; own script). The finite wire changes tenths of a dB at
  // most; elevations agree to 0.5 degree.
  it.each([
    { h: 0.25, gainOf: 7.4845, elevation: 90 },
    { h: 0.5, gainOf: 8.4165, elevation: 30 },
    { h: 0.4, gainOf: 7.1924, elevation: 38.7 },
    { h: 0.6, gainOf: 9.1873, elevation: 24.6 },
  ])("over a perfect plane matches the closed form: $h wavelengths", ({ h, gainOf, elevation }) => {
    const best = strongestDirection(drive(dipole(wl / 2, 1e-6 * wl, h * wl), { kind: "perfect" }));
    expect(Math.abs(10 * Math.log10(best.gain) - gainOf)).toBeLessThan(0.1);
    expect(Math.abs((best.elevation * 180) / Math.PI - elevation)).toBeLessThan(0.5);
  });

  it("finds lobes and nulls of a dipole one wavelength up", () => {
    const driven = drive(dipole(wl / 2, 1e-3, wl), { kind: "perfect" });
    const lobes = elevationLobes(driven, Math.PI / 2);
    // Array factor sin(k h sin(elevation)): maxima at sin = 1/4 and 3/4, null at 30 degrees (arithmetic).
    expect(lobes).toHaveLength(2);
    expect(Math.abs((lobes[0]!.elevation * 180) / Math.PI - 14.48)).toBeLessThan(0.1);
    expect(Math.abs((lobes[1]!.elevation * 180) / Math.PI - 48.59)).toBeLessThan(0.1);
    expect(gain(driven, Math.PI / 6, Math.PI / 2)).toBeLessThan(1e-6);
  });

  it("knows north from east", () => {
    const driven = drive(dipole(wl / 2, 1e-3, wl / 2), { kind: "perfect" });
    // The wire lies north to south: it radiates east and west.
    const best = strongestDirection(driven);
    expect(Math.abs(Math.sin(best.azimuth))).toBeCloseTo(1, 3);
    expect(gain(driven, 0.5, Math.PI / 2)).toBeGreaterThan(2 * gain(driven, 0.5, 0));
  });

  it("vanishes along lossy soil", () => {
    const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };
    expect(gain(drive(upright(wl / 2, 5e-3, 0.3 * wl), soil), 0, 1)).toBeLessThan(1e-20);
  });
});

describe("currents", () => {
  it("follow half a sine from the feed to the ends", () => {
    const driven = drive(dipole(wl / 2, 1e-6 * wl, 10), { kind: "free space" });
    const [left, right] = wireCurrents(driven);
    const top = right!.magnitude[0]!;
    expect(left!.magnitude.at(-1)).toBeCloseTo(top, 12);
    expect(right!.magnitude.at(-1)).toBe(0);
    right!.distance.forEach((d, i) => {
      expect(Math.abs(right!.magnitude[i]! / top - Math.cos((2 * Math.PI * d) / wl))).toBeLessThan(0.05);
    });
  });
  it("need one voltage for each feed", () => {
    const solution = solveAntenna(dipole(20, 1e-3, 10), { kind: "free space" }, testFrequency);
    expect(() => driveAntenna(solution, [])).toThrow("0 voltages for 1 ports");
  });
});
