/** Cables of MIL-DTL-17 of 75 and 93 ohm with polyethylene. */
import type { CatalogueLine } from "../catalogueLine";
import { braid, cladSteel, dielectric, dielectricOf, mil40, strands } from "../lineParts";
import { compilation, type MilCable, milCable } from "../milCable";

const shared: Pick<MilCable, "family" | "impedance" | "velocityFactor" | "material" | "insulation" | "capacitance"> = {
  family: "MIL-DTL-17, 75 and 93 ohm, polyethylene",
  impedance: [75, 3],
  velocityFactor: 0.659,
  material: "polyethylene",
  insulation: dielectric("polyethylene"),
  capacitance: 20.6,
};

const rg11 = milCable({
  ...shared,
  designation: "RG-11A/U",
  about: "75 Ω coaxial line, 10 mm, solid polyethylene.",
  sheet: "M17/6",
  inner: strands(7, 0.404e-3, "tin"),
  innerSays: "7 strands of 0.0159 in, tinned copper, 1.21 mm over all",
  outer: braid(7.24e-3, [24, 8, 0.18e-3]),
  outerSays: "bare copper braid",
  jacket: 10.29e-3,
  loss: [
    [10, 0.66],
    [50, 1.6],
    [100, 2.3],
    [400, 5.2],
    [1000, 8.7],
  ],
  voltage: [5000, 3700],
  weight: 0.14,
  confirmed: { build: `${compilation}; strands from memory`, jacket: `${compilation}; within 3 %` },
});

const rg59 = milCable({
  ...shared,
  designation: "RG-59B/U",
  about: "Thin 75 Ω coaxial line, 6 mm, solid polyethylene, clad steel inside.",
  sheet: "M17/29",
  inner: cladSteel(0.574e-3, mil40),
  innerSays: "solid copper-clad steel of 40 % IACS, 0.0226 in, 0.574 mm",
  outer: braid(3.71e-3, [16, 7, 0.16e-3]),
  outerSays: "bare copper braid",
  jacket: 6.15e-3,
  loss: [
    [10, 1.1],
    [50, 2.4],
    [100, 3.4],
    [400, 7],
    [1000, 12],
  ],
  voltage: [2300, 1700],
  weight: 0.057,
  confirmed: { build: `${compilation}; the cladding from memory`, jacket: compilation },
});

const rg6 = milCable({
  ...shared,
  designation: "RG-6A/U",
  about: "75 Ω coaxial line, 8 mm, solid polyethylene, two braids; not the foam drop cable of a similar name.",
  sheet: "M17/2",
  inner: cladSteel(0.724e-3, mil40),
  innerSays: "solid copper-clad steel of 40 % IACS, 0.0285 in, 0.724 mm",
  outer: braid(4.7e-3, [24, 6, 0.16e-3], "silver", 2),
  outerSays: "two braids, the inner one silvered; both are taken as silvered",
  jacket: 8.43e-3,
  loss: [
    [10, 0.8],
    [50, 1.9],
    [100, 2.8],
    [400, 6.2],
    [1000, 10.5],
  ],
  voltage: [2700, 2000],
  weight: 0.12,
});

const rg62 = milCable({
  ...shared,
  designation: "RG-62A/U",
  about: "93 Ω coaxial line, 6 mm, polyethylene with air, of little capacitance.",
  sheet: "M17/30",
  impedance: [93, 5],
  velocityFactor: 0.84,
  insulation: { ...dielectricOf("polyethylene", 0.84), name: "air-spaced polyethylene", lossTangent: 1e-4 },
  inner: cladSteel(0.643e-3, mil40),
  innerSays: "solid copper-clad steel of 40 % IACS, 0.0253 in, 0.643 mm",
  outer: braid(3.71e-3, [16, 7, 0.16e-3]),
  outerSays: "bare copper braid",
  jacket: 6.15e-3,
  capacitance: 13.5,
  loss: [
    [10, 0.85],
    [50, 1.9],
    [100, 2.7],
    [400, 5.3],
    [1000, 8.7],
  ],
  voltage: [750, null],
  weight: 0.055,
});

export const polyethylene75: readonly CatalogueLine[] = [rg11, rg59, rg6, rg62];
