/** Run in a fresh process, first argument `study` or `answer`: milliseconds of the work alone, and since the process began. */
import { chooseKernels } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { dipole, solvePoint } from "../antennas";
import { answerTo, exampleText, plain, stationOf } from "../stations";

chooseKernels(fastKernels);
const [, , what, refinement] = process.argv;
const start = performance.now();
if (what === "answer") answerTo(plain(stationOf(exampleText("harbour-school-club"), "harbour-school-club")), "height");
else for (let i = 0; i < 25; i++) solvePoint(dipole(2 + i), fastKernels, Number(refinement));
const end = performance.now();
process.stdout.write(JSON.stringify({ work: end - start, process: end }));
