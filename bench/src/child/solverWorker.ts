/** What a thread of the bench's pool does: solve what it is told, on the fast twin. */
import { parentPort } from "node:worker_threads";
import { chooseKernels } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { serveSolves } from "@feedpath/workers";

const port = parentPort;
if (!port) throw new Error("solverWorker.ts runs as a thread only");
chooseKernels(fastKernels);
serveSolves({
  post: (message) => port.postMessage(message),
  onMessage: (hear) => void port.on("message", hear),
});
