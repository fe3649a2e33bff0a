// What a fresh clone lacks: the packages of the lock file, the compiled kernels and, for the browser test, a browser.
// Silent when nothing is to be done.
import { browserForTests } from "./browser.mjs";
import { installPackages } from "./packages.mjs";

/** Its compiler is one of the packages. */
const buildKernels = async () => (await import("./kernels.mjs")).buildKernels();

export async function prepare(args) {
  const steps = [installPackages, buildKernels, ...(args.includes("--browser") ? [browserForTests] : [])];
  for (const step of steps) {
    const trouble = (await step()).trouble;
    if (trouble) {
      process.stderr.write(`\n${trouble}\n`);
      process.exit(1);
    }
  }
}
