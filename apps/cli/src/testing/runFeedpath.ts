import { type ChildProcess, spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

const program = fileURLToPath(new URL("../../bin/feedpath.mjs", import.meta.url));

export interface Run {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  readonly cwd: string;
  readonly input?: string;
  readonly env?: Readonly<Record<string, string>>;
  /** Called with standard error so far, whenever there is more of it. */
  readonly onError?: (child: ChildProcess, err: string) => void;
}

/** Runs the program as a person would, as its own process, and waits for its end. For tests. */
export function runFeedpath(args: readonly string[], { cwd, input, env = {}, onError }: RunOptions): Promise<Run> {
  const child = spawn(process.execPath, [program, ...args], { cwd, env: { ...process.env, ...env } });
  let out = "";
  let err = "";
  child.stdout.on("data", (chunk: Buffer) => {
    out += chunk.toString();
  });
  child.stderr.on("data", (chunk: Buffer) => {
    err += chunk.toString();
    onError?.(child, err);
  });
  child.stdin.end(input ?? "");
  return new Promise((resolve) => child.on("close", (status) => resolve({ status, out, err })));
}
