/** Structures of the study without closed loops. */
import type { Point } from "@feedpath/engine";
import { armed, chain, coil, feed, type Study, soils, structure, trap, wire } from "./pieces";

const up = (height: number): Point => [0, 0, height];

/** A mast of radius 5 mm over level radials. */
function radials(count: number, height: number, length: number) {
  const ends = Array.from({ length: count }, (_, i): Point => {
    const azimuth = (2 * Math.PI * i) / count;
    return [length * Math.cos(azimuth), length * Math.sin(azimuth), height];
  });
  const wires = [wire(up(height), up(height + 10.3), 5e-3), ...ends.map((end) => wire(up(height), end))];
  return structure(wires, [
    feed(
      up(height),
      ends.map((_, i) => i + 1),
      [0],
    ),
  ]);
}

/** Half an element of tubes that grow thinner outwards, lying along y from the middle. */
const tapered = (x: number, half: readonly (readonly [number, number])[], sign: 1 | -1) => {
  let at = 0;
  return half.map(([length, radius]) => {
    const from: Point = [x, sign * at, 12];
    at += length;
    return wire(from, [x, sign * at, 12], radius);
  });
};

const element = (x: number, half: number) =>
  chain(
    [
      [x, -half, 12],
      [x, half, 12],
    ],
    12e-3,
  );

/** Steel of a tenth of the conductivity of copper under 60 micrometres of copper. */
const cladSection = (radius: number) => ({
  form: "solid" as const,
  layers: [
    { metal: { name: "steel", conductivity: 5.8e6, permeability: 200 }, outerRadius: radius - 60e-6 },
    { metal: { name: "copper", conductivity: 58e6, permeability: 1 }, outerRadius: radius },
  ],
  holeRadius: 0,
  effectiveRadiusRatio: 1,
  resistanceFactor: 1,
});

const tubes = [
  [1.5, 15e-3],
  [1.5, 10e-3],
  [2.1, 6e-3],
] as const;

