// Runs the program in a thread of its own. A solve takes seconds and leaves no turn for signals: this thread hears them.
import { once } from "node:events";
import { finished } from "node:stream/promises";
import { Worker } from "node:worker_threads";

/** Status of a defect of the program. */
const defect = 70;

/** Runs a command and returns its exit status. Ctrl-C ends the process at once, wherever the work stands. */
export async function runApart(args) {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on("error", (error) => {
      if (error.code === "EPIPE") process.exit();
      throw error;
    });
  }
  const workerData = { args, errorIsScreen: process.stderr.isTTY === true };
  const streams = { stdin: true, stdout: true, stderr: true };
  const worker = new Worker(new URL("./apart.mjs", import.meta.url), { workerData, ...streams });
  let answering = false;
  worker.stdout.once("data", () => {
    answering = true;
  });
  worker.stdout.pipe(process.stdout, { end: false });
  worker.stderr.pipe(process.stderr, { end: false });
  if (args.includes("-")) process.stdin.pipe(worker.stdin);
  else worker.stdin.end();
  let status = defect;
  worker.on("message", (message) => {
    if ("ended" in message) status = message.ended;
    else onInterrupt(message.ifInterrupted, () => answering);
  });
  await Promise.all([finished(worker.stdout), finished(worker.stderr), once(worker, "exit")]);
  return status;
}

/** Once the answer is on its way it is whole in a moment: a second word would spoil it. */
function onInterrupt({ status, out, err }, answering) {
  process.on("SIGINT", () => {
    if (answering()) return;
    process.stdout.write(out);
    process.stderr.write(err);
    process.exit(status);
  });
}
