/** 50-ohm foam lines with foil and braid, by the size over their jacket. */
import type { CatalogueLine } from "../catalogueLine";
import { type ClassLine, classLine } from "../classLine";
import { cladAluminium, dielectricOf, foilAndBraid, solid } from "../lineParts";
import { fiveDiameters, voltageBetween } from "../lineRatings";

const shared = {
  family: "50-ohm foam, foil and braid",
  impedance: [50, 2],
  lossRange: [0.88, 1.15],
} as const satisfies Partial<ClassLine>;
const says = { loss: "attenuation at 20 °C", source: "usual sheets of this size", status: "from memory" };
const voltageSays = "from peak power and test voltage, which the sheets state in several ways";

const foam6 = classLine({
  ...shared,
  designation: "50-ohm 6 mm foam cable",
  about: "50 Ω foam line with foil and braid, 6 mm, solid copper inside.",
  velocityFactor: [0.84, 0.02],
  loss: [
    [30, 4.4],
    [50, 5.7],
    [150, 9.9],
    [450, 17.3],
    [900, 24.8],
  ],
  build: {
    inner: solid(1.42e-3),
    outer: foilAndBraid(3.81e-3, [16, 8, 0.12e-3], "tinned copper"),
    dielectric: dielectricOf("foam polyethylene", 0.84),
  },
  jacket: 6.1e-3,
  weight: 0.051,
  rated: [fiveDiameters(6.1e-3), voltageBetween(530, 1060, voltageSays)],
  says: { ...says, build: "1.42 mm solid copper, 3.81 mm over the foam, aluminium foil and tinned braid" },
});

const foam7 = classLine({
  ...shared,
  designation: "50-ohm 7 mm foam cable",
  about: "50 Ω foam line with foil and braid, 7 to 7.6 mm, solid copper inside.",
  velocityFactor: [0.84, 0.02],
  lossRange: [0.88, 1.2],
  loss: [
    [30, 3.5],
    [50, 4.5],
    [150, 7.9],
    [450, 14],
    [900, 20],
  ],
  build: {
    inner: solid(1.78e-3),
    outer: foilAndBraid(4.83e-3, [16, 10, 0.12e-3], "tinned copper"),
    dielectric: dielectricOf("foam polyethylene", 0.84),
  },
  jacket: 7.4e-3,
  weight: 0.075,
  rated: [fiveDiameters(7.4e-3), voltageBetween(700, 1400, voltageSays)],
  says: { ...says, build: "1.78 mm solid copper, 4.83 mm over the foam, aluminium foil and tinned braid" },
});

const foam10 = classLine({
  ...shared,
  designation: "50-ohm 10 mm foam cable",
  about: "50 Ω foam line with foil and braid, 10 mm, copper-clad aluminium inside.",
  velocityFactor: [0.85, 0.02],
  loss: [
    [30, 2.2],
    [50, 2.9],
    [150, 5],
    [450, 8.9],
    [900, 12.8],
  ],
  build: {
    inner: cladAluminium(2.74e-3),
    outer: foilAndBraid(7.24e-3, [24, 8, 0.15e-3], "tinned copper"),
    dielectric: dielectricOf("foam polyethylene", 0.85),
  },
  jacket: 10.3e-3,
  weight: 0.1,
  rated: [fiveDiameters(10.3e-3), voltageBetween(890, 1770, voltageSays)],
  says: {
    ...says,
    build: "2.74 mm copper-clad aluminium, 7.24 mm over the foam, aluminium foil and tinned braid",
  },
});

export const foam50: readonly CatalogueLine[] = [foam6, foam7, foam10];
