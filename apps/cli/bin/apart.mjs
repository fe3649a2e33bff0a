// The thread in which the command line computes: the same source, read the same way.
import { register } from "tsx/esm/api";

register();
await import("../src/apart.ts");
