/** Chooses the kernels for a thread that computes: the fast twin, the same in every thread. */
import { chooseKernels } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";

chooseKernels(fastKernels);
