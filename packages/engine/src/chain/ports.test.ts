import { describe, expect, it } from "vitest";
import { powerAccount } from "../fields/powerAccount";
import { add, type Complex, complex, magnitude, multiply, one, reciprocal, subtract, zero } from "../numerics/complex";
import type { AntennaSolution } from "../wires/antennaSolution";
import { dipole, testFrequency, testWavelength, wire } from "../wires/antennas.fixture";
import { driveAntenna } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Soil, Structure } from "../wires/structure";
import { validateStructure } from "../wires/validateStructure";
import { allPortVoltages, closePorts } from "./closePorts";

const average: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };
const inputImpedance = (solution: AntennaSolution, ...closings: Complex[]): Complex =>
  reciprocal(closePorts(solution.admittance, closings)!.admittance[0]![0]!);
const apart = (a: Complex, b: Complex): number => magnitude(subtract(a, b));

describe("gaps on wires", () => {
  const load = complex(120, -340);
  // At 3.3 m, and at the end where both legs meet the feed.
  it.each([3.3, 0])("closed by an impedance are that impedance as a load, %d m along", (distance) => {
    const plain = dipole(testWavelength / 2, 1e-3, 9);
    const bent: Structure = {
      ...plain,
      wires: [...plain.wires, wire(plain.wires[1]!.from, [0, 0, 2]), wire([0, 0, 2], [0, 3, 2])],
    };
    const loaded = solveAntenna(
      { ...bent, loads: [{ wire: 1, distance, impedance: () => load }] },
      average,
      testFrequency,
    );
    const opened = solveAntenna(
      { ...bent, gaps: [{ name: "choke", wire: 1, distance }] },
      average,
      testFrequency,
      undefined,
      {
        refinement: loaded.method.refinement,
      },
    );
    expect(opened.ports).toEqual(["feed", "choke"]);
    const closed = closePorts(opened.fineAdmittance, [load])!;
    expect(apart(reciprocal(closed.admittance[0]![0]!), reciprocal(loaded.fineAdmittance[0]![0]!))).toBeLessThan(1e-8);
    const driven = driveAntenna(opened, allPortVoltages(closed.voltages, [one]));
    const account = powerAccount(driven);
    expect(account.heatAtPorts).toBeCloseTo(powerAccount(driveAntenna(loaded, [one])).heatInLoads, 9);
    expect(Math.abs(account.residue)).toBeLessThan(1e-3);
  });

  it("left open carry no current", () => {
    const opened = solveAntenna(
      { ...dipole(20, 1e-3, 9), gaps: [{ name: "gap", wire: 1, distance: 4 }] },
      average,
      testFrequency,
    );
    const { voltages } = closePorts(opened.admittance, ["open"])!;
    const through = opened.admittance[1]!.reduce((sum, y, i) => add(sum, multiply(y, voltages[0]![i]!)), zero);
    expect(magnitude(through)).toBeLessThan(1e-12);
  });

  it("are refused where nothing lies beyond them", () => {
    const free: Structure = { ...dipole(20, 1e-3, 9), gaps: [{ name: "choke", wire: 1, distance: 10 }] };
    expect(validateStructure(free, average, testFrequency)[0]).toContain("free end");
  });
});

