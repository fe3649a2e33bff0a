// Runs the import rules and fails when suspiciously few files were read: a checker that reads nothing passes everything.
import { spawnSync } from "node:child_process";

const leastFiles = 15;
const run = spawnSync(
  process.execPath,
  [
    "node_modules/dependency-cruiser/bin/dependency-cruise.mjs",
    "--config",
    ".dependency-cruiser.mjs",
    "packages",
    "apps",
    "checks",
    "bench",
  ],
  { encoding: "utf8" },
);
process.stdout.write(run.stdout ?? "");
process.stderr.write(run.stderr ?? "");
const count = Number(/(\d+) modules/.exec(run.stdout ?? "")?.[1] ?? 0);
if (run.status !== 0) process.exit(1);
if (count < leastFiles) {
  process.stderr.write(`import rules: only ${count} files were read, expected at least ${leastFiles}\n`);
  process.exit(1);
}
