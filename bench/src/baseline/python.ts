/** A Python program in another process that answers line by line, on one thread. */
import { spawn } from "node:child_process";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

export interface PythonProgram {
  /** Versions of numpy and scipy. */
  readonly versions: string;
  readonly ask: (line: string) => Promise<string>;
  readonly end: () => void;
}

export const howToInstall = "on Debian: `apt-get install python3-numpy python3-scipy`";

/** Null where python3 is missing or has no numpy and scipy: the program then ends before it says that it is ready. */
export async function startPython(file: string): Promise<PythonProgram | null> {
  const oneThread = { OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1", MKL_NUM_THREADS: "1" };
  const path = fileURLToPath(new URL(`./${file}`, import.meta.url));
  const child = spawn("python3", [path], { env: { ...process.env, ...oneThread } });
  child.on("error", () => undefined);
  let complaint = "";
  child.stderr.on("data", (part) => {
    complaint += part;
  });
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  const next = async (): Promise<string | undefined> => (await lines.next()).value;
  const ready = await next();
  if (!ready?.startsWith("ready ")) return null;
  const [numpy, scipy] = ready.split(" ").slice(1);
  return {
    versions: `numpy ${numpy}, scipy ${scipy}, one thread`,
    ask: async (line) => {
      child.stdin.write(`${line}\n`);
      const reply = await next();
      if (reply === undefined) throw new Error(`${file} ended while it was asked:\n${complaint}`);
      return reply;
    },
    end: () => child.stdin.end(),
  };
}
