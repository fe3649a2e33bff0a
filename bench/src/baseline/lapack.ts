/** LAPACK in another process, where python3 has numpy and scipy. */
import { startPython } from "./python";

export interface Lapack {
  readonly versions: string;
  /** Milliseconds of one solve of a system of that size for so many right-hand sides. */
  readonly time: (routine: "zgesv" | "zsysv", size: number, rightSides: number) => Promise<number>;
  readonly end: () => void;
}

export async function startLapack(): Promise<Lapack | null> {
  const python = await startPython("lapack.py");
  if (!python) return null;
  return {
    versions: python.versions,
    time: async (routine, size, rightSides) => Number(await python.ask(`${routine} ${size} ${rightSides}`)),
    end: python.end,
  };
}
