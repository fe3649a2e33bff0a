import { feedpath } from "../feedpath";
import type { Terminal } from "../tell/terminal";
import type { Run } from "./runFeedpath";

/** Runs the program without a process of its own, which is much faster. Name files by whole paths. For tests. */
export async function runInProcess(...args: readonly string[]): Promise<Run> {
  let out = "";
  let err = "";
  const say = (text: string): void => {
    err += `${text}\n`;
  };
  const terminal: Terminal = {
    json: args.includes("--json"),
    quiet: true,
    print: (text) => {
      out += `${text}\n`;
    },
    printJson: (document) => {
      out += JSON.stringify(document);
    },
    remark: say,
    warn: say,
  };
  const status = await feedpath(args, terminal);
  return { status, out, err };
}
