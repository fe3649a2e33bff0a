/**
 * Thin antennas over lossy flat earth, against Sommerfeld integrals computed by another program (generators/).
 *
 * Those integrals belong to an assumed current: a sinusoid, or a short dipole. The engine's matrix and power integrals
 * are therefore taken under that same current (prescribedCurrent.ts), where both compute the same number. The true
 * current of a thin wire gives a different impedance; its change over free space is compared too ("Z - Zfree"), within
 * what the source allows for the assumption.
 */
import { type Complex, type Point, powerAccount, type Soil, type Structure, solveAntenna } from "@feedpath/engine";
import { portImpedance } from "../antennas/portImpedance";
import {
  amplitudes,
  type CurrentShape,
  carrying,
  prescribe,
  reaction,
  sinusoid,
  triangle,
} from "../antennas/prescribedCurrent";
import { dipoles, level, speedOfLight, upright } from "../antennas/thinWires";
import { type ComplexNumber, input, type PublishedRow, publishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";

const freeSpace: Soil = { kind: "free space" };

const soilOf = (row: PublishedRow): Soil => ({
  kind: "homogeneous",
  relativePermittivity: input(row, "eps_r"),
  conductivity: input(row, "sigma_S/m"),
});

/** Self-impedance of the sinusoid by the closed form, which the published values add to their integral. */
const selfImpedance = (): ComplexNumber => publishedRow("antennas", "ant.dipole.half.Z.exact").value as ComplexNumber;

const frequencyOf = (row: PublishedRow): number => 1e6 * input(row, "f_MHz");

const refinement = 4;

interface Prescribed {
  readonly change: Complex;
  readonly radiated: number;
  readonly soil: number;
  readonly resistanceInFreeSpace: number;
}

/** What the soil changes, under a current of 1 A at the feed. */
function overSoil(structure: Structure, row: PublishedRow, shape: CurrentShape, bend: number): Prescribed {
  const frequency = frequencyOf(row);
  const soil = prescribe(structure, soilOf(row), frequency, refinement);
  const free = prescribe(structure, freeSpace, frequency, refinement);
  const current = amplitudes(soil, 0, shape, bend);
  const [over, apart] = [reaction(soil, current, current), reaction(free, current, current)];
  const account = powerAccount(carrying(soil, current));
  return {
    change: { re: over.re - apart.re, im: over.im - apart.im },
    radiated: account.radiated,
    soil: account.heatInSoil,
    resistanceInFreeSpace: apart.re,
  };
}

function halfWave(row: PublishedRow) {
  const frequency = frequencyOf(row);
  const wavelength = speedOfLight / frequency;
  const k = (2 * Math.PI) / wavelength;
  const vertical = "centre height/lambda" in row.inputs;
  const structure = dipoles({
    length: wavelength / 2,
    radius: 1e-5 * wavelength,
    middle: [0, 0, wavelength * input(row, vertical ? "centre height/lambda" : "height/lambda")],
    along: vertical ? upright : level,
  });
  const { change, radiated, soil } = overSoil(structure, row, sinusoid(wavelength / 4, k), -k * k);
  const self = selfImpedance();
  const over = portImpedance(solveAntenna(structure, soilOf(row), frequency));
  const free = portImpedance(solveAntenna(structure, freeSpace, frequency));
  return {
    Z: { re: self.re + change.re, im: self.im + change.im },
    sky_fraction: radiated / (radiated + soil),
    "Z - Zfree": { re: over.re - free.re, im: over.im - free.im },
  };
}

/** Input power over that in free space, and share to the sky, of a dipole with a triangular current. */
function triangular(row: PublishedRow, along: Point, length: number) {
  const middle: Point = [0, 0, (input(row, "height/lambda") * speedOfLight) / frequencyOf(row)];
  const structure = dipoles({ length, radius: length / 500, middle, along });
  const { change, radiated, resistanceInFreeSpace } = overSoil(structure, row, triangle(length / 2), 0);
  const resistance = resistanceInFreeSpace + change.re;
  return [resistance / resistanceInFreeSpace, radiated / resistance] as const;
}

/** The limit of a short dipole from two lengths: what is left falls with the square of the length (Richardson). */
function shortDipole(row: PublishedRow) {
  const length = speedOfLight / frequencyOf(row) / 800;
  const limit = (along: Point) => {
    const [long, short] = [triangular(row, along, 2 * length), triangular(row, along, length)];
    return short.map((value, i) => value + (value - long[i]!) / 3);
  };
  const [vertical, horizontal] = [limit(upright), limit(level)];
  return {
    "P/P0_vertical": vertical[0]!,
    sky_fraction_vertical: vertical[1]!,
    "P/P0_horizontal": horizontal[0]!,
    sky_fraction_horizontal: horizontal[1]!,
  };
}

export const sommerfeld: Topic = {
  name: "sommerfeld",
  title: "Antennas over lossy earth",
  evaluators: [
    { rows: /^ground\.sommerfeld\.half_[hv]\./, compute: halfWave },
    { rows: /^ground\.sommerfeld\.hertz\./, compute: shortDipole },
  ],
};
