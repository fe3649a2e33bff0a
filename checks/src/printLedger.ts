/** `npm run ledger`: computes every row, prints the ledger and writes docs/ledger.md. Ends with 1 when something disagrees untold. */
import { writeFileSync } from "node:fs";
import { computeTopic } from "./ledger/computeTopic";
import { knownDisagreements } from "./ledger/disagreements";
import { ledgerPage } from "./ledger/ledgerPage";
import { allTopics } from "./topics/allTopics";

const topics = allTopics.map(computeTopic);
const page = ledgerPage(topics);
process.stdout.write(page);
writeFileSync(new URL("../../docs/ledger.md", import.meta.url), page);
const untold = topics.flatMap((t) => t.entries).filter((e) => !e.agrees && !(e.id in knownDisagreements));
if (untold.length > 0) {
  process.stderr.write(`Beyond their tolerance and not told:\n${untold.map((e) => `  ${e.id}\n`).join("")}`);
  process.exitCode = 1;
}
