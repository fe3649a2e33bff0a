/** Whole processes: the first study in a fresh one, the command line from start to end. Baseline: an empty Node process. */
import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { Case } from "./interleaved";

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

/** Standard output of a process that must end with 0. */
function output(args: readonly string[]): Promise<string> {
  const child = spawn(process.execPath, [...args], { stdio: ["ignore", "pipe", "ignore"], cwd: at(".") });
  let text = "";
  child.stdout.on("data", (part) => {
    text += part;
  });
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code) => {
      if (code === 0) resolve(text);
      else reject(new Error(`node ${args.join(" ")} ended with ${code}`));
    });
  });
}

/** Milliseconds from start to end of a process. */
async function wholeProcess(args: readonly string[]): Promise<number> {
  const start = performance.now();
  await output(args);
  return performance.now() - start;
}

const feedpath = "apps/cli/bin/feedpath.mjs";
const station = "examples/harbour-school-club.yaml";

export const processCases: readonly Case[] = [
  { name: "empty Node process", run: () => wholeProcess(["-e", "0"]) },
  { name: "feedpath --help", run: () => wholeProcess([at(feedpath), "--help"]) },
  {
    name: "feedpath ask watts, first answer",
    run: () => wholeProcess([at(feedpath), "ask", "watts", at(station), "--json"]),
  },
  {
    name: "first height study in a fresh process",
    run: async () => Number(await output([at("tools/run.mjs"), "bench/src/coldHeight.ts"])),
  },
];
