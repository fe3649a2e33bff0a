// Runs every check in the order that fails fastest, then prints the one line CI reads: "N passed, N failed".
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const run = (name, args) => {
  process.stdout.write(`\n== ${name}\n`);
  return spawnSync(process.execPath, args, { stdio: "inherit" }).status === 0;
};

const steps = [
  ["types", ["node_modules/typescript/bin/tsc", "-b"]],
  ["formatting and lint", ["node_modules/@biomejs/biome/bin/biome", "check", "--error-on-warnings", "."]],
  ["import rules", ["tools/deps.mjs"]],
];
const failedSteps = steps.filter(([name, args]) => !run(name, args)).length;

const folder = mkdtempSync(join(tmpdir(), "feedpath-test-"));
const report = join(folder, "report.json");
run("tests", ["node_modules/vitest/vitest.mjs", "run", "--reporter=default", "--reporter=json", `--outputFile=${report}`]);
const tests = JSON.parse(readFileSync(report, "utf8"));
rmSync(folder, { recursive: true });

// A file that fails to load holds no test, so vitest counts no failed test for it: count it here.
const brokenFiles = tests.testResults.filter((file) => file.status === "failed" && file.assertionResults.length === 0).length;
const failed = tests.numFailedTests + brokenFiles + failedSteps;
const passed = tests.numPassedTests + steps.length - failedSteps;
process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
process.exit(failed === 0 ? 0 : 1);
