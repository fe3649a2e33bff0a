import { feedpath } from "./feedpath";
import { tellInterrupted } from "./tell/outcome";
import { endQuietlyWhenNobodyReads, openTerminal } from "./tell/terminal";

const args = process.argv.slice(2);
const terminal = openTerminal(args);

endQuietlyWhenNobodyReads();
// Files are written in one step each, so an interrupt never finds one half written.
process.on("SIGINT", () => process.exit(tellInterrupted(terminal)));
process.exitCode = await feedpath(args, terminal);
