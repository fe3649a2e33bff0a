/** Cables of MIL-DTL-17 with PTFE: for heat and small size. */
import type { CatalogueLine } from "../catalogueLine";
import { braid, cladSteel, cladStrands, dielectricOf, mil40, strands } from "../lineParts";
import { type MilCable, milCable } from "../milCable";

const shared: Pick<MilCable, "family" | "impedance" | "velocityFactor" | "material" | "insulation" | "capacitance"> = {
  family: "MIL-DTL-17, PTFE",
  impedance: [50, 2],
  velocityFactor: 0.695,
  material: "PTFE",
  insulation: dielectricOf("PTFE", 0.695),
  capacitance: 29.4,
};

const rg142 = milCable({
  ...shared,
  designation: "RG-142B/U",
  about: "Thin 50 Ω coaxial line for heat, 5 mm, PTFE, two silvered braids, clad steel inside.",
  sheet: "M17/60",
  inner: cladSteel(0.94e-3, mil40, "silver"),
  innerSays: "solid silvered copper-clad steel of 40 % IACS, 0.037 in, 0.94 mm; the dimensions give 47.9 Ω",
  outer: braid(2.95e-3, [16, 7, 0.127e-3], "silver", 2),
  outerSays: "two silvered braids",
  jacket: 4.95e-3,
  loss: [
    [10, 1.1],
    [100, 3.9],
    [400, 8.2],
    [1000, 13.5],
  ],
  voltage: [1900, 1400],
  weight: 0.064,
});

const rg400 = milCable({
  ...shared,
  designation: "RG-400/U",
  about: "Thin flexible 50 Ω coaxial line for heat, 5 mm, PTFE, two silvered braids.",
  sheet: "M17/128",
  inner: strands(19, 0.196e-3, "silver"),
  innerSays:
    "19 strands, silvered copper, 0.98 mm over all, so that one has 0.0077 in where lists say 0.008; the dimensions give 47.5 Ω",
  outer: braid(2.95e-3, [16, 7, 0.127e-3], "silver", 2),
  outerSays: "two silvered braids",
  jacket: 4.95e-3,
  loss: [
    [100, 4.1],
    [400, 8.6],
    [1000, 14.5],
  ],
  voltage: [1900, 1400],
  weight: 0.068,
});

const rg316 = milCable({
  ...shared,
  designation: "RG-316/U",
  about: "Very thin 50 Ω coaxial line for heat, 2.5 mm, PTFE, clad steel strands.",
  sheet: "M17/113",
  inner: cladStrands(7, 0.1702e-3, mil40, "silver"),
  innerSays: "7 strands of 0.0067 in, silvered copper-clad steel of 40 % IACS, 0.51 mm over all",
  outer: braid(1.52e-3, [16, 4, 0.102e-3], "silver"),
  outerSays: "silvered braid",
  jacket: 2.49e-3,
  loss: [
    [100, 8.3],
    [400, 17],
    [1000, 28],
  ],
  voltage: [1200, 900],
  weight: 0.017,
});

const rg179 = milCable({
  ...shared,
  designation: "RG-179B/U",
  about: "Very thin 75 Ω coaxial line for heat, 2.5 mm, PTFE, clad steel strands.",
  sheet: "M17/94",
  impedance: [75, 3],
  inner: cladStrands(7, 0.1016e-3, mil40, "silver"),
  innerSays: "7 strands of 0.004 in, silvered copper-clad steel of 40 % IACS, 0.305 mm over all",
  outer: braid(1.6e-3, [16, 5, 0.102e-3], "silver"),
  outerSays: "silvered braid",
  jacket: 2.54e-3,
  capacitance: 19.5,
  loss: [
    [100, 8.5],
    [400, 16],
    [1000, 24],
  ],
  voltage: [1200, 900],
  weight: 0.016,
});

const rg393 = milCable({
  ...shared,
  designation: "RG-393/U",
  about: "50 Ω coaxial line for heat and power, 10 mm, PTFE, two silvered braids.",
  sheet: "M17/127",
  inner: strands(7, 0.7925e-3, "silver"),
  innerSays: "7 strands of 0.0312 in, silvered copper, 2.39 mm over all",
  outer: braid(7.24e-3, [24, 8, 0.18e-3], "silver", 2),
  outerSays: "two silvered braids",
  jacket: 9.91e-3,
  loss: [
    [100, 2.1],
    [400, 4.7],
    [1000, 7.8],
  ],
  voltage: [5000, 3700],
  weight: 0.25,
});

export const ptfe: readonly CatalogueLine[] = [rg142, rg400, rg316, rg179, rg393];
