/** Other Node processes: what they print, how long they take. */
import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

export const repositoryPath = (path: string): string => fileURLToPath(new URL(`../../../${path}`, import.meta.url));

/** Standard output of a Node process that must end with 0. */
export function output(args: readonly string[]): Promise<string> {
  const child = spawn(process.execPath, [...args], { stdio: ["ignore", "pipe", "pipe"], cwd: repositoryPath(".") });
  const texts = { out: "", complaint: "" };
  child.stdout.on("data", (part) => {
    texts.out += part;
  });
  child.stderr.on("data", (part) => {
    texts.complaint += part;
  });
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code) => {
      if (code === 0) resolve(texts.out);
      else reject(new Error(`node ${args.join(" ")} ended with ${code}:\n${texts.complaint}`));
    });
  });
}

/** What a TypeScript program of the bench prints as JSON. */
export const program = async <Told>(file: string, ...args: readonly string[]): Promise<Told> =>
  JSON.parse(await output([repositoryPath("tools/run.mjs"), `bench/src/child/${file}`, ...args]));

/** Milliseconds from start to end of a process. */
export async function wholeProcess(args: readonly string[]): Promise<number> {
  const start = performance.now();
  await output(args);
  return performance.now() - start;
}
