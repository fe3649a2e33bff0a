/** A sentence of a document: words, numbers, what is stressed, what is quiet. */
import type { Inline } from "@feedpath/report";

export function Inlines({ inlines }: { readonly inlines: readonly Inline[] }) {
  let place = 0;
  return inlines.map(({ kind, text }) => {
    place += text.length + 1;
    if (kind === "number")
      return (
        <span className="number" key={place}>
          {text}
        </span>
      );
    if (kind === "strong") return <strong key={place}>{text}</strong>;
    if (kind === "idea") return <em key={place}>{text}</em>;
    if (kind === "quiet")
      return (
        <span className="source" key={place}>
          {text.trim()}
        </span>
      );
    return text;
  });
}
