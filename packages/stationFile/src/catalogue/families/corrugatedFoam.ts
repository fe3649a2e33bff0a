/** Corrugated 50-ohm lines filled with foam. */
import type { CatalogueLine } from "../catalogueLine";
import { corrugatedLine } from "../corrugatedLine";
import { cladAluminium, copperTube } from "../lineParts";

const filling = "foam";

export const corrugatedFoam: readonly CatalogueLine[] = [
  corrugatedLine({
    size: "1/4 in",
    filling,
    velocityFactor: [0.85, 0.02],
    loss: [
      [10, 0.385],
      [100, 1.24],
      [450, 2.7],
      [1000, 4.1],
    ],
    inner: cladAluminium(2.6e-3),
    innerSays: "2.6 mm copper-clad aluminium",
    jacket: 8.8e-3,
    weight: 0.09,
    bend: [0.035, 0.08],
    voltage: [550, 850],
  }),
  corrugatedLine({
    size: "3/8 in",
    filling,
    velocityFactor: [0.88, 0.015],
    loss: [
      [10, 0.32],
      [100, 1.03],
      [450, 2.2],
      [1000, 3.4],
    ],
    inner: cladAluminium(3.1e-3),
    innerSays: "3.1 mm copper-clad aluminium",
    jacket: 11.2e-3,
    weight: 0.12,
    bend: [0.05, 0.1],
    voltage: [750, 1050],
  }),
  corrugatedLine({
    size: "1/2 in",
    filling,
    velocityFactor: [0.88, 0.01],
    loss: [
      [1, 0.064],
      [10, 0.205],
      [100, 0.66],
      [450, 1.45],
      [1000, 2.22],
    ],
    inner: cladAluminium(4.8e-3),
    innerSays: "4.8 mm copper-clad aluminium",
    jacket: 16e-3,
    weight: 0.22,
    bend: [0.07, 0.13],
    voltage: [1200, 1500],
  }),
  corrugatedLine({
    size: "7/8 in",
    filling,
    velocityFactor: [0.89, 0.01],
    loss: [
      [10, 0.113],
      [100, 0.368],
      [450, 0.83],
      [1000, 1.29],
    ],
    inner: copperTube(9.05e-3, 0.5e-3),
    innerSays: "copper tube of 9.05 mm",
    jacket: 27.8e-3,
    weight: 0.49,
    bend: [0.12, 0.25],
    voltage: [1900, 2250],
  }),
  corrugatedLine({
    size: "1 5/8 in",
    filling,
    velocityFactor: [0.88, 0.015],
    loss: [
      [10, 0.061],
      [100, 0.205],
      [450, 0.48],
      [1000, 0.76],
    ],
    inner: copperTube(17.3e-3, 0.7e-3),
    innerSays: "copper tube of 17.3 mm",
    jacket: 50e-3,
    weight: 1.25,
    bend: [0.25, 0.51],
    voltage: [3300, 4100],
  }),
];