describe("contacts with the soil", () => {
  const quarter = testWavelength / 4;
  const mast = (foot: number): Structure => ({
    wires: [wire([0, 0, foot], [0, 0, foot + quarter], 2e-3)],
    feeds: [{ name: "feed", at: [0, 0, foot], from: [0], into: [] }],
    loads: [],
    contacts: [{ name: "rod", at: [0, 0, foot], reach: 1 }],
  });

  it("over a perfect plane put their impedance in series with the base", () => {
    const solution = solveAntenna(mast(0), { kind: "perfect" }, testFrequency);
    const shorted = inputImpedance(solution, complex(0));
    expect(apart(inputImpedance(solution, complex(25, 7)), complex(shorted.re + 25, shorted.im + 7))).toBeLessThan(
      1e-6,
    );
    // Image theory: half of the dipole of twice the length in free space; each is solved to half an ohm.
    const whole = inputImpedance(solveAntenna(dipole(2 * quarter, 2e-3, 0), { kind: "free space" }, testFrequency));
    expect(apart(shorted, complex(whole.re / 2, whole.im / 2))).toBeLessThan(0.5);
  });

  it("over sea water come close to the perfect plane", () => {
    const sea: Soil = { kind: "homogeneous", relativePermittivity: 80, conductivity: 5 };
    const shorter: Structure = { ...mast(0.02), wires: [wire([0, 0, 0.02], [0, 0, quarter], 2e-3)] };
    const solution = solveAntenna(shorter, sea, testFrequency);
    const onSea = inputImpedance(solution, complex(-solution.electrodes[0]!.re, -solution.electrodes[0]!.im));
    const onPlane = inputImpedance(solveAntenna(mast(0), { kind: "perfect" }, testFrequency), complex(0));
    // Surface resistance of the sea at 7 MHz is below 4 milliohm a square: some tenths of an ohm, and the feed 2 cm up.
    expect(apart(onSea, onPlane)).toBeLessThan(1);
  });

  it("add up the power, the earth's share counted to the soil", () => {
    const solution = solveAntenna(mast(0.02), average, testFrequency);
    const closing = subtract(complex(40), solution.electrodes[0]!);
    const closed = closePorts(solution.fineAdmittance, [closing])!;
    const driven = driveAntenna(solution, allPortVoltages(closed.voltages, [one]));
    const account = powerAccount(driven);
    expect(Math.abs(account.residue)).toBeLessThan(1e-3);
    const earth = magnitude(driven.portCurrents[1]!) ** 2 * 40;
    // The soil takes what the earth's resistance takes and what the field loses beside it.
    expect(account.heatInSoil + account.heatAtPorts).toBeGreaterThan(earth);
  });

  it("hang little on the reach of the electrode they replace", () => {
    const at = (reach: number): Complex => {
      const structure: Structure = { ...mast(0.02), contacts: [{ name: "rod", at: [0, 0, 0.02], reach }] };
      const solution = solveAntenna(structure, average, testFrequency);
      return inputImpedance(solution, subtract(complex(40), solution.electrodes[0]!));
    };
    // An earth's resistance is never known better than to a quarter: the electrode's size must matter less.
    expect(apart(at(2), at(4))).toBeLessThan(40 / 4);
  });

  // A small plate said to have 32 ohm in soil of 1 kohm m: the field of so small an electrode, less its own 430 ohm, once
  // gave this mast -253 ohm and balanced the power of its two meshes to a fifth.
  it("leave a mast's resistance positive over poor soil, on both meshes alike", () => {
    const poor: Soil = { kind: "homogeneous", relativePermittivity: 4.83, conductivity: 0.99e-3 };
    const contacts = [{ name: "plate", at: [0, 0, 0.02] as const, reach: 0.1 }];
    const solution = solveAntenna({ ...mast(0.02), contacts }, poor, 3.6e6);
    const closing = subtract(complex(32), solution.electrodes[0]!);
    const [best, fine] = [solution.admittance, solution.fineAdmittance].map((y) => closePorts(y, [closing])!);
    const resistance = reciprocal(best!.admittance[0]![0]!).re;
    expect(resistance).toBeGreaterThan(10);
    expect(Math.abs(reciprocal(fine!.admittance[0]![0]!).re - resistance)).toBeLessThan(0.5);
    const account = powerAccount(driveAntenna(solution, allPortVoltages(fine!.voltages, [one])));
    expect(Math.abs(account.residue)).toBeLessThan(1e-3);
    expect(account.heatInSoil + account.heatAtPorts).toBeGreaterThan(0);
  });
});
