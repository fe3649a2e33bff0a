/** The other cables of MIL-DTL-17 of 50 ohm with solid polyethylene. */
import type { CatalogueLine } from "../catalogueLine";
import { braid, cladStrands, dielectric, mil40, solid, strands } from "../lineParts";
import { compilation, type MilCable, milCable } from "../milCable";

const shared: Pick<MilCable, "family" | "impedance" | "velocityFactor" | "material" | "insulation" | "capacitance"> = {
  family: "MIL-DTL-17, 50 ohm, polyethylene",
  impedance: [50, 2],
  velocityFactor: 0.659,
  material: "polyethylene",
  insulation: dielectric("polyethylene"),
  capacitance: 30.8,
};

const rg214 = milCable({
  ...shared,
  designation: "RG-214/U",
  about: "50 Ω coaxial line, 11 mm, as RG-213/U with two silvered braids: leaks least of its size.",
  sheet: "M17/75",
  inner: strands(7, 0.752e-3, "silver"),
  innerSays: "7 strands of 0.0296 in, silvered copper, 2.26 mm over all",
  outer: braid(7.24e-3, [24, 8, 0.18e-3], "silver", 2),
  outerSays: "two silvered braids",
  jacket: 10.8e-3,
  loss: [
    [10, 0.62],
    [50, 1.5],
    [100, 2.2],
    [400, 4.7],
    [1000, 8.2],
  ],
  voltage: [5000, 3700],
  weight: 0.195,
});

const rg8 = milCable({
  ...shared,
  designation: "RG-8A/U",
  about: "52 Ω coaxial line, 10 mm, solid polyethylene; RG-213/U took its place.",
  sheet: null,
  impedance: [52, 2],
  inner: strands(7, 0.724e-3),
  innerSays: "7 strands of 21 AWG, bare copper, 2.17 mm over all",
  outer: braid(7.24e-3, [24, 8, 0.18e-3]),
  outerSays: "bare copper braid",
  jacket: 10.29e-3,
  capacitance: 29.5,
  loss: [
    [10, 0.62],
    [100, 2.1],
    [400, 4.7],
    [1000, 8],
  ],
  voltage: [5000, null],
  weight: 0.155,
  confirmed: { build: `${compilation}; strands from memory`, jacket: compilation },
});

const rg223 = milCable({
  ...shared,
  designation: "RG-223/U",
  about: "Thin 50 Ω coaxial line, 5 mm, solid polyethylene, two silvered braids.",
  sheet: "M17/84",
  inner: solid(0.86e-3, "silver"),
  innerSays: "solid silvered copper of 0.034 in, 0.86 mm",
  outer: braid(2.95e-3, [16, 7, 0.127e-3], "silver", 2),
  outerSays: "two silvered braids",
  jacket: 5.36e-3,
  loss: [
    [10, 1.2],
    [100, 4.8],
    [400, 10],
    [1000, 16.5],
  ],
  voltage: [1900, 1400],
  weight: 0.055,
  confirmed: { build: `${compilation}; the silver from memory`, jacket: compilation },
});

const rg174 = milCable({
  ...shared,
  designation: "RG-174/U",
  about: "Very thin 50 Ω coaxial line, 2.5 mm, solid polyethylene, for centimetres, not metres.",
  sheet: "M17/119",
  inner: cladStrands(7, 0.16e-3, mil40),
  innerSays: "7 strands of 0.0063 in, copper-clad steel of 40 % IACS, 0.48 mm over all",
  outer: braid(1.52e-3, [16, 4, 0.102e-3], "tin"),
  outerSays: "tinned braid",
  jacket: 2.54e-3,
  loss: [
    [10, 3.4],
    [50, 6.6],
    [100, 8.9],
    [400, 18],
    [1000, 31],
  ],
  voltage: [1500, 1100],
  weight: 0.012,
  confirmed: { build: `${compilation}; strands from memory`, jacket: compilation },
});

const rg217 = milCable({
  ...shared,
  designation: "RG-217/U",
  about: "Thick 50 Ω coaxial line, 14 mm, solid polyethylene, two braids.",
  sheet: "M17/78",
  inner: solid(2.69e-3),
  innerSays: "solid copper of 0.106 in, 2.69 mm",
  outer: braid(9.4e-3, [24, 9, 0.2e-3], undefined, 2),
  outerSays: "two bare copper braids",
  jacket: 13.84e-3,
  loss: [
    [100, 1.4],
    [400, 3.3],
    [1000, 6],
  ],
  voltage: [7000, null],
  weight: 0.33,
});

const rg218 = milCable({
  ...shared,
  designation: "RG-218/U",
  about: "Very thick 50 Ω coaxial line, 22 mm, solid polyethylene, for high power.",
  sheet: "M17/79",
  inner: solid(4.95e-3),
  innerSays: "solid copper of 0.195 in, 4.95 mm",
  outer: braid(17.27e-3, [36, 9, 0.25e-3]),
  outerSays: "bare copper braid",
  jacket: 22.1e-3,
  loss: [
    [100, 0.95],
    [400, 2.3],
    [1000, 4.4],
  ],
  voltage: [11000, null],
  weight: 0.7,
});

export const furtherPolyethylene50: readonly CatalogueLine[] = [rg214, rg8, rg223, rg174, rg217, rg218];
