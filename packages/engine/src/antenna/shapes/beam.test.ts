import { describe, expect, it } from "vitest";
import { type Complex, magnitude, reciprocal, subtract } from "../../numerics/complex";
import { exactly } from "../../quantity/quantity";
import type { Shape } from "../../station/antennaDescription";
import { antennaOf, copper, plainStation } from "../../testing/plainStation";
import { solveAntenna } from "../../wires/solveAntenna";
import { antennaStructure } from "../antennaStructure";

const q = exactly;
type Sections = readonly (readonly [length: number, diameter: number])[];
const beam = (sections: Sections, wire = 20e-3, length = 10.2): Shape => {
  const inner = sections.map(([reach, diameter]) => ({ length: q(reach), wire: copper(diameter) }));
  const stepped = sections.length > 0 ? { sections: inner } : {};
  return {
    kind: "beam",
    elements: [
      { length: q(length * 1.06), along: q(0), ...stepped },
      { length: q(length), along: q(4), ...stepped },
    ],
    driven: 2,
    height: q(12),
    boom: q(0),
    wire: copper(wire),
    boomCorrection: "none",
  };
};
const structureOf = (shape: Shape, more = {}) => {
  const { structure, refused } = antennaStructure(plainStation({ antennas: [{ ...antennaOf(shape), ...more }] }));
  expect(refused).toBeNull();
  return structure;
};
const impedance = (shape: Shape): Complex =>
  reciprocal(solveAntenna(structureOf(shape), { kind: "free space" }, 14.2e6).admittance[0]![0]!);

describe("elements stepped in diameter", () => {
  it("are chains from the boom outwards that reach to their tips", () => {
    const { wires } = structureOf(
      beam([
        [1.5, 30e-3],
        [2, 25e-3],
      ]),
    );
    expect(wires).toHaveLength(12);
    const reach = wires.map((w) => Math.abs(w.to[0]));
    expect(Math.max(...reach)).toBeCloseTo((10.2 * 1.06) / 2, 9);
    expect(wires.slice(0, 3).map((w) => [w.radius, Math.abs(w.to[0] - w.from[0])])).toEqual([
      [15e-3, expect.closeTo(1.5)],
      [12.5e-3, expect.closeTo(2)],
      [10e-3, expect.closeTo((10.2 * 1.06) / 2 - 3.5)],
    ]);
  });

  it("act like plain ones when no step is a step", () => {
    const plain = impedance(beam([]));
    const same = impedance(
      beam([
        [1.5, 20e-3],
        [2, 20e-3],
      ]),
    );
    // The goal of each solution is half an ohm.
    expect(magnitude(subtract(plain, same))).toBeLessThan(0.5);
  });

  it("act shorter than plain ones of their middle's thickness", () => {
    // Why builders make tapered elements longer: common practice, no source.
    expect(impedance(beam([[2.5, 30e-3]], 16e-3)).im).toBeLessThan(impedance(beam([], 30e-3)).im - 5);
  });

  it("lose what lies beyond a tip that is cut, and carry loads on both halves", () => {
    const short = structureOf(beam([[4, 30e-3]], 20e-3, 7));
    expect(Math.max(...short.wires.map((w) => Math.abs(w.to[0])))).toBeCloseTo((7 * 1.06) / 2, 9);
    const coil = {
      kind: "coil" as const,
      component: { coil: q(1e-6), capacitor: null, resistor: null, q: q(200) },
      hat: null,
      on: "element 1",
      fromFeed: q(2),
      length: null,
    };
    const { wires, loads } = structureOf(beam([[1.5, 30e-3]]), { loads: [coil] });
    const places = loads.map(({ wire, distance }) => {
      const { from, to } = wires[wire]!;
      return from[0] + (Math.sign(to[0] - from[0]) || 1) * distance;
    });
    expect(places.map(Math.abs)).toEqual([expect.closeTo(2), expect.closeTo(2)]);
    expect(places[0]! * places[1]!).toBeLessThan(0);
  });
});
