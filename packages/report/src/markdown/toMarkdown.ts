import type { Block, Document, DocumentTable, Inline, Step, StepPiece } from "../document/document";
import { formulaText } from "../formula/formulaText";
import { escapeMarkdown } from "./escapeMarkdown";

function inlineMarkdown({ kind, text }: Inline): string {
  const shown = escapeMarkdown(text.trim());
  const [before, after] = [/^\s/.test(text) ? " " : "", /\s$/.test(text) ? " " : ""];
  if (shown === "") return text === "" ? "" : " ";
  const marks = kind === "strong" ? "**" : kind === "idea" ? "*" : "";
  return before + marks + shown + marks + after;
}

const sentence = (inlines: readonly Inline[]): string => inlines.map(inlineMarkdown).join("");

function tableMarkdown(table: DocumentTable): string {
  const row = (cells: readonly string[]) => `| ${cells.map(escapeMarkdown).join(" | ")} |`;
  const heads = table.columns.map(({ name, unit }) => (unit === "" ? name : `${name}, ${unit}`));
  const rule = `| ${table.columns.map(({ numeric }) => (numeric ? "---:" : "---")).join(" | ")} |`;
  return [`${escapeMarkdown(table.caption)}:`, "", row(heads), rule, ...table.rows.map(row)].join("\n");
}

const pieceText = (piece: StepPiece): string => (piece.kind === "result" ? piece.text : formulaText(piece.latex));

function stepMarkdown(step: Step, index: number): string {
  const lines = [
    sentence(step.says),
    ...step.lines.flatMap((line) => ["", `\`${line.map(pieceText).join(" ")}\``]),
    ...(step.source === "" ? [] : ["", `Source: ${escapeMarkdown(step.source)}`]),
  ];
  return `${index + 1}. ${lines.join("\n   ")}`.replaceAll(/[ ]+$/gm, "");
}

/** A fence longer than any run of back ticks inside. */
function fenced(text: string): string {
  const longest = Math.max(2, ...[...text.matchAll(/`+/g)].map((match) => match[0].length));
  const fence = "`".repeat(longest + 1);
  return `${fence}yaml\n${text.replace(/\n+$/, "")}\n${fence}`;
}

function blockMarkdown(block: Block): string {
  switch (block.kind) {
    case "section":
      return [`## ${escapeMarkdown(block.title)}`, ...block.blocks.map(blockMarkdown)].join("\n\n");
    case "columns":
      return [...block.left, ...block.right].map(blockMarkdown).join("\n\n");
    case "paragraph":
      return sentence(block.inlines);
    case "list":
      return block.items.map((item) => `- ${sentence(item)}`).join("\n");
    case "steps":
      return block.steps.map(stepMarkdown).join("\n\n");
    case "facts":
      return block.facts
        .map(({ name, value, from }) => `- ${escapeMarkdown(name)}: ${escapeMarkdown(value)} (${escapeMarkdown(from)})`)
        .join("\n");
    case "table":
      return tableMarkdown(block.table);
    case "folded":
      return tableMarkdown(block.table);
    case "figure":
      return `**${escapeMarkdown(block.figure.title)}.** ${escapeMarkdown(block.figure.description)}`;
    case "file":
      return fenced(block.text);
  }
}

/** The document as Markdown: pictures as their sentence and table of numbers, formulas as plain text. */
export function toMarkdown(document: Document): string {
  const { asked, running, headline, verdict, next, blocks, provenance } = document;
  const judged = verdict.word === null ? sentence(verdict.says) : `**${verdict.word}**: ${sentence(verdict.says)}`;
  const parts = [
    `# ${sentence(headline)}`,
    `*${escapeMarkdown(asked)}* ${escapeMarkdown(running)}`,
    judged,
    ...(next === null ? [] : [`**Next:** ${escapeMarkdown(next)}`]),
    ...blocks.map(blockMarkdown),
    escapeMarkdown(`${provenance.worked} ${provenance.check}`.trim()),
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}
