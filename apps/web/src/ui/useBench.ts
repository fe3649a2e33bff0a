import { createContext, useContext, useSyncExternalStore } from "react";
import type { Bench } from "../state/bench";
import type { BenchState } from "../state/benchState";

export const BenchContext = createContext<Bench | null>(null);

/** The bench's acts. */
export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error("useBench was called outside of BenchContext: wrap the page in it.");
  return bench;
}

/** The bench's present state; the component is drawn anew when it changes. */
export function useBenchState(): BenchState {
  const bench = useBench();
  return useSyncExternalStore(bench.subscribe, bench.get);
}