export const openShapes: readonly Study[] = [
  {
    name: "level dipole, free space",
    structure: armed(up(0), [0, -10, 0], [0, 10, 0]),
    soil: soils.free,
    frequency: 7.1e6,
  },
  {
    name: "level dipole 10 m over average soil",
    structure: armed(up(10), [0, -10, 10], [0, 10, 10]),
    soil: soils.average,
    frequency: 7.1e6,
  },
  {
    name: "level dipole 2 m over poor soil",
    structure: armed(up(2), [0, -10, 2], [0, 10, 2]),
    soil: soils.poor,
    frequency: 7.1e6,
  },
  { name: "upright dipole over sea water", structure: armed(up(12), up(2), up(22)), soil: soils.sea, frequency: 7.1e6 },
  {
    name: "inverted vee over average soil",
    structure: armed(up(12), [0, -8.7, 7], [0, 8.7, 7]),
    soil: soils.average,
    frequency: 7.1e6,
  },
  {
    name: "dipole fed at a third, second harmonic",
    structure: armed([0, -3.4, 10], [0, -10, 10], [0, 10, 10]),
    soil: soils.average,
    frequency: 14.2e6,
  },
  {
    name: "dipole near a full wave",
    structure: armed(up(15), [0, -20, 15], [0, 20, 15]),
    soil: soils.average,
    frequency: 7.1e6,
  },
  {
    name: "wire of three waves fed near its end",
    structure: armed([0, 5, 10], [0, 0, 10], [0, 63, 10]),
    soil: soils.good,
    frequency: 14.2e6,
  },
  {
    name: "short dipole of a twentieth wave",
    structure: armed(up(10), [0, -1, 10], [0, 1, 10]),
    soil: soils.average,
    frequency: 7.1e6,
  },
  {
    name: "thick dipole, radius 60 mm at 28 MHz",
    structure: armed(up(6), [0, -2.4, 6], [0, 2.4, 6], 60e-3),
    soil: soils.average,
    frequency: 28.3e6,
  },
  {
    name: "dipole over soil in layers",
    structure: armed(up(8), [0, -10, 8], [0, 10, 8]),
    soil: soils.layered,
    frequency: 7.1e6,
  },
  {
    name: "mast over 4 radials half a metre up",
    structure: radials(4, 0.5, 10.2),
    soil: soils.average,
    frequency: 7.1e6,
  },
  { name: "star of 17 wires two metres up", structure: radials(16, 2, 9), soil: soils.average, frequency: 7.1e6 },
  {
    name: "quarter-wave mast on a perfect plane",
    structure: structure([wire(up(0), up(10), 5e-3)], [feed(up(0), [], [0])]),
    soil: soils.perfect,
    frequency: 7.1e6,
  },
  {
    name: "inverted L on a perfect plane",
    structure: structure(chain([up(0), up(8), [0, 12, 8]]), [feed(up(0), [], [0])]),
    soil: soils.perfect,
    frequency: 3.65e6,
  },
  {
    name: "mast with two top wires on a perfect plane",
    structure: structure(
      [wire(up(0), up(8), 5e-3), wire(up(8), [0, 6, 8]), wire(up(8), [0, -6, 7])],
      [feed(up(0), [], [0])],
    ),
    soil: soils.perfect,
    frequency: 3.65e6,
  },
  {
    name: "element of stepped tubes",
    structure: structure([...tapered(0, tubes, -1), ...tapered(0, tubes, 1)], [feed([0, 0, 12], [0], [3])]),
    soil: soils.average,
    frequency: 14.2e6,
  },
  {
    name: "beam of three elements",
    structure: structure(
      [...element(-2.8, 5.35), ...tapered(0, [[5.0, 12e-3]], -1), ...tapered(0, [[5.0, 12e-3]], 1), ...element(3, 4.7)],
      [feed([0, 0, 12], [1], [2])],
    ),
    soil: soils.average,
    frequency: 14.2e6,
  },
  {
    name: "two masts on a perfect plane, one radius tenfold the other, two feeds",
    structure: structure(
      [wire(up(0), up(10), 20e-3), wire([10, 0, 0], [10, 0, 10], 2e-3)],
      [feed(up(0), [], [0], "one"), feed([10, 0, 0], [], [1], "two")],
    ),
    soil: soils.perfect,
    frequency: 7.1e6,
  },
  {
    name: "trap dipole",
    structure: {
      ...structure([wire(up(10), [0, -8.2, 10]), wire(up(10), [0, 8.2, 10])], [feed(up(10), [0], [1])]),
      loads: [trap(0, 5, 4e-6, 31e-12, 150), trap(1, 5, 4e-6, 31e-12, 150)],
    },
    soil: soils.average,
    frequency: 7.1e6,
  },
  {
    name: "short dipole with coils",
    structure: {
      ...structure([wire(up(8), [0, -3.7, 8]), wire(up(8), [0, 3.7, 8])], [feed(up(8), [0], [1])]),
      loads: [coil(0, 1.6, 17e-6, 150), coil(1, 1.6, 17e-6, 150)],
    },
    soil: soils.average,
    frequency: 7.1e6,
  },
  {
    name: "dipole in PVC",
    structure: armed(up(10), [0, -10, 10], [0, 10, 10], 1e-3, {
      insulation: { outerRadius: 2e-3, permittivity: 3.5, lossTangent: 0.03 },
    }),
    soil: soils.average,
    frequency: 7.1e6,
  },
  {
    name: "dipole of thin copper-clad steel at 1.8 MHz",
    structure: armed(up(10), [0, -38, 10], [0, 38, 10], 0.5e-3, { section: cladSection(0.5e-3) }),
    soil: soils.average,
    frequency: 1.85e6,
  },
  {
    name: "fan of two dipoles six degrees apart",
    structure: structure(
      [wire(up(10), [0, -10, 10]), wire(up(10), [0, 10, 10]), wire(up(10), [0, -5, 9.5]), wire(up(10), [0, 5, 9.5])],
      [feed(up(10), [0, 2], [1, 3])],
    ),
    soil: soils.average,
    frequency: 14.2e6,
  },
  {
    name: "thick mast with a thin wire from its top, 30 to 1",
    structure: structure([...chain([up(0), up(6)], 30e-3), wire(up(6), [0, 9, 6], 1e-3)], [feed(up(0), [], [0])]),
    soil: soils.perfect,
    frequency: 5.3e6,
  },
];
