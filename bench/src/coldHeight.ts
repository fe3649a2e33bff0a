/** Run in a fresh process: prints the milliseconds of the first `height` answer, with the program already loaded. */
import { readFileSync } from "node:fs";
import { askPlainly, plainStation } from "./antennaCases";

const file = new URL("../../examples/harbour-school-club.yaml", import.meta.url);
const start = performance.now();
askPlainly(plainStation(readFileSync(file, "utf8")), "height");
process.stdout.write(`${performance.now() - start}\n`);
