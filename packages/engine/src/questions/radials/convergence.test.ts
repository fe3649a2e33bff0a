import { describe, expect, it } from "vitest";
import { antennaStructure } from "../../antenna/antennaStructure";
import { powerAccount } from "../../fields/powerAccount";
import { one, reciprocal } from "../../numerics/complex";
import { exactly } from "../../quantity/quantity";
import { antennaOf, copper, plainStation } from "../../testing/plainStation";
import { driveAntenna } from "../../wires/driveAntenna";
import { solveAntenna } from "../../wires/solveAntenna";

/** The goal of every mesh (`errorOverGoal` of a solution): the larger of both. */
const goalOhms = 0.5;
const goalShare = 0.005;

const soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 5e-3 } as const;

const standing = (count: number, length: number) => {
  const mast = antennaOf({
    kind: "vertical",
    base: exactly(0.1),
    sections: [{ length: exactly(10), wire: copper(20e-3) }],
  });
  const radials = {
    count,
    length: exactly(length),
    wire: copper(1.5e-3),
    lie: "on the soil" as const,
    over: { from: 0, to: 2 * Math.PI },
    bond: null,
  };
  return plainStation({ antennas: [{ ...mast, against: "radials", radials }] });
};

/** Impedance and share to the sky on a mesh refined so many times. */
function solved(count: number, length: number, refinement: number) {
  const { structure } = antennaStructure(standing(count, length));
  const solution = solveAntenna(structure, soil, 7.1e6, undefined, { refinement });
  const account = powerAccount(driveAntenna(solution, [one]));
  return { z: reciprocal(solution.admittance[0]![0]!), share: account.radiated / account.powerIn, account };
}

describe("radials on the soil", () => {
  it.each([
    [2, 8],
    [4, 10],
  ])("are worked out to the method's own goal on the default mesh: %i of %i m", (count, length) => {
    const [coarse, fine] = [solved(count, length, 1), solved(count, length, 2)];
    const off = Math.hypot(coarse.z.re - fine.z.re, coarse.z.im - fine.z.im);
    const goal = Math.max(goalOhms, goalShare * Math.hypot(fine.z.re, fine.z.im));
    expect(off).toBeLessThan(goal);
    // A tenth of a decibel is what answers tell.
    expect(Math.abs(10 * Math.log10(coarse.share / fine.share))).toBeLessThan(0.1);
    expect(Math.abs(coarse.account.residue)).toBeLessThan(1e-3);
  });
});
