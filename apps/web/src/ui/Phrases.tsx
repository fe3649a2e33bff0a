/** A sentence whose numbers open their working: dotted underline, one open at a time. */
import type { Phrase } from "@feedpath/engine";
import { Prose } from "./Prose";

interface PhrasesProps {
  readonly phrases: readonly Phrase[];
  /** Name of the value whose working is open in this sentence, or null. */
  readonly open: string | null;
  readonly onOpen: (value: string) => void;
}

export function Phrases({ phrases, open, onOpen }: PhrasesProps) {
  let place = 0;
  return (
    <>
      {phrases.map(({ text, value }) => {
        place += text.length + 1;
        if (value === undefined) return <Prose key={place} text={text} />;
        return (
          <button
            key={place}
            type="button"
            className="number opens"
            aria-expanded={open === value}
            onClick={() => onOpen(value)}
          >
            {text}
          </button>
        );
      })}
    </>
  );
}
