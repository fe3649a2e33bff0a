/** The ledger as a page: a summary, what disagrees, what is not covered, then every compared number. */
import type { ComputedTopic } from "./computeTopic";
import { knownDisagreements } from "./disagreements";
import type { LedgerEntry } from "./ledgerEntry";
import { type ComplexNumber, isComplex, type Tolerance } from "./publishedRow";

const digits = (x: number, figures: number): string => {
  if (x === 0) return "0";
  const size = Math.abs(x);
  return size >= 1e-4 && size < 1e7 ? String(Number(x.toPrecision(figures))) : x.toExponential(figures - 1);
};

function value(x: number | ComplexNumber): string {
  if (!isComplex(x)) return digits(x, 7);
  return `${digits(x.re, 7)} ${x.im < 0 ? "-" : "+"} j${digits(Math.abs(x.im), 7)}`;
}

function allowed(tolerance: Tolerance | null): string {
  if (tolerance === null) return "shown only";
  const { relative, absolute, resistance, reactance } = tolerance;
  const parts = [
    ...(relative === undefined ? [] : [`${digits(relative, 3)} of it`]),
    ...(absolute === undefined ? [] : [digits(absolute, 3)]),
    ...(resistance === undefined ? [] : [`${digits(resistance, 3)} in R, ${digits(reactance ?? 0, 3)} in X`]),
  ];
  return parts.join(" or ");
}

/** Text that may not end a table cell or open a tag. */
const cell = (text: string): string => text.replaceAll("|", "\\|").replaceAll("<", "&lt;");

/** Numbers for the sources of a topic, so that a table stays narrow. */
const sourceOf = (entry: LedgerEntry): string =>
  [entry.row.source, entry.row.evidence ?? "", `tolerance: ${entry.row.toleranceSays}`]
    .filter((s) => s !== "")
    .join("; ");

function line(entry: LedgerEntry, sources: readonly string[]): string {
  const verdict = entry.agrees === false ? " **disagrees**" : "";
  const columns = [
    `\`${entry.id}\``,
    value(entry.published),
    value(entry.computed),
    digits(entry.difference, 2) + verdict,
    allowed(entry.tolerance),
    entry.row.status,
    String(sources.indexOf(sourceOf(entry)) + 1),
  ];
  return `| ${columns.map(cell).join(" | ")} |`;
}

function section({ topic, entries }: ComputedTopic): string {
  if (entries.length === 0) return "";
  const sources = [...new Set(entries.map(sourceOf))];
  return [
    `## ${topic.title}`,
    "",
    "| value | published | computed | difference | tolerance | status | source |",
    "|---|---|---|---|---|---|---|",
    ...entries.map((entry) => line(entry, sources)),
    "",
    ...sources.map((source, i) => `${i + 1}. ${cell(source)}`),
    "",
    "",
  ].join("\n");
}

const having = (entries: readonly LedgerEntry[], verdict: boolean | null): number =>
  entries.filter((entry) => entry.agrees === verdict).length;

function summary(topics: readonly ComputedTopic[]): string {
  const rows = topics.map(({ topic, entries, leftOut, numbers, statements }) => {
    const [agree, apart, shown] = [true, false, null].map((verdict) => having(entries, verdict));
    return `| ${topic.title} | ${entries.length} | ${agree} | ${apart} | ${shown} | ${leftOut} | ${numbers} | ${statements} |`;
  });
  const count = (of: (t: ComputedTopic) => number) => topics.reduce((sum, t) => sum + of(t), 0);
  const all = (verdict: boolean | null): number => count((t) => having(t.entries, verdict));
  return [
    "| topic | compared | agree | disagree | shown only | left out in these rows | rows not covered yet | statements without a number |",
    "|---|---|---|---|---|---|---|---|",
    ...rows,
    `| all | ${count((t) => t.entries.length)} | ${all(true)} | ${all(false)} | ${all(null)} | ${count((t) => t.leftOut)} | ${count((t) => t.numbers)} | ${count((t) => t.statements)} |`,
  ].join("\n");
}

function disagreements(topics: readonly ComputedTopic[]): string {
  const apart = topics.flatMap((t) => t.entries).filter((entry) => entry.agrees === false);
  if (apart.length === 0) return "None.";
  return apart
    .map(
      (entry) =>
        `- \`${entry.id}\`: published ${value(entry.published)}, computed ${value(entry.computed)} (${entry.row.status}). ` +
        (knownDisagreements[entry.id] ?? "Not explained."),
    )
    .join("\n");
}

const notCovered = (topics: readonly ComputedTopic[]): string =>
  topics
    .filter((t) => t.numbers > 0)
    .map((t) => {
      const kinds = [...t.uncoveredKinds].map(([kind, count]) => `\`${kind}\` (${count})`);
      return `- ${t.topic.title}: ${t.numbers} rows: ${kinds.join(", ")}`;
    })
    .join("\n");

const opening = `# The ledger

Published values against computed ones. Written by \`npm run ledger\`; the values stand in \`checks/values\`, and \`npm test\` holds every row to its tolerance. A tolerance is the source's own precision; what a source does not bound is shown beside the computed number and judged by nobody. Complex numbers are impedances or coefficients, with e^{+jωt}.
`;

/** Markdown of the whole ledger. */
export const ledgerPage = (topics: readonly ComputedTopic[]): string => {
  const parts = [
    opening,
    `${summary(topics)}\n`,
    "## Disagreements\n",
    `${disagreements(topics)}\n`,
    "## Not covered yet\n",
    "Rows that wait in `checks/values` for what this version does not compute. (Left out in the rows above: numbers beside the compared one that are an input, a rounded or approximate form of it, or another script's step on the way.)\n",
    `${notCovered(topics)}\n`,
    topics.map(section).join(""),
  ];
  return `${parts.join("\n").trimEnd()}\n`;
};
