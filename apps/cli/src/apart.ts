/** The thread in which `ask` computes; bin/runApart.mjs starts it and hears the signals. */
import { parentPort, workerData } from "node:worker_threads";
import { tellInterrupted } from "./tell/outcome";
import { openTerminal } from "./tell/terminal";

const { args, errorIsScreen } = workerData as { readonly args: readonly string[]; readonly errorIsScreen: boolean };
// A thread does not know where its streams end.
Object.defineProperty(process.stderr, "isTTY", { value: errorIsScreen });

/** What to say and which status to end with when interrupted: said by the other thread, when this one cannot. */
function ifInterrupted() {
  let [out, err] = ["", ""];
  const terminal = openTerminal(args, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  const status = tellInterrupted(terminal);
  return { status, out, err };
}

parentPort?.postMessage({ ifInterrupted: ifInterrupted() });
await import("./kernels");
const { feedpath } = await import("./feedpath");
parentPort?.postMessage({ ended: await feedpath(args, openTerminal(args)) });
