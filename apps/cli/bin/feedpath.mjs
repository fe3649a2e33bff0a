#!/usr/bin/env node
// Starts the command line from its TypeScript source; tsx reads it, so nothing has to be built first.
import { register } from "tsx/esm/api";

register();
await import("../src/main.ts");
