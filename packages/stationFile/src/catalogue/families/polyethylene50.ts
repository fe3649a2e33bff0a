/** Cables of MIL-DTL-17 of 50 ohm with solid polyethylene that people use most. */

import type { CatalogueLine } from "../catalogueLine";
import { braid, dielectric, fromMemory, strands } from "../lineParts";
import type { Rated } from "../lineRatings";
import { compilation, milCable, transcription } from "../milCable";

const family = "MIL-DTL-17, 50 ohm, polyethylene";
const insulation = dielectric("polyethylene");

/** W of mean power into a match at 40 °C and sea level, by MHz. */
const power = (curve: readonly (readonly [megahertz: number, watts: number])[]): Rated => ({
  ratings: {
    publishedPower: curve.map(([megahertz, watts]) => ({
      frequency: 1e6 * megahertz,
      power: watts,
      says: "matched, 40 °C, sea level",
    })),
  },
  sources: [
    {
      of: ["publishedPower"],
      value: `mean power ${curve.map(([f, watts]) => `${watts} W at ${f} MHz`).join(", ")}, ± 30 %`,
      source: "rating curves in the manner of MIL-HDBK-216",
      status: `${fromMemory}; little to be trusted`,
    },
  ],
});

const limits = (value: string, source: string, status: string): Rated => ({
  ratings: {},
  sources: [{ of: ["loss"], value, source, status }],
});
const joined = (a: Rated, b: Rated): Rated => ({
  ratings: { ...a.ratings, ...b.ratings },
  sources: [...a.sources, ...b.sources],
});

const rg58: CatalogueLine = milCable({
  designation: "RG-58C/U",
  family,
  about: "Thin 50 Ω coaxial line, 5 mm, solid polyethylene, for short runs.",
  sheet: "M17/28",
  impedance: [50, 2],
  velocityFactor: 0.659,
  material: "polyethylene",
  insulation,
  inner: strands(19, 0.1803e-3, "tin"),
  innerSays: "19 strands of 0.0071 in, tinned copper, 0.90 mm over all",
  outer: braid(2.95e-3, [16, 7, 0.127e-3], "tin"),
  outerSays: "tinned braid",
  jacket: 4.95e-3,
  capacitance: 30.8,
  loss: [
    [10, 1.4],
    [50, 3.3, 4],
    [100, 4.9],
    [400, 11],
    [1000, 20, 28],
  ],
  lossHigh: 1.2,
  voltage: [1900, 1400],
  weight: 0.037,
  confirmed: {
    impedance: transcription,
    build: `${compilation}; strands from memory`,
    jacket: `${compilation}; within 3 %`,
    voltage: `${transcription} (the later value); the older from memory`,
  },
  more: joined(
    limits(
      "attenuation at most 4.0 dB/100 ft at 50 MHz and 28 dB/100 ft at 1 GHz (the high ends)",
      "MIL-C-17/28C",
      transcription,
    ),
    power([
      [30, 450],
      [100, 250],
      [400, 110],
      [1000, 65],
    ]),
  ),
});

const rg213: CatalogueLine = milCable({
  designation: "RG-213/U",
  family,
  about: "50 Ω coaxial line, 10 mm, solid polyethylene, the usual choice for power at HF.",
  sheet: "M17/74",
  impedance: [50, 2],
  velocityFactor: 0.659,
  material: "polyethylene",
  insulation,
  inner: strands(7, 0.752e-3),
  innerSays: "7 strands of 0.0296 in, bare copper, 2.26 mm over all",
  outer: braid(7.24e-3, [24, 8, 0.18e-3]),
  outerSays: "bare copper braid",
  jacket: 10.29e-3,
  capacitance: 30.8,
  loss: [
    [10, 0.62],
    [50, 1.5],
    [100, 2.1],
    [400, 4.7],
    [1000, 8],
  ],
  voltage: [5000, 3700],
  weight: 0.155,
  confirmed: {
    impedance: transcription,
    voltage: `${transcription} (the later value); the older from memory`,
  },
  more: joined(
    limits(
      "attenuation at most 9.0 dB/100 ft at 1 GHz and 1.2 dB/100 ft at 50 MHz; the second lies below the nominal 1.5 and is not used",
      "MIL-C-17/74C",
      `${transcription}, which may have a slip there`,
    ),
    power([
      [30, 1800],
      [100, 950],
      [400, 430],
      [1000, 250],
    ]),
  ),
});

export const commonPolyethylene50: readonly CatalogueLine[] = [rg58, rg213];
