import { expect, inject, it } from "vitest";
import { chosenKernels } from "./chosen";

declare module "vitest" {
  interface ProvidedContext {
    /** Which twin the suite is meant to run on. */
    readonly kernels: string;
  }
}

it("runs the suite on the twin it is meant to run on", () => {
  expect(chosenKernels().name).toBe(inject("kernels"));
});
