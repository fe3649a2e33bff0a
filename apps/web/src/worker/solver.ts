/** A worker that solves for the one that answers; solvers.ts starts it. */
import { chooseKernels } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { serveSolves } from "@feedpath/workers";
import { holdLife } from "./life";

chooseKernels(fastKernels);
const held = holdLife(self.name);
serveSolves({
  // "Ready" waits for the lock, which the other side asks for then; messages that come in must be heard from the start.
  post: (message) => void held.then(() => self.postMessage(message)),
  onMessage: (hear) => {
    self.onmessage = ({ data }) => hear(data);
  },
});
