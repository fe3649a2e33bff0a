/** What the induced-EMF method computes in closed form: dipoles under a given current, alone, over a plane, and coupled. */
import {
  type DrivenAntenna,
  elevationLobes,
  type Point,
  powerAccount,
  type Soil,
  strongestDirection,
} from "@feedpath/engine";
import {
  amplitudes,
  type CurrentShape,
  carrying,
  prescribe,
  reaction,
  sinusoid,
  triangle,
} from "../antennas/prescribedCurrent";
import { type Dipole, dipoles, level, speedOfLight, upright } from "../antennas/thinWires";
import { type ComplexNumber, input, numbersOf, type PublishedRow, publishedRow } from "../ledger/publishedRow";

const frequency = 29_979_245.8;
const wavelength = speedOfLight / frequency;
const k = (2 * Math.PI) / wavelength;
const freeSpace: Soil = { kind: "free space" };
const perfect: Soil = { kind: "perfect" };
/** Impedances change by less than 1e-4 ohm beyond the first, directivities by less than 1e-7 beyond the second. */
const refinement = 2;
const fineRefinement = 4;

const dipole = (length: number, middle: Point, along: Point = level): Dipole => ({
  length: length * wavelength,
  radius: 1e-6 * wavelength,
  middle: [middle[0] * wavelength, middle[1] * wavelength, middle[2] * wavelength],
  along,
});

/** Directivity: gain over the power that is radiated instead of the power put in. */
function directivity(driven: DrivenAntenna): { ratio: number; elevation: number } {
  const best = strongestDirection(driven);
  return { ratio: best.gain / powerAccount(driven).radiated, elevation: best.elevation };
}

/** A dipole in free space under a given current of 1 A at most, and the power it radiates. */
function underCurrent(lengthInWavelengths: number, shape: CurrentShape, bend: number) {
  const antenna = prescribe(dipoles(dipole(lengthInWavelengths, [0, 0, 0])), freeSpace, frequency, fineRefinement);
  return carrying(antenna, amplitudes(antenna, 0, shape, bend));
}

const sinusoidOn = (length: number) => sinusoid((length * wavelength) / 2, k);

/** Radiation resistance of a sinusoid, referred to its maximum and to the feed. */
export function inducedEmf(row: PublishedRow) {
  const length = input(row, "length/lambda");
  const resistance = powerAccount(underCurrent(length, sinusoidOn(length), -k * k)).radiated;
  return { R_max_current: resistance, R_in: resistance / Math.sin(Math.PI * length) ** 2 };
}

export function dipoleDirectivity(length: number) {
  const { ratio } = directivity(underCurrent(length, sinusoidOn(length), -k * k));
  return { D: ratio, dBi: 10 * Math.log10(ratio) };
}

export function hertz() {
  const { ratio } = directivity(underCurrent(1e-3, triangle(0.5e-3 * wavelength), 0));
  return { D: ratio, dBi: 10 * Math.log10(ratio) };
}

const selfImpedance = (): ComplexNumber => publishedRow("antennas", "ant.dipole.half.Z.exact").value as ComplexNumber;

/** Self-impedance of the closed form, and what the mirror image in the plane adds to it. */
export function overPlane(row: PublishedRow) {
  const vertical = "centre height/lambda" in row.inputs;
  const height = input(row, vertical ? "centre height/lambda" : "height/lambda");
  const structure = dipoles(dipole(0.5, [0, 0, height], vertical ? upright : level));
  const over = prescribe(structure, perfect, frequency, refinement);
  const apart = prescribe(structure, freeSpace, frequency, refinement);
  const [current, alone] = [over, apart].map((antenna) => amplitudes(antenna, 0, sinusoidOn(0.5), -k * k));
  const [z, free] = [reaction(over, current!, current!), reaction(apart, alone!, alone!)];
  const self = selfImpedance();
  const impedance = { Z_exact_eta: { re: self.re + z.re - free.re, im: self.im + z.im - free.im } };
  if (vertical) return impedance;
  const driven = carrying(over, current!);
  const { ratio } = directivity(driven);
  return {
    ...impedance,
    gain_max_broadside_dBi: 10 * Math.log10(ratio),
    elevation_of_max_deg: nearestMaximum(driven, row),
  };
}

/** Lobes of a horizontal dipole over a perfect plane are equally strong broadside: of them the one nearest the published. */
function nearestMaximum(driven: DrivenAntenna, row: PublishedRow): number {
  const published = numbersOf(row).get("elevation_of_max_deg") as number;
  const lobes = elevationLobes(driven, Math.PI / 2);
  const greatest = Math.max(...lobes.map((lobe) => lobe.gain));
  const angles = lobes.filter((lobe) => lobe.gain > 0.9999 * greatest).map((lobe) => (lobe.elevation * 180) / Math.PI);
  return angles.reduce((best, angle) => (Math.abs(angle - published) < Math.abs(best - published) ? angle : best));
}

/** Open-circuit voltage along the second dipole for 1 A in the first, both carrying sinusoids. */
export function mutual(row: PublishedRow) {
  const at = (aside: number, along: number) =>
    prescribe(dipoles(dipole(0.5, [0, 0, 0]), dipole(0.5, [aside, along, 0])), freeSpace, frequency, refinement);
  const antenna = row.id.startsWith("ant.mutual.side")
    ? at(input(row, "spacing/lambda"), 0)
    : row.id.startsWith("ant.mutual.collinear")
      ? at(0, input(row, "s/lambda"))
      : at(input(row, "broadside offset/lambda"), input(row, "axial offset/lambda"));
  const [first, second] = [0, 1].map((i) => amplitudes(antenna, i, sinusoidOn(0.5), -k * k));
  const [both, a, b] = [
    reaction(
      antenna,
      first!.map((x, i) => x + second![i]!),
      first!.map((x, i) => x + second![i]!),
    ),
    reaction(antenna, first!, first!),
    reaction(antenna, second!, second!),
  ];
  return { Z_exact_eta: { re: (both.re - a.re - b.re) / 2, im: (both.im - a.im - b.im) / 2 } };
}

/** The textbook value uses 30 ohm for eta0/(4 pi). The sinusoid on a wire of a millionth of a wavelength. */
export function textbookHalfWave(): { readonly R: number } {
  return { R: (powerAccount(underCurrent(0.5, sinusoidOn(0.5), -k * k)).radiated * 30) / 29.9792458 };
}
