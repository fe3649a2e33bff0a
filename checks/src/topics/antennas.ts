/** Thin antennas in free space and over a perfect plane: induced-EMF closed forms, directivity, coupling, beams. */
import { driveAntenna, groundWaveOfMonopole, solveAntenna, strongestDirection } from "@feedpath/engine";
import { yagi } from "../antennas/beams";
import { portImpedance } from "../antennas/portImpedance";
import { resonantLength, solveDipole } from "../antennas/solvedDipole";
import { speedOfLight } from "../antennas/thinWires";
import { input, numbersOf, type PublishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";
import { dipoleDirectivity, hertz, inducedEmf, mutual, overPlane, textbookHalfWave } from "./inducedEmf";

const frequency = 29_979_245.8;
const wavelength = speedOfLight / frequency;

function resonances(row: PublishedRow) {
  const entries = [...numbersOf(row).keys()].filter((name) => name.endsWith("L/lambda") && !name.startsWith("10 /"));
  return Object.fromEntries(entries.map((name) => [name, resonantLength(Number(name.split(" / ")[0]))]));
}

/** The graph's multiplier of half a wavelength, at (half wavelength)/diameter. */
function shorteningGraph(row: PublishedRow) {
  const ratios = [...numbersOf(row).keys()].map(Number).filter((ratio) => ratio >= 50);
  return Object.fromEntries(
    ratios.map((ratio) => {
      // Length over diameter is the ratio shortened by the multiplier itself; the second round is exact to 1e-4.
      const first = 2 * resonantLength(ratio);
      return [String(ratio), 2 * resonantLength(ratio * first)];
    }),
  );
}

function king() {
  const { re, im } = portImpedance(solveDipole(0.5, (0.25 * 2 * Math.exp(-5)) / 2));
  return { R: re, X: im };
}

function beam(row: PublishedRow) {
  const directors = row.inputs["directors/lambda"] as readonly number[];
  const solution = solveAntenna(
    yagi(wavelength, input(row, "reflector/lambda"), directors, input(row, "director spacing/lambda")),
    { kind: "free space" },
    frequency,
    undefined,
    { refinement: 1 },
  );
  const best = strongestDirection(driveAntenna(solution, [{ re: 1, im: 0 }]));
  return { "gain_dBi (+2.15)": 10 * Math.log10(best.gain) };
}

/** mV/m at 1 km from 1 kW. */
const monopole = (): number => 1000 * groundWaveOfMonopole(1000, { kind: "perfect" }, frequency, 1000, null);

export const antennas: Topic = {
  name: "antennas",
  title: "Thin antennas in free space and over a perfect plane",
  evaluators: [
    { rows: /^ant\.dipole\.emf\./, compute: inducedEmf },
    { rows: /^ant\.dipole\.D\./, compute: (row) => dipoleDirectivity(input(row, "length/lambda")) },
    { rows: /^ant\.dipole\.half\.D$/, compute: () => dipoleDirectivity(0.5) },
    { rows: /^ant\.hertz\.D$/, compute: hertz },
    { rows: /^ant\.mutual\./, compute: mutual },
    { rows: /^ant\.ground\.perfect\./, compute: overPlane },
    { rows: /^field\.monopole1kW\.1km$/, compute: () => ({ "": monopole() }) },
    { rows: /^ant\.t\.half$/, compute: textbookHalfWave },
    { rows: /^ant\.t\.thick$/, compute: resonances },
    { rows: /^ant\.t\.kgraph$/, compute: shorteningGraph },
    { rows: /^ant\.t\.king10$/, compute: king },
    { rows: /^ant\.tn688\.\d/, compute: beam },
  ],
};
