// What a fresh clone lacks: the packages of the lock file and, for the browser test, a browser. Silent when nothing is to be done.
import { browserForTests } from "./browser.mjs";
import { installPackages } from "./packages.mjs";

export function prepare(args) {
  const steps = [installPackages, ...(args.includes("--browser") ? [browserForTests] : [])];
  for (const step of steps) {
    const trouble = step().trouble;
    if (trouble) {
      process.stderr.write(`\n${trouble}\n`);
      process.exit(1);
    }
  }
}
