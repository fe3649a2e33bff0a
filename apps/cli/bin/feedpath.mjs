#!/usr/bin/env node
// Starts the command line from its TypeScript source; tsx reads it, so nothing has to be built first.
const args = process.argv.slice(2);
if (args[0] === "ask") {
  const { runApart } = await import("./runApart.mjs");
  process.exitCode = await runApart(args);
} else {
  const { register } = await import("tsx/esm/api");
  register();
  await import("../src/main.ts");
}
