/** A thread that solves for the one in which `ask` computes; run/solverThreads.ts starts it. */
import { parentPort } from "node:worker_threads";
import { serveSolves } from "@feedpath/workers";
import "./kernels";

const port = parentPort;
if (!port) throw new Error("solve.ts runs as a thread of the command line only");
serveSolves({
  post: (message) => port.postMessage(message),
  onMessage: (hear) => void port.on("message", hear),
});
