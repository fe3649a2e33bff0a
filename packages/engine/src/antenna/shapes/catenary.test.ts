import { describe, expect, it } from "vitest";
import { magnitude, reciprocal, subtract } from "../../numerics/complex";
import { exactly } from "../../quantity/quantity";
import { copper } from "../../testing/plainStation";
import { solveAntenna } from "../../wires/solveAntenna";
import type { Point } from "../../wires/structure";
import { chainOf, fedLegs } from "../wireRun";
import { catenaryLength, catenaryOfLength, catenaryOfSag, catenaryOfTension, catenaryPoints } from "./catenary";
import { hangingPoints, saggingPoints } from "./hangingWire";

const height = ({ scale, start }: { scale: number; start: number }, along: number): number =>
  scale * (Math.cosh((start + along) / scale) - Math.cosh(start / scale));
const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, p, i) => sum + Math.hypot(...p.map((x, k) => x - points[i]![k]!)), 0);

describe("the catenary", () => {
  it.each([
    [20, 0, 20.5],
    [20, 6, 22],
    [20, -6, 21],
    [3, 0.5, 30],
    [20, 0, 20.0001],
  ])("between ends %d m apart and %d m in height has the length %d m", (run, rise, length) => {
    const curve = catenaryOfLength(run, rise, length);
    expect(height(curve, run)).toBeCloseTo(rise, 6);
    expect(catenaryLength(curve)).toBeCloseTo(length, 6);
  });

  it.each([
    [13, 0, 0.7],
    [13, -4, 1.2],
    [13, 3, 0.01],
  ])("of a wire of %d m that rises %d m sags %d m below its chord at mid-span", (length, rise, sag) => {
    const curve = catenaryOfSag(length, rise, sag);
    expect(height(curve, curve.run)).toBeCloseTo(rise, 8);
    expect(catenaryLength(curve)).toBeCloseTo(length, 8);
    expect(rise / 2 - height(curve, curve.run / 2)).toBeCloseTo(sag, 8);
  });

  it("under a pull sags by weight x run² / (8 tension) when it is taut", () => {
    // Elementary statics of the parabola, which a taut wire tends to.
    const [run, tension, weight] = [30, 100, 0.276];
    const curve = catenaryOfTension(run, 0, tension, weight);
    expect(-height(curve, run / 2)).toBeCloseTo((weight * run ** 2) / (8 * tension), 4);
    const sloping = catenaryOfTension(run, 8, tension, weight);
    expect(height(sloping, run)).toBeCloseTo(8, 8);
  });

  it("has its points at equal lengths", () => {
    const points = catenaryPoints(catenaryOfLength(20, 5, 24), 12);
    const pieces = points.slice(1).map((p, i) => Math.hypot(p.along - points[i]!.along, p.up - points[i]!.up));
    expect(Math.max(...pieces) - Math.min(...pieces)).toBeLessThan(0.03);
  });
});

describe("a hanging wire in straight pieces", () => {
  it("is as long as the wire and ends where it is tied", () => {
    const hangs = { kind: "length", length: exactly(25) } as const;
    const points = hangingPoints([0, 0, 10], [12, 16, 13], hangs);
    expect(lengthOf(points)).toBeCloseTo(25, 9);
    expect(points.at(-1)).toEqual([12, 16, 13]);
    expect(Math.min(...points.map((p) => p[2]))).toBeLessThan(8);
  });

  it("is straight when it is taut, and between places above each other", () => {
    const length = (metres: number) => ({ kind: "length", length: exactly(metres) }) as const;
    expect(hangingPoints([0, 0, 10], [10, 0, 10], length(10))).toHaveLength(2);
    expect(hangingPoints([0, 0, 10], [0, 0, 20], length(11))).toHaveLength(2);
  });

  // The impedance must not hang on how many pieces stand for the curve: the goal of a solution is half an ohm.
  it.each([0.4, 1.5])("gives the impedance of much finer pieces, sagging %d m", (sag) => {
    const impedance = (pieces?: number) => {
      const leg = (name: string, azimuth: number) => {
        const shape = { length: 10, rise: -1, sag, ...(pieces ? { pieces } : {}) };
        return chainOf(name, saggingPoints([0, 0, 12], azimuth, shape), copper(2e-3));
      };
      const { wires, feeds } = fedLegs(leg("first", 0), leg("second", Math.PI), "feed");
      return reciprocal(solveAntenna({ wires, feeds, loads: [] }, { kind: "free space" }, 7.1e6).admittance[0]![0]!);
    };
    expect(magnitude(subtract(impedance(), impedance(24)))).toBeLessThan(0.25);
  });
});
