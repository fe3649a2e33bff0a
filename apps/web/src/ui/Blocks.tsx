/** Blocks of the answer's document, which the sheet shows too: the same sentences in the same order. */
import type { Block, Document } from "@feedpath/report";
import { useId } from "react";
import { Inlines } from "./Inlines";
import { NumbersTable } from "./NumbersTable";
import { StepText } from "./StepText";

export function Blocks({ blocks }: { readonly blocks: Document["blocks"] }) {
  // The blocks of one document never change their order, and have no other name.
  // biome-ignore lint/suspicious/noArrayIndexKey: the place in the document is the identity
  return blocks.map((block, place) => <BlockView key={place} block={block} />);
}

function BlockView({ block }: { readonly block: Block }) {
  switch (block.kind) {
    case "section":
      return <Section title={block.title} blocks={block.blocks} />;
    case "paragraph":
      return (
        <p>
          <Inlines inlines={block.inlines} />
        </p>
      );
    case "list":
      return (
        <ul className="points">
          {block.items.map((item) => (
            <li key={item.map(({ text }) => text).join("")}>
              <Inlines inlines={item} />
            </li>
          ))}
        </ul>
      );
    case "steps":
      return (
        <ol className="steps">
          {block.steps.map((step) => (
            <li key={step.says.map(({ text }) => text).join("")}>
              <StepText step={step} />
            </li>
          ))}
        </ol>
      );
    case "facts":
      return <Facts facts={block.facts} />;
    case "table":
      return <NumbersTable table={block.table} captioned={false} />;
    case "folded":
      return (
        <details>
          <summary>{block.summary}</summary>
          <NumbersTable table={block.table} captioned />
        </details>
      );
    // The page sets the columns itself, draws the figures for the width it has, and shows the file to be edited.
    case "columns":
    case "figure":
    case "file":
      return null;
  }
}

function Section({ title, blocks }: { readonly title: string; readonly blocks: readonly Block[] }) {
  const heading = useId();
  return (
    <section aria-labelledby={heading}>
      <h2 id={heading}>{title}</h2>
      <Blocks blocks={blocks} />
    </section>
  );
}

function Facts({ facts }: { readonly facts: Extract<Block, { kind: "facts" }>["facts"] }) {
  return (
    <dl className="facts">
      {facts.map(({ name, value, from }) => (
        <div key={`${name} ${value}`}>
          <dt>{name}</dt>
          <dd>
            {value}
            <span className="source">{from}</span>
          </dd>
        </div>
      ))}
    </dl>
  );
}
