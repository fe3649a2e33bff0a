/** Corrugated 50-ohm lines with air and spacers. Sizes below half an inch are hardly sold. */
import type { CatalogueLine } from "../catalogueLine";
import { corrugatedLine } from "../corrugatedLine";
import { copperTube, solid } from "../lineParts";

const filling = "air";
const lossRange = [0.85, 1.15] as const;

export const corrugatedAir: readonly CatalogueLine[] = [
  corrugatedLine({
    size: "1/2 in",
    filling,
    velocityFactor: [0.914, 0.015],
    loss: [
      [10, 0.25],
      [100, 0.81],
      [450, 1.78],
      [1000, 2.75],
    ],
    lossRange,
    inner: solid(4.1e-3),
    innerSays: "4.1 mm copper",
    jacket: 16e-3,
    weight: 0.25,
    bend: [0.1, 0.15],
    voltage: [700, 1000],
  }),
  corrugatedLine({
    size: "7/8 in",
    filling,
    velocityFactor: [0.916, 0.01],
    loss: [
      [10, 0.113],
      [100, 0.366],
      [450, 0.82],
      [1000, 1.27],
    ],
    lossRange,
    inner: copperTube(8.9e-3, 0.5e-3),
    innerSays: "copper tube of 8.9 mm",
    jacket: 28e-3,
    weight: 0.8,
    bend: [0.2, 0.3],
    voltage: [1300, 1700],
  }),
  corrugatedLine({
    size: "1 5/8 in",
    filling,
    velocityFactor: [0.921, 0.01],
    loss: [
      [10, 0.061],
      [100, 0.2],
      [450, 0.45],
      [1000, 0.71],
    ],
    lossRange,
    inner: copperTube(17.3e-3, 0.7e-3),
    innerSays: "copper tube of 17.3 mm",
    jacket: 50e-3,
    weight: 1.55,
    bend: [0.4, 0.6],
    voltage: [2400, 2900],
  }),
];
