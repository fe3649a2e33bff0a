/** The line from two sweeps of it in the station file: its far end open, and shorted. */
import type { ComplexValue, ScalarValue, WorkingStep } from "../../answer/answer";
import { lineFromOpenAndShort } from "../../lines/fromOpenAndShort";
import { decibelsPerNeper, lineConstants } from "../../lines/lineConstants";
import type { LineModel } from "../../lines/lineModel";
import { add, type Complex, complex, divide, magnitude, one, scale, subtract } from "../../numerics/complex";
import { speedOfLight } from "../../numerics/vacuum";
import { fixedNumber, ohms, plainNumber, significantNumber, withPrefix } from "../../quantity/format";
import type { LinePart } from "../../station/path";
import type { MeasuredNetwork, Station } from "../../station/station";
import type { ChosenLine } from "./parameters";

export interface SweptLine {
  /** Hz, the frequency nearest to the one asked at which both ends read well. */
  readonly frequency: number;
  /** Ohm. */
  readonly open: Complex;
  readonly shorted: Complex;
  readonly z0: Complex;
  /** dB/m. */
  readonly attenuation: number;
  readonly velocityFactor: number;
  readonly length: number;
}

/** Both impedances within this factor of each other: neither too small nor too large to be measured. Our rule. */
const readable = 6;

/**
 * Null where the file has not both sweeps at the joint before the line, or the line is not the last of its path: then what was
 * measured is not the line alone. Whole half waves are counted by the velocity factor of `model`.
 */
export function sweptLine(
  station: Station,
  { part }: ChosenLine,
  model: LineModel,
  frequency: number,
  length: number,
): SweptLine | null {
  if (part?.kind !== "line" || station.path.parts.at(-1) !== part) return null;
  const [open, shorted] = (["open", "shorted"] as const).map((end) => sweepOf(station, part, end));
  if (!open || !shorted) return null;
  const usable = open.frequencies.flatMap((f) => {
    const [zo, zs] = [impedanceAt(open, f), impedanceAt(shorted, f)];
    if (zo === null || zs === null) return [];
    const ratio = magnitude(zo) / magnitude(zs);
    return ratio < readable && ratio > 1 / readable && zo.re > 0 && zs.re > 0 ? [{ f, zo, zs }] : [];
  });
  if (usable.length === 0) return null;
  const { f, zo, zs } = usable.reduce((a, b) =>
    Math.abs(Math.log(b.f / frequency)) < Math.abs(Math.log(a.f / frequency)) ? b : a,
  );
  const { z0, gammaLength } = lineFromOpenAndShort(zo, zs);
  const expected = (2 * Math.PI * f * length) / (lineConstants(model, f).velocityFactor * speedOfLight);
  const phase = gammaLength.im + Math.PI * Math.max(0, Math.round((expected - gammaLength.im) / Math.PI));
  return {
    frequency: f,
    open: zo,
    shorted: zs,
    z0,
    attenuation: (gammaLength.re * decibelsPerNeper) / length,
    velocityFactor: (2 * Math.PI * f * length) / (phase * speedOfLight),
    length,
  };
}

/** The sweep taken at the joint in front of the line, by that joint's name or that of a meter there. */
function sweepOf(station: Station, part: LinePart, farEnd: "open" | "shorted"): MeasuredNetwork | null {
  const before = station.path.parts.at(-2);
  const joints =
    before === undefined
      ? ["transmitter"]
      : [`after ${before.name}`, ...(before.kind === "meter" ? [before.name] : [])];
  const reading = station.readings.find((r) => r.farEnd === farEnd && r.file !== null && joints.includes(r.at));
  const network = reading?.file ? (station.measured[reading.file] ?? null) : null;
  return network?.ports === 1 && station.path.parts.at(-1) === part ? network : null;
}

/** Straight between points of the sweep; null outside them. */
function impedanceAt({ frequencies, scattering, reference }: MeasuredNetwork, frequency: number): Complex | null {
  const next = frequencies.findIndex((f) => f >= frequency * (1 - 1e-9));
  if (next < 0 || (next === 0 && frequencies[0]! > frequency * (1 + 1e-9))) return null;
  const before = Math.max(0, next - 1);
  const [from, to] = [frequencies[before]!, frequencies[next]!];
  const share = to > from ? (frequency - from) / (to - from) : 1;
  const [a, b] = [scattering[before]!, scattering[next]!];
  const reflection = complex(a[0]! + share * (b[0]! - a[0]!), a[1]! + share * (b[1]! - a[1]!));
  const off = subtract(one, reflection);
  return magnitude(off) < 1e-9 ? null : scale(divide(add(one, reflection), off), reference);
}

export const sweptValues = (line: SweptLine): Record<string, ScalarValue | ComplexValue> => ({
  measuredImpedance: { re: line.z0.re, im: line.z0.im, unit: "ohm" },
  measuredAttenuation: { value: 100 * line.attenuation, unit: "dB/100 m", basis: "measured" },
  velocityFactorOfSweeps: { value: line.velocityFactor, unit: "1", basis: "measured" },
});

export const sweptStep = (line: SweptLine): WorkingStep => ({
  text: `Your two sweeps, nearest to the frequency asked where both read well: at ${withPrefix(line.frequency, "Hz")} the line shows ${ohms(line.open)} with its far end open and ${ohms(line.shorted)} with it shorted.`,
  formula: "Z_0 = \\sqrt{Z_o Z_s}, \\quad \\tanh \\gamma \\ell = \\sqrt{\\frac{Z_s}{Z_o}}",
  substituted: `Z_0 = ${fixedNumber(line.z0.re, 1)} ${line.z0.im < 0 ? "-" : "+"} j\\,${fixedNumber(Math.abs(line.z0.im), 1)} \\; \\Omega, \\; \\alpha = ${significantNumber(100 * line.attenuation, 3)} \\; \\mathrm{dB/100\\,m}, \\; \\frac{v}{c} = ${fixedNumber(line.velocityFactor, 3)} \\; (\\ell = ${plainNumber(line.length, 2)} \\; \\mathrm{m})`,
  source: "telegrapher's equations; exact for a uniform line whatever its loss; the sweeps in the station file",
  explains: ["measuredImpedance", "measuredAttenuation", "velocityFactorOfSweeps"],
});
