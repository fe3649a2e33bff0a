/** A 50-ohm line in a corrugated copper tube, by its nominal size. */
import { cableMetals, type RoundConductor, shieldedConductor } from "@feedpath/engine";
import type { CatalogueLine } from "./catalogueLine";
import { classLine } from "./classLine";
import { dielectricOf, type LossRow, lightFoam, perHundredFeet, vacuumImpedance } from "./lineParts";
import { bend, voltageBetween } from "./lineRatings";

/** Dimensions in m, weight in kg/m, loss in dB per 100 ft, voltages in V rms. */
export interface CorrugatedLine {
  /** "1/2 in". */
  readonly size: string;
  readonly filling: "foam" | "air";
  readonly velocityFactor: readonly [value: number, bound: number];
  readonly loss: readonly LossRow[];
  readonly lossRange?: readonly [low: number, high: number];
  readonly inner: RoundConductor;
  readonly innerSays: string;
  readonly jacket: number;
  readonly weight: number;
  readonly bend: readonly [least: number, usual: number];
  readonly voltage: readonly [low: number, high: number];
}

/** Share of the tube's diameter, and depth over pitch: rough, from memory of what such tubes look like. */
const corrugationDepth = 0.07;
const depthOverPitch = 0.25;

export function corrugatedLine(line: CorrugatedLine): CatalogueLine {
  const { size, filling, inner, velocityFactor } = line;
  const diameter = 2 * inner.layers.at(-1)!.outerRadius;
  const mean = diameter * Math.exp((50 * 2 * Math.PI) / (vacuumImpedance * velocityFactor[0]));
  const depth = corrugationDepth * mean;
  return classLine({
    designation: `50-ohm corrugated ${filling} line ${size}`,
    family: `50-ohm corrugated, ${filling}`,
    about:
      `50 Ω line in a corrugated copper tube, nominal ${size}, ${(1000 * line.jacket).toFixed(0)} mm with its jacket, ` +
      (filling === "foam" ? "foam." : "air held by polyethylene: kept dry under pressure."),
    impedance: [50, 1],
    velocityFactor,
    per: perHundredFeet,
    loss: line.loss,
    lossRange: line.lossRange ?? [0.9, 1.1],
    build: {
      inner,
      outer: shieldedConductor({
        innerRadius: mean / 2,
        metal: cableMetals.copper,
        shield: { form: "corrugated", depth, pitch: depth / depthOverPitch },
      }),
      dielectric:
        filling === "foam"
          ? lightFoam(velocityFactor[0])
          : { ...dielectricOf("air", velocityFactor[0]), name: "air with spacers", lossTangent: 3e-5 },
    },
    jacket: line.jacket,
    weight: line.weight,
    rated: [
      bend(...line.bend),
      voltageBetween(...line.voltage, "from the peak power such lines are sold with, at sea level"),
    ],
    says: {
      loss: "attenuation at 20 °C",
      build:
        `${line.innerSays}; corrugated copper, its mean diameter worked out from 50 Ω and the velocity factor, ` +
        "its corrugation and the loss tangent rough",
      source: "usual sheets of this size",
      status: "from memory",
    },
  });
}
