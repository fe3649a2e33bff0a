import { describe, expect, it } from "vitest";
import { closePorts } from "../chain/closePorts";
import { type Complex, complex, magnitude, negate, reciprocal, subtract, zero } from "../numerics/complex";
import { dipole, testFrequency, testWavelength, wire } from "./antennas.fixture";
import { admittanceOfAll, basisImpedances, portBasis } from "./portBasis";
import { solveAntenna } from "./solveAntenna";
import type { Soil, Structure } from "./structure";

const average: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };
const apart = (a: Complex, b: Complex): number => magnitude(subtract(a, b));

describe("ports whose currents are one", () => {
  it("are found, and the others as sums of the earlier ones", () => {
    const one = (unknown: number, sign = 1) => ({ unknown, sign });
    // The third is the sum of the first two, the fourth the first turned round; the fifth is its own.
    const basis = portBasis([[one(4)], [one(7, -1)], [one(4), one(7, -1)], [one(4, -1)], [one(4), one(9)]]);
    expect(basis.ports).toEqual([0, 1, 4]);
    expect(basis.shares).toEqual([
      [1, 0, 0],
      [0, 1, 0],
      [1, 1, 0],
      [-1, 0, 0],
      [0, 0, 1],
    ]);
  });

  it("give back the admittances they came from", () => {
    const [a, b, c] = [complex(2, 1), complex(-0.3, 0.2), complex(1, -1)];
    const basis = {
      ports: [0, 2],
      shares: [
        [1, 0],
        [-1, 0],
        [0, 1],
      ],
    };
    const y = [
      [a, negate(a), b],
      [negate(a), a, negate(b)],
      [b, negate(b), c],
    ];
    const back = admittanceOfAll(basisImpedances(y, basis)!, basis)!;
    const off = y.flatMap((row, i) => row.map((x, k) => apart(x, back[i]![k]!)));
    expect(Math.max(...off)).toBeLessThan(1e-14);
  });

  // An earth right under the feed: all current passes both. It is the plain antenna with the earth in series.
  it("have an error and an extrapolation like a feed alone", () => {
    const mast: Structure = {
      wires: [wire([0, 0, 0], [0, 0, testWavelength / 4], 2e-3)],
      feeds: [{ name: "feed", at: [0, 0, 0], from: [], into: [0] }],
      loads: [],
    };
    const plain = solveAntenna(mast, { kind: "perfect" }, testFrequency);
    const earthed = solveAntenna(
      { ...mast, contacts: [{ name: "rod", at: [0, 0, 0], reach: 1 }] },
      { kind: "perfect" },
      testFrequency,
    );
    expect(earthed.basis.ports).toEqual([0]);
    expect(earthed.errorEstimate).toBeCloseTo(plain.errorEstimate, 6);
    const closed = closePorts(earthed.admittance, [zero])!;
    expect(apart(reciprocal(closed.admittance[0]![0]!), reciprocal(plain.admittance[0]![0]!))).toBeLessThan(1e-6);
  });

  it("have one at a choke that takes all the feed's current, too", () => {
    const plain = dipole(testWavelength / 2, 1e-3, 9);
    const choked: Structure = { ...plain, gaps: [{ name: "choke", wire: plain.feeds[0]!.into[0]!, distance: 0 }] };
    const [bare, opened] = [plain, choked].map((s) => solveAntenna(s, average, testFrequency)) as [
      ReturnType<typeof solveAntenna>,
      ReturnType<typeof solveAntenna>,
    ];
    expect(opened.errorOverGoal).toBeCloseTo(bare.errorOverGoal, 6);
    const z = complex(30, -700);
    const closed = closePorts(opened.admittance, [z])!.admittance[0]![0]!;
    const inSeries = subtract(reciprocal(closed), reciprocal(bare.admittance[0]![0]!));
    expect(apart(inSeries, z)).toBeLessThan(1e-6);
  });
});
