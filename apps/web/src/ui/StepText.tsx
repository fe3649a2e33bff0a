/** One step of the working: words, lines of formulas with the numbers put in, source. */
import type { Step } from "@feedpath/report";
import { Inlines } from "./Inlines";
import { useDepth } from "./useDepth";

type StepPiece = Step["lines"][number][number];

export function StepText({ step }: { readonly step: Step }) {
  return (
    <>
      <p>
        <Inlines inlines={step.says} />
      </p>
      {step.lines.map((line) => (
        <p className="formulas" key={line.map(textOf).join(" ")}>
          {line.map((piece) => (
            <Piece key={textOf(piece)} piece={piece} />
          ))}
        </p>
      ))}
      {step.source !== "" && <p className="source">{step.source}</p>}
    </>
  );
}

const textOf = (piece: StepPiece): string => (piece.kind === "result" ? piece.text : piece.latex);

function Piece({ piece }: { readonly piece: StepPiece }) {
  const mathml = useDepth()?.formulas[textOf(piece)];
  if (piece.kind === "result") return <span className="piece number">{piece.text}</span>;
  if (mathml === undefined) return null;
  // biome-ignore lint/security/noDangerouslySetInnerHtml: MathML set by our own report package, which allows a small subset only
  return <span className={`piece ${piece.kind}`} dangerouslySetInnerHTML={{ __html: mathml }} />;
}
