// Runs a TypeScript program of this repository without a build: node tools/run.mjs bench/src/main.ts [arguments]
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { register } from "tsx/esm/api";

const [, , file, ...rest] = process.argv;
if (!file) {
  process.stderr.write("Which program? For example: node tools/run.mjs bench/src/main.ts\n");
  process.exit(2);
}
register();
process.argv = [process.argv[0], file, ...rest];
await import(pathToFileURL(resolve(file)).href);
