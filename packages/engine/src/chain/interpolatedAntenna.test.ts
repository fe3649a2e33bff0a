import { describe, expect, it } from "vitest";
import { radiatedPower } from "../fields/powerAccount";
import { type Complex, complex } from "../numerics/complex";
import { invertComplexMatrix } from "../numerics/invertComplexMatrix";
import { exactly } from "../quantity/quantity";
import type { Station } from "../station/station";
import { antennaOf, levelDipole, place, plainStation } from "../testing/plainStation";
import { type AntennaSolver, createAntennaSolver } from "./antennaSolver";
import { driveSolved } from "./driveSolved";
import { interpolateAntenna } from "./interpolatedAntenna";
import type { SolveRequest } from "./solveRequest";

const megahertz = 1e6;

/** Two level dipoles a few metres apart, the second of another length and fed as well. */
const pair: Station = {
  ...plainStation(),
  antennas: [
    antennaOf(levelDipole(20, 10), "antenna"),
    { ...antennaOf(levelDipole(14, 10), "other"), at: place(4, 1, 0) },
  ],
};

/** A wire of 41 m, whose resonances and those between them are passed one after another. */
const long: Station = { ...plainStation(), antennas: [antennaOf(levelDipole(41, 10))] };

const impedance = (
  solver: AntennaSolver,
  station: Station,
  frequency: number,
  mesh?: Parameters<typeof solver.solve>[3],
) => {
  const solved = solver.solve(station, frequency, 0, mesh);
  if ("refused" in solved) throw new Error(solved.refused.why);
  return invertComplexMatrix(solved.admittance)!;
};

function interpolated(station: Station, span: { from: number; to: number }, nodes?: readonly number[]) {
  const solver = createAntennaSolver();
  const run = interpolateAntenna(station, span, solver, { currents: true, ...(nodes ? { nodes } : {}) });
  const ahead: SolveRequest[] = [];
  let step = run.next();
  while (!step.done) {
    ahead.push(...(step.value.ahead ?? []));
    step = run.next();
  }
  if ("refused" in step.value) throw new Error(step.value.refused.why);
  return { solver, ahead, antenna: step.value };
}

/** Largest error at places between samples, and largest over what is allowed: 0.05 ohm and a thousandth. */
function trueError(station: Station, { solver, antenna }: ReturnType<typeof interpolated>) {
  const nodes = [...antenna.nodes].sort((a, b) => a - b);
  let [ohms, share] = [0, 0];
  nodes.slice(1).forEach((to, i) => {
    for (const part of [0.27, 0.5, 0.81]) {
      const f = nodes[i]! + part * (to - nodes[i]!);
      const exact = impedance(solver, station, f, antenna.mesh);
      const found = impedance(antenna.solver, station, f);
      exact.forEach((row, p) => {
        row.forEach((z, q) => {
          const off = Math.hypot(z.re - found[p]![q]!.re, z.im - found[p]![q]!.im);
          ohms = Math.max(ohms, off);
          share = Math.max(share, off / (0.05 + 1e-3 * Math.hypot(z.re, z.im)));
        });
      });
    }
  });
  return { ohms, share };
}

function drivenAt({ solver, antenna }: ReturnType<typeof interpolated>, station: Station, f: number, drive: Complex[]) {
  const solved = solver.solve(station, f, 0, antenna.mesh);
  if ("refused" in solved) throw new Error(solved.refused.why);
  return driveSolved(solved, drive)!;
}

describe("an antenna between exact solves", () => {
  it.each([
    { name: "a dipole over its band", station: plainStation(), from: 6.9, to: 7.4, most: 7 },
    { name: "two coupled dipoles", station: pair, from: 6.5, to: 7.6, most: 10 },
    { name: "a long wire from 1.8 to 12 MHz", station: long, from: 1.8, to: 12, most: 24 },
  ])("is within what is told: $name", ({ station, from, to, most }) => {
    const run = interpolated(station, { from: from * megahertz, to: to * megahertz });
    expect(run.antenna.solvedPoints).toBeGreaterThan(0);
    expect(run.antenna.solvedPoints).toBeLessThanOrEqual(most);
    // Currents: what leaves for the sky, of what goes in, against a solve.
    const f = (0.37 * from + 0.63 * to) * megahertz;
    const voltages = run.antenna.solver.solve(station, f);
    if ("refused" in voltages) throw new Error(voltages.refused.why);
    const drive = voltages.feeds.map((_, i) => complex(i === 0 ? 1 : 0.4));
    const [there, exact] = [run.antenna.radiating!(f, drive)!, drivenAt(run, station, f, drive)];
    expect(Math.abs(there.powerIn / exact.powerIn - 1)).toBeLessThan(2e-3);
    expect(Math.abs(radiatedPower(there) / radiatedPower(exact) - 1)).toBeLessThan(4e-3);
    const off = trueError(station, run);
    expect(off.share).toBeLessThan(1);
    expect(off.ohms).toBeLessThan(run.antenna.error);
  });

  it("takes the frequencies of a station much like it, and announces them together", () => {
    const span = { from: 6.9e6, to: 7.4e6 };
    const { antenna } = interpolated(plainStation(), span);
    const wet = plainStation({
      ground: { kind: "soil", name: "", permittivity: exactly(25), conductivity: exactly(0.02) },
    });
    const moved = interpolated(wet, span, antenna.nodes);
    expect(moved.ahead.map((r) => r.frequency)).toEqual(antenna.nodes);
    expect(moved.antenna.solvedPoints).toBe(antenna.solvedPoints);
    expect(trueError(wet, moved).ohms).toBeLessThan(moved.antenna.error);
  });
});
