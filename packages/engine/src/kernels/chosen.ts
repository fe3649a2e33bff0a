/**
 * Which twin of the kernels computes: a choice of the host, made once at its start, before anything is asked. Both give
 * the same answers within what their differential test states, so that nothing but speed hangs on it; answers name it.
 */
import type { Kernels } from "./door";
import { referenceKernels } from "./reference/referenceKernels";

let chosen = referenceKernels;

export const chosenKernels = (): Kernels => chosen;

export function chooseKernels(kernels: Kernels): void {
  chosen = kernels;
}
