/** Run in a fresh process, with columns and rows: one solve of a wire grid; without them, the same program idle. */
import { existsSync, readFileSync } from "node:fs";
import { chooseKernels, solveAntenna } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { dipole, frequency, solvePoint, wireGrid } from "../antennas";

chooseKernels(fastKernels);
solvePoint(dipole(12), fastKernels, 1);
const [columns, rows] = process.argv.slice(2).map(Number);
const start = performance.now();
const unknowns =
  columns && rows
    ? solveAntenna(wireGrid(columns, rows), { kind: "free space" }, frequency, fastKernels, { refinement: 1 }).unknowns
    : 0;
const seconds = (performance.now() - start) / 1000;

/** Most memory of this process, MB. What a process began with is counted by `maxRSS` on Linux: its parent's size. */
function mostMemory(): number {
  const status = "/proc/self/status";
  const told = existsSync(status) ? /^VmHWM:\s+(\d+) kB/m.exec(readFileSync(status, "utf8")) : null;
  return (told ? Number(told[1]) : process.resourceUsage().maxRSS) / 1000;
}

process.stdout.write(JSON.stringify({ unknowns, seconds, megabytes: mostMemory() }));
