/** The fast twin of the hot operations: the door's operations in WebAssembly with 128-bit vectors. */
import { type Kernels, referenceKernels } from "@feedpath/engine";
import { nearMoments } from "./nearMoments";
import { addPairTerms } from "./pairTerms";
import { addReflectedTerms, sumPairPower } from "./reflectedTerms";
import { sumSpectrum } from "./spectralSums";
import { solveSymmetric } from "./symmetricSolve";
import { sumWaves } from "./waveSums";

export const fastKernels: Kernels = {
  ...referenceKernels,
  name: "fast",
  nearMoments,
  addPairTerms,
  sumSpectrum,
  addReflectedTerms,
  sumPairPower,
  sumWaves,
  solveSymmetric,
};
