/** LAPACK in another process, where python3 has numpy and scipy. */
import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

export interface Lapack {
  readonly version: string;
  /** Milliseconds of one solve of a system of that size, one right-hand side. */
  readonly time: (routine: "zgesv" | "zsysv", size: number) => Promise<number>;
  readonly end: () => void;
}

/** Null where python3 is missing or has no numpy and scipy. */
export async function startLapack(): Promise<Lapack | null> {
  const oneThread = { OMP_NUM_THREADS: "1", OPENBLAS_NUM_THREADS: "1", MKL_NUM_THREADS: "1" };
  const child: ChildProcessWithoutNullStreams = spawn(
    "python3",
    [fileURLToPath(new URL("./lapack.py", import.meta.url))],
    {
      env: { ...process.env, ...oneThread },
    },
  );
  child.on("error", () => undefined);
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  const nextLine = async (): Promise<string> => (await lines.next()).value ?? "";
  const ready = await nextLine();
  if (!ready.startsWith("ready ")) return null;
  return {
    version: ready.slice("ready ".length),
    time: async (routine, size) => {
      child.stdin.write(`${routine} ${size}\n`);
      return Number(await nextLine());
    },
    end: () => child.stdin.end(),
  };
}
