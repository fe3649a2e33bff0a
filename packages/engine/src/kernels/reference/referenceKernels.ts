/** The readable twin of the hot operations: the definition of correct. */
import type { Kernels } from "../door";
import { nearMoments } from "./nearMoments";
import { sumPairPower } from "./pairPower";
import { addPairTerms } from "./pairTerms";
import { addReflectedTerms } from "./reflectedTerms";
import { sumSpectrum } from "./spectralSums";
import { solveSymmetric } from "./symmetricSolve";
import { sumWaves } from "./waveSums";

export const referenceKernels: Kernels = {
  name: "reference",
  nearMoments,
  addPairTerms,
  sumSpectrum,
  addReflectedTerms,
  sumPairPower,
  sumWaves,
  solveSymmetric,
};
