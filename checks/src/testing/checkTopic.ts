/** One expectation a row: every value of it within the source's tolerance. */
import { describe, expect, it } from "vitest";
import { knownDisagreements } from "../ledger/disagreements";
import { coveredRows, type Topic } from "../ledger/topic";

export function checkTopic(topic: Topic): void {
  describe(topic.title, () => {
    const rows = coveredRows(topic);
    it("computes rows with every evaluator, and reads no row twice", () => {
      for (const { rows: pattern } of topic.evaluators) {
        expect(
          rows.some(({ row }) => pattern.test(row.id)),
          String(pattern),
        ).toBe(true);
      }
      expect(new Set(rows.map(({ row }) => row.id)).size).toBe(rows.length);
    });
    it.each(rows.map((covered) => [covered.row.id, covered] as const))("%s", (_, covered) => {
      const entries = covered.entries();
      expect(entries.length).toBeGreaterThan(0);
      expect(entries.every(({ difference }) => Number.isFinite(difference))).toBe(true);
      const apart = entries.filter((entry) => entry.agrees === false && !(entry.id in knownDisagreements));
      expect(apart.map(({ id, published, computed, tolerance }) => ({ id, published, computed, tolerance }))).toEqual(
        [],
      );
      const gone = entries.filter((entry) => entry.agrees && entry.id in knownDisagreements);
      expect(
        gone.map((entry) => entry.id),
        "told as disagreements in checks/values/disagreements.json, but they agree",
      ).toEqual([]);
    });
  });
}
