import { createContext, useContext } from "react";

/** The part that is pointed at in one of the three rows, by all its names; empty: none. */
export interface Pointing {
  readonly names: readonly string[];
  readonly point: (names: readonly string[]) => void;
}

export const PointingContext = createContext<Pointing>({ names: [], point: () => {} });

export const usePointing = (): Pointing => useContext(PointingContext);
