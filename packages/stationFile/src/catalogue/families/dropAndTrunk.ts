/** 75-ohm lines of television networks: drop cables by series, trunk lines by the size of their aluminium tube. */
import { cableMetals, shieldedConductor } from "@feedpath/engine";
import type { CatalogueLine } from "../catalogueLine";
import { classLine } from "../classLine";
import { cladAluminium, cladSteel, dielectricOf, foilAndBraid, lightFoam, perHundredFeet } from "../lineParts";
import { bend, fiveDiameters } from "../lineRatings";

const family = "75-ohm drop and trunk";
const thinFoil = "from memory; foil and film differ, and decide the loss below about 20 MHz";

const series6 = classLine({
  designation: "75-ohm series-6 drop cable",
  family,
  about: "75 Ω foam line with foil and braid, 7 mm, clad steel inside, as laid to television sets.",
  impedance: [75, 3],
  velocityFactor: [0.84, 0.02],
  per: perHundredFeet,
  loss: [
    [5, 0.58],
    [55, 1.6],
    [211, 3.05],
    [450, 4.4],
    [1000, 6.55],
  ],
  lossRange: [0.85, 1.1],
  build: {
    inner: cladSteel(1.024e-3),
    outer: foilAndBraid(4.57e-3, [16, 4, 0.16e-3], "aluminium"),
    dielectric: dielectricOf("foam polyethylene", 0.84),
  },
  jacket: 6.9e-3,
  weight: 0.041,
  rated: [fiveDiameters(6.9e-3)],
  says: {
    loss: "greatest attenuation at 20 °C",
    build: "1.024 mm clad steel, 4.57 mm over the foam, aluminium foil and braid",
    source: "ANSI/SCTE 74, series 6",
    status: thinFoil,
  },
});

const series11 = classLine({
  designation: "75-ohm series-11 drop cable",
  family,
  about: "75 Ω foam line with foil and braid, 10 mm, clad steel inside, for longer drops.",
  impedance: [75, 3],
  velocityFactor: [0.84, 0.02],
  per: perHundredFeet,
  loss: [
    [5, 0.38],
    [55, 0.96],
    [211, 1.9],
    [450, 2.75],
    [1000, 4.23],
  ],
  lossRange: [0.85, 1.15],
  build: {
    inner: cladSteel(1.63e-3),
    outer: foilAndBraid(7.11e-3, [24, 4, 0.16e-3], "aluminium"),
    dielectric: dielectricOf("foam polyethylene", 0.84),
  },
  jacket: 10.2e-3,
  weight: 0.09,
  rated: [fiveDiameters(10.2e-3)],
  says: {
    loss: "greatest attenuation at 20 °C",
    build: "1.63 mm clad steel, 7.11 mm over the foam, aluminium foil and braid",
    source: "ANSI/SCTE 74, series 11",
    status: thinFoil,
  },
});

/** Inner conductor and tube (over all, and wall) in m. */
const trunkBuild = (inner: number, tube: number, wall: number) => ({
  inner: cladAluminium(inner),
  outer: shieldedConductor({
    innerRadius: tube / 2 - wall,
    wall,
    metal: cableMetals.aluminium,
    shield: { form: "tube" },
  }),
  dielectric: lightFoam(0.875),
});

const trunk500 = classLine({
  designation: "75-ohm trunk line 0.500 in",
  family,
  about: "75 Ω foam line in a smooth aluminium tube of half an inch, 14 mm with its jacket.",
  impedance: [75, 2],
  velocityFactor: [0.875, 0.015],
  per: perHundredFeet,
  loss: [
    [5, 0.16],
    [55, 0.54],
    [211, 1.09],
    [450, 1.63],
    [1000, 2.52],
  ],
  lossRange: [0.8, 1.15],
  build: trunkBuild(2.77e-3, 12.7e-3, 0.61e-3),
  jacket: 14.2e-3,
  weight: 0.145,
  rated: [bend(0.13, 0.25)],
  says: {
    loss: "greatest attenuation at 20 °C",
    build: "2.77 mm copper-clad aluminium, tube of 12.7 mm with a wall of 0.61 mm; loss tangent rough",
    source: "usual sheets of this size",
    status: "from memory",
  },
});

const trunk750 = classLine({
  designation: "75-ohm trunk line 0.750 in",
  family,
  about: "75 Ω foam line in a smooth aluminium tube of three quarters of an inch, 21 mm with its jacket.",
  impedance: [75, 2],
  velocityFactor: [0.875, 0.015],
  per: perHundredFeet,
  loss: [
    [5, 0.11],
    [55, 0.37],
    [211, 0.74],
    [450, 1.1],
    [1000, 1.74],
  ],
  lossRange: [0.8, 1.15],
  build: trunkBuild(4.22e-3, 19.05e-3, 0.89e-3),
  jacket: 21.3e-3,
  weight: 0.29,
  rated: [bend(0.18, 0.4)],
  says: {
    loss: "greatest attenuation at 20 °C",
    build: "4.22 mm copper-clad aluminium, tube of 19.05 mm with a wall of 0.89 mm; loss tangent rough",
    source: "usual sheets of this size",
    status: "from memory",
  },
});

export const dropAndTrunk: readonly CatalogueLine[] = [series6, series11, trunk500, trunk750];
