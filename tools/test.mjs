// Runs every check in the order that fails fastest, then prints the one line CI reads: "N passed, N failed".
// Words after `npm test --` choose test files: npm test -- packages/engine
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
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
  ["long files (told, not judged)", ["tools/sizes.mjs"]],
];
const failedNames = steps.filter(([name, args]) => !run(name, args)).map(([name]) => name);
const failedSteps = failedNames.length;

const folder = mkdtempSync(join(tmpdir(), "feedpath-test-"));
const report = join(folder, "report.json");
const allGreen = run("tests", [
  "node_modules/vitest/vitest.mjs",
  "run",
  "--reporter=default",
  "--reporter=json",
  `--outputFile=${report}`,
  ...process.argv.slice(2),
]);
const tests = existsSync(report)
  ? JSON.parse(readFileSync(report, "utf8"))
  : { testResults: [], numFailedTests: 0, numPassedTests: 0 };
rmSync(folder, { recursive: true });

// A file that fails to load holds no test, so vitest counts no failed test for it: count it here.
const brokenFiles = tests.testResults.filter(
  (file) => file.status === "failed" && file.assertionResults.length === 0,
).length;
// An error outside every test, or no report at all, leaves the counts at zero but must not pass.
const outside = !allGreen && tests.numFailedTests + brokenFiles === 0 ? 1 : 0;
const failed = tests.numFailedTests + brokenFiles + outside + failedSteps;
const passed = tests.numPassedTests + steps.length - failedSteps;
for (const name of failedNames) process.stdout.write(`\nfailed: ${name} (see above)`);
process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
process.exit(failed === 0 ? 0 : 1);
