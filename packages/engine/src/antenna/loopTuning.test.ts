import { describe, expect, it } from "vitest";
import { powerAccount } from "../fields/powerAccount";
import { type Complex, complex, reciprocal } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import { exactly } from "../quantity/quantity";
import { copper } from "../testing/plainStation";
import { driveAntenna } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Soil, Structure } from "../wires/structure";
import { behindTransformers, capacitorImpedance, type LoopInStructure, tuneLoop } from "./loopTuning";
import { capacitorWire, smallLoop } from "./shapes/smallLoop";

const frequency = 14.2e6;
const round = 3.4;
const built = smallLoop(
  {
    kind: "small loop",
    round: exactly(round),
    height: exactly(2.5),
    plane: exactly(Math.PI / 2),
    wire: copper(22e-3),
    capacitor: { from: 10e-12, to: 200e-12, q: exactly(2000) },
    jointsResistance: null,
  },
  [0, 0, 0],
  "antenna",
);
const gap = { name: "capacitor", wire: capacitorWire, distance: 0 };
const structure: Structure = { wires: built.wires, feeds: built.feeds, loads: [], gaps: [gap] };
const loop: LoopInStructure = {
  name: "antenna",
  feed: 0,
  gap: 1,
  capacitor: { from: 10e-12, to: 200e-12, q: exactly(2000) },
  jointsResistance: 5e-3,
  lineSide: 50,
};
const tuned = (soil: Soil, changes: Partial<LoopInStructure> = {}) =>
  tuneLoop({ ...loop, ...changes }, solveAntenna(structure, soil, frequency).admittance, frequency);
const setting = (soil: Soil, changes: Partial<LoopInStructure> = {}) => {
  const found = tuned(soil, changes);
  if ("refused" in found) throw new Error(found.refused.why);
  return found;
};
const average: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 5e-3 };

describe("the small loop", () => {
  it("closes round its middle with the stated circumference", () => {
    expect(built.wires.at(-1)!.to).toEqual(built.wires[0]!.from);
    const top = built.wires[capacitorWire]!.from;
    expect(top[2] + built.wires[0]!.from[2]).toBeCloseTo(5, 9);
  });

  it("resonates with the capacitor of its inductance", () => {
    const { capacitance } = setting({ kind: "free space" });
    // Round loop of a round wire, L = μ0 b (ln(8 b/a) - 2) (elementary texts); at a sixth of a wavelength its reactance
    // is some ten per cent above ωL: tan(kl/2)/(kl/2) of a shorted line half as long.
    const b = round / (2 * Math.PI);
    const inductance = 4e-7 * Math.PI * b * (Math.log((8 * b) / 11e-3) - 2);
    const half = (Math.PI * round * frequency) / speedOfLight;
    const needed = 1 / ((2 * Math.PI * frequency) ** 2 * inductance * (Math.tan(half) / half));
    expect(Math.abs(capacitance / needed - 1)).toBeLessThan(0.1);
  });

  it("is matched behind its transformer where it is tuned, and only there", () => {
    const { capacitance, ratio, resistance } = setting(average);
    const behind = (f: number): Complex => {
      const load = {
        wire: capacitorWire,
        distance: 0,
        impedance: (w: number) => capacitorImpedance(loop, capacitance, w),
      };
      const solution = solveAntenna({ ...structure, gaps: [], loads: [load] }, average, f);
      return reciprocal(behindTransformers(solution.admittance, [ratio])[0]![0]!);
    };
    expect(resistance).toBeLessThan(5);
    expect(behind(frequency).re).toBeCloseTo(50, 0);
    expect(Math.abs(behind(frequency).im)).toBeLessThan(2);
    expect(Math.abs(behind(frequency * 1.003).im)).toBeGreaterThan(50);
  });

  it("radiates, and adds up its power, over average soil", () => {
    const { capacitance } = setting(average);
    const load = {
      wire: capacitorWire,
      distance: 0,
      impedance: (w: number) => capacitorImpedance(loop, capacitance, w),
    };
    const account = powerAccount(
      driveAntenna(solveAntenna({ ...structure, gaps: [], loads: [load] }, average, frequency), [complex(1)]),
    );
    expect(Math.abs(account.residue)).toBeLessThan(1e-3);
  });

  it("is refused where its capacitor does not reach", () => {
    const range = { from: 10e-12, to: 12e-12, q: exactly(2000) };
    const found = tuned({ kind: "free space" }, { capacitor: range });
    expect("refused" in found && found.refused.why).toMatch(
      /needs [\d.]+ pF at 14\.2 MHz; its capacitor goes from 10 pF to 12 pF/,
    );
  });
});
