/** What the numbers were measured on. */
import { availableParallelism, cpus, loadavg, totalmem } from "node:os";

/** Load averages over one minute, as the system tells them. */
export const load = (): number => loadavg()[0]!;

/** One sentence each: processor, runtime, libraries, and the load while measuring. */
export function machineText(libraries: readonly string[], loads: readonly number[]): string {
  const model = cpus()[0]?.model.trim() ?? "unknown processor";
  const memory = (totalmem() / 1e9).toFixed(0);
  const [least, most] = [Math.min(...loads), Math.max(...loads)].map((one) => one.toFixed(1));
  return [
    `${model}, ${availableParallelism()} processors, ${memory} GB; Node ${process.version}, ${process.platform} ${process.arch}.`,
    ...libraries,
    `Load average while this ran: ${least} to ${most}.`,
  ].join(" ");
}
