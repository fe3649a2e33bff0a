/** Disagreements that are known and told. They stay in the ledger as such; one that has gone must be taken out here. */
import { readFileSync } from "node:fs";

/** Ids of ledger entries, each with what is thought to be behind it. */
export const knownDisagreements: Readonly<Record<string, string>> = JSON.parse(
  readFileSync(new URL("../../values/disagreements.json", import.meta.url), "utf8"),
);
