import { createContext, useContext } from "react";
import type { Depth } from "../worker/messages";

/** Document and formulas of the answer that is shown; null for the moment before the worker has made them. */
export const DepthContext = createContext<Depth | null>(null);

export const useDepth = (): Depth | null => useContext(DepthContext);
