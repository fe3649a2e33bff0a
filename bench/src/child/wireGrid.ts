/** Run in a fresh process, with columns and rows: one solve of a wire grid; without them, the same program idle. */
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
// The system tells kilobytes; an ArrayBuffer counts where its pages were written to.
process.stdout.write(JSON.stringify({ unknowns, seconds, megabytes: process.resourceUsage().maxRSS / 1000 }));
