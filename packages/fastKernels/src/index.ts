/** The fast twin of the engine's kernels. Hosts choose it with `chooseKernels(fastKernels)`. */
export { fastKernels } from "./fastKernels";
