/** Structures of the study with closed loops, close wires and many bends. */
import type { Point } from "@feedpath/engine";
import { capacitor, chain, feed, resistor, type Study, soils, structure, wire } from "./pieces";

/** Two level wires of a length joined at their ends, fed in the middle of the lower one; radius 1 mm. */
function folded(length: number, spacing: number, height: number, radius = 1e-3) {
  const [l, top] = [length / 2, height + spacing];
  const points: Point[] = [
    [0, 0, height],
    [0, l, height],
    [0, l, top],
    [0, -l, top],
    [0, -l, height],
    [0, 0, height],
  ];
  return structure(chain(points, radius), [feed([0, 0, height], [0], [4])]);
}

/** A square of a side in the plane of x = 0, fed in the middle of its lowest side. */
function square(
  side: number,
  lowest: number,
  radius = 1e-3,
  material: { conductivity?: number; permeability?: number } = {},
) {
  const [h, top] = [side / 2, lowest + side];
  const points: Point[] = [
    [0, 0, lowest],
    [0, h, lowest],
    [0, h, top],
    [0, -h, top],
    [0, -h, lowest],
    [0, 0, lowest],
  ];
  return structure(chain(points, radius, material), [feed([0, 0, lowest], [0], [4])]);
}

const triangle: Point[] = [
  [0, 0, 3],
  [0, 7, 3],
  [0, 0, 15],
  [0, -7, 3],
  [0, 0, 3],
];
const zigzag: Point[] = [
  [0, 0, 9],
  [0, 3, 9.5],
  [1, 5, 8.5],
  [-1, 7, 9.5],
  [1, 9, 8.5],
  [0, 11, 9],
];

/** Doublet on a pair 100 mm apart: 26 m across, 8 m down. */
function doublet() {
  const half = 0.05;
  const wires = [
    wire([0, -half, 11], [0, -13, 11]),
    wire([0, half, 11], [0, 13, 11]),
    wire([0, -half, 3], [0, -half, 11]),
    wire([0, half, 3], [0, half, 11]),
    wire([0, -half, 3], [0, 0, 3]),
    wire([0, 0, 3], [0, half, 3]),
  ];
  return structure(wires, [feed([0, 0, 3], [4], [5])]);
}

export const closedShapes: readonly Study[] = [
  { name: "folded dipole 100 mm apart", structure: folded(19.6, 0.1, 12), soil: soils.average, frequency: 7.1e6 },
  {
    name: "folded dipole six radii apart",
    structure: folded(9.8, 12e-3, 12, 2e-3),
    soil: soils.free,
    frequency: 14.2e6,
  },
  { name: "square loop of one wave", structure: square(10.8, 3), soil: soils.average, frequency: 7.1e6 },
  {
    name: "square loop of a hundredth wave side, steel",
    structure: square(0.42, 3, 5e-3, { conductivity: 5.8e6, permeability: 200 }),
    soil: soils.average,
    frequency: 7.1e6,
  },
  {
    name: "triangle of one wave over poor soil",
    structure: structure(chain(triangle), [feed([0, 0, 3], [0], [3])]),
    soil: soils.poor,
    frequency: 7.1e6,
  },
  {
    name: "small loop tuned by a capacitor",
    structure: { ...square(1, 2, 11e-3), loads: [capacitor(2, 0.5, 160e-12)] },
    soil: soils.average,
    frequency: 7.1e6,
  },
  {
    name: "folded dipole with 600 ohm across its far side",
    structure: { ...folded(25, 0.5, 10), loads: [resistor(2, 12.5, 600)] },
    soil: soils.average,
    frequency: 10.1e6,
  },
  {
    name: "bent wire of five pieces fed at its start against another",
    structure: structure([...chain(zigzag), wire([0, 0, 9], [0, -10, 9])], [feed([0, 0, 9], [5], [0])]),
    soil: soils.average,
    frequency: 7.1e6,
  },
  { name: "doublet with its pair as wires", structure: doublet(), soil: soils.average, frequency: 3.65e6 },
];
