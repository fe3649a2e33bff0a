// A thread that solves ahead for the one that computes: the same source, read the same way.
import { register } from "tsx/esm/api";

register();
await import("../src/solve.ts");
