/** What a structure would take in memory, estimated before any is taken. */
import { soilLength } from "../ground/soilLength";
import { speedOfLight } from "../numerics/vacuum";
import { wireLength } from "./geometry";
import { fewestElements, type MeshRule, meshRule, wireNodes } from "./grading";
import { findJunctions } from "./junctions";
import { refinementOf } from "./refinement";
import { countSamplePoints } from "./samplePanels";
import { isRealSoil, type Soil, type Structure } from "./structure";

/**
 * Largest number of unknown currents. Measured on wire grids without symmetry, fast twin: 2115 take 4 s and 0.22 GB with all of
 * the program, 4067 take 30 s and 0.6 GB; the readable twin is 4 times slower.
 */
export const mostUnknowns = 4000;
/** A mesh is not refined beyond this many: what is larger from the start keeps its error, which answers tell. */
export const mostRefined = 2000;
/** Largest number of sample points over soil: long wires low over wet soil need many; 130 MB of kernels between them. */
const mostSamplePoints = 2000;
/**
 * Bytes a pair of unknowns: complex numbers of 16 bytes in the matrix and in the copy that becomes its factors, and a
 * quarter of those in the matrix of the halved mesh. (Pivoting, the second choice, takes 16 more in the readable twin.)
 */
const bytesOfPair = 36;

/** MB (1e6 bytes) of the matrices of so many unknowns. */
const megabytes = (unknowns: number): number => Math.ceil((bytesOfPair * unknowns ** 2) / 1e6);

const tooLarge = (unknowns: number, what: string): string =>
  `${what} about ${unknowns} unknown currents, ${megabytes(unknowns)} MB: more than ${mostUnknowns} ` +
  `(${megabytes(mostUnknowns)} MB)`;

/** More wires than fit whatever their length; said before anything is done for each pair of them. */
export function countProblems({ wires }: Structure): string[] {
  const least = wires.reduce((sum, wire) => sum + fewestElements(wire) - 1, 0);
  if (least <= mostUnknowns) return [];
  return [
    `${tooLarge(least, `${wires.length} wires need at least`)}; draw fewer: straight runs in one piece, ` +
      "bends with fewer corners, fewer radials, sheets and grids with wider meshes",
  ];
}

/** Unknown currents a mesh would have, nearly; counted without building more than its nodes. */
export function countUnknowns(structure: Structure, soil: Soil, rule: MeshRule): number {
  const least = structure.wires.reduce(
    (sum, w) => sum + (wireLength(w) * refinementOf(rule.refinement, w.name)) / rule.largest,
    0,
  );
  if (least > 10 * mostUnknowns) return Math.ceil(least);
  const junctions = findJunctions(structure, soil);
  return structure.wires.reduce((sum, _, w) => sum + wireNodes(structure, junctions, w, rule).length - 1, 0);
}

export function sizeProblems(structure: Structure, soil: Soil, frequency: number): string[] {
  const unknowns = countUnknowns(structure, soil, meshRule(frequency, 1));
  if (unknowns > mostUnknowns) {
    return [
      `${tooLarge(unknowns, `at ${frequency / 1e6} MHz the wires need`)}; their number grows with length over wavelength ` +
        "and with every end and corner: leave out wires that matter little, or ask at a lower frequency",
    ];
  }
  if (!isRealSoil(soil)) return [];
  const points = countSamplePoints(structure, speedOfLight / frequency, soilLength(soil, frequency));
  if (points <= mostSamplePoints) return [];
  return [
    `long wires this low over soil need ${points} sample points: more than ${mostSamplePoints}; ` +
      "raise them, leave some out, or ask at a lower frequency",
  ];
}
