/** One line of a study: everything that its impedance decides while its size, its weight or its cost is held. */
import { vacuumImpedance } from "../../numerics/vacuum";
import { exactly } from "../../quantity/quantity";
import { lineConstants, matchedLoss } from "../lineConstants";
import type { CoaxialLine, Dielectric, Metal, ParallelWireLine } from "../lineModel";
import { ratioOfImpedance } from "./coaxialRatios";
import { pairFieldFactor, ratioOfPair } from "./pairRatios";

/** What a cubic metre of each piece weighs (kg) or costs; `wall` of the outer conductor in m. */
export interface Stuff {
  readonly inner: number;
  readonly outer: number;
  readonly dielectric: number;
  readonly wall: number;
}

/** What stays the same from impedance to impedance: the inner diameter of the outer conductor, or the spacing of a pair (m), or kg/m, or money/m. */
export type Held =
  | { readonly by: "size"; readonly size: number }
  | { readonly by: "weight" | "cost"; readonly perMetre: number; readonly stuff: Stuff };

export interface StudyInput {
  readonly shape: "coaxial" | "pair";
  readonly dielectric: Dielectric;
  /** Field (V/m, peak) at the inner conductor that limits voltage and power. */
  readonly breakdown: number;
  /** A pair has both wires of `inner`. */
  readonly inner: Metal;
  readonly outer: Metal;
  readonly held: Held;
  /** Hz. */
  readonly frequency: number;
  /** K of the conductors; 293.15 when left out. */
  readonly temperature?: number;
}

export interface StudyPoint {
  /** Ohm, of the line without loss. */
  readonly impedance: number;
  /** D/d, or spacing over diameter. */
  readonly ratio: number;
  /** m: the inner conductor or wire, and D or the spacing. */
  readonly innerSize: number;
  readonly outerSize: number;
  /** dB/m at the frequency of the study, conductors and insulation, exact for smooth solid conductors and an endless wall. */
  readonly attenuation: number;
  /** V, peak, at which the field at the inner conductor reaches breakdown. */
  readonly peakVoltage: number;
  /** W, peak envelope, matched, at that voltage. */
  readonly peakPower: number;
}

/** Pieces of a metre: a coaxial line with a solid inner conductor, or two bare wires (spreaders not counted). */
export const amountOf = (shape: StudyInput["shape"], stuff: Stuff, innerSize: number, outerSize: number): number =>
  shape === "pair"
    ? (2 * stuff.inner * Math.PI * innerSize ** 2) / 4
    : (Math.PI / 4) * (stuff.inner * innerSize ** 2 + stuff.dielectric * (outerSize ** 2 - innerSize ** 2)) +
      stuff.outer * Math.PI * stuff.wall * (outerSize + stuff.wall);

/** Sizes at a ratio, m. Throws RangeError where what is held is too little for even the thinnest outer conductor. */
function sizesAt(
  { shape, held }: StudyInput,
  ratio: number,
): { readonly innerSize: number; readonly outerSize: number } {
  if (held.by === "size") return { innerSize: held.size / ratio, outerSize: held.size };
  const { perMetre, stuff } = held;
  if (shape === "pair") {
    const innerSize = Math.sqrt((2 * perMetre) / (Math.PI * stuff.inner));
    return { innerSize, outerSize: innerSize * ratio };
  }
  // amountOf solved for the outer size: square, linear and constant term.
  const square = (Math.PI / 4) * (stuff.inner / ratio ** 2 + stuff.dielectric * (1 - 1 / ratio ** 2));
  const linear = Math.PI * stuff.outer * stuff.wall;
  const left = perMetre - linear * stuff.wall;
  if (!(left > 0)) {
    throw new RangeError(`line study: ${perMetre} a metre is less than the outer conductor alone takes; expected more`);
  }
  const outerSize = (2 * left) / (linear + Math.sqrt(linear ** 2 + 4 * square * left));
  return { innerSize: outerSize / ratio, outerSize };
}

const solid = (metal: Metal, diameter: number): CoaxialLine["inner"] => ({
  form: "solid",
  layers: [{ metal, outerRadius: diameter / 2 }],
  holeRadius: 0,
  effectiveRadiusRatio: 1,
  resistanceFactor: 1,
});

/** The line itself, smooth and solid. */
export function studiedLine(input: StudyInput, innerSize: number, outerSize: number): CoaxialLine | ParallelWireLine {
  const inner = solid(input.inner, innerSize);
  const { dielectric } = input;
  if (input.shape === "pair") return { kind: "parallel-wire", wire: inner, spacing: exactly(outerSize), dielectric };
  const outer = { innerRadius: outerSize / 2, wall: Number.POSITIVE_INFINITY, metal: input.outer, resistanceFactor: 1 };
  return { kind: "coaxial", inner, outer, dielectric };
}

/** Everything about one impedance (ohm, above 0). P = V^2/(2 Z0); V = E (d/2) ln x, or E d/(field factor) for a pair. */
export function studyPoint(input: StudyInput, impedance: number): StudyPoint {
  const { permittivity } = input.dielectric;
  const pair = input.shape === "pair";
  const ratio = pair ? ratioOfPair(impedance, permittivity) : ratioOfImpedance(impedance, permittivity);
  const sizes = sizesAt(input, ratio);
  const factor = pair ? 1 / pairFieldFactor(ratio) : Math.log(ratio) / 2;
  const peakVoltage = input.breakdown * sizes.innerSize * factor;
  const line = studiedLine(input, sizes.innerSize, sizes.outerSize);
  return {
    impedance,
    ratio,
    ...sizes,
    attenuation: matchedLoss(
      lineConstants(line, input.frequency, input.temperature === undefined ? {} : { temperature: input.temperature }),
      1,
    ),
    peakVoltage,
    peakPower: peakVoltage ** 2 / (2 * impedance),
  };
}

/** Ohm between which a study makes sense: wires and gaps down to a thousandth of the size. */
export const studiedSpan = ({
  shape,
  dielectric,
}: Pick<StudyInput, "shape" | "dielectric">): readonly [number, number] => {
  const unit = vacuumImpedance / (2 * Math.PI * Math.sqrt(dielectric.permittivity));
  return shape === "pair" ? [0.4 * unit, 15 * unit] : [0.05 * unit, 7 * unit];
};
