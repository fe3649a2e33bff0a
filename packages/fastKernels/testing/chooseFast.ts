/** Runs before each file of the engine's suite when that runs on the fast twin. */
import { chooseKernels } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";

chooseKernels(fastKernels);
