/** The readable twin of the hot operations: the definition of correct. */
import type { Kernels } from "../door";
import { nearMoments } from "./nearMoments";
import { addPairTerms } from "./pairTerms";
import { sumSpectrum } from "./spectralSums";
import { solveSymmetric } from "./symmetricSolve";

export const referenceKernels: Kernels = {
  name: "reference",
  nearMoments,
  addPairTerms,
  sumSpectrum,
  solveSymmetric,
};
