import { describe, expect, it } from "vitest";
import { publishedRows } from "./ledger/publishedRow";
import { checkTopic } from "./testing/checkTopic";
import { readBody, touchstone } from "./topics/touchstone";

checkTopic(touchstone);

describe("bodies that break the specification's rules", () => {
  const bad = publishedRows("touchstone").filter((row) => /^ts\.ex\.(bad\.|nan$)/.test(row.id));
  it.each(bad.map((row) => [row.id, row] as const))("%s is refused", (_, row) => {
    const { network, problems } = readBody(row);
    expect(network).toBeNull();
    expect(problems.length).toBeGreaterThan(0);
  });
});
