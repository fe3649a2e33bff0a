// A thread that solves for the bench: TypeScript, read by tsx.
import { register } from "tsx/esm/api";

register();
await import("./solverWorker.ts");
