/** How faults travel in the issues of a zod schema: whole, with the nearest word and what mends them. */
import * as z from "zod";
import type { Fault } from "../units/fault";

// Generated code (`new Function`) would need a looser content security policy on the page.
z.config({ jitless: true });

export interface FaultParams {
  readonly fault: Fault;
  /** Whether the key or the value at the issue's path is meant. */
  readonly at: "key" | "value";
}

/** Keys from the value being read down to what is wrong. */
export type Path = readonly (string | number)[];
export type Issues = z.core.ParsePayload["issues"];

/** Adds an issue that carries a whole fault. */
export function push(issues: Issues, path: Path, at: FaultParams["at"], fault: Fault, input: unknown): void {
  const params: FaultParams = { fault, at };
  issues.push({
    code: "custom",
    path: [...path],
    message: fault.message,
    params: { ...params },
    input,
    continue: false,
  });
}

/** A fault; the nearest word also mends it. */
export const fault = (message: string, expected: string, nearest: string | null = null): Fault => ({
  message,
  expected,
  nearest,
  mend: nearest,
});

export const isMap = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
