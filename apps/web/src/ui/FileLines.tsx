/** The file's lines as they look: numbers, keys in bold, wavy lines under what is wrong. The text field lies on top. */
import { type Line, piecesOf } from "./lines";

interface FileLinesProps {
  readonly lines: readonly Line[];
  readonly marked: { readonly from: number; readonly to: number } | null;
}

export function FileLines({ lines, marked }: FileLinesProps) {
  const isMarked = ({ from, text }: Line) => marked !== null && marked.from <= from + text.length && marked.to >= from;
  return (
    <div className="file-lines" aria-hidden="true">
      {lines.map((line) => (
        <div
          key={line.number}
          data-line={line.number}
          className={line.problems.length > 0 ? "file-line wrong" : isMarked(line) ? "file-line fresh" : "file-line"}
        >
          <span className="file-number">{line.number}</span>
          {piecesOf(line).map(({ text, from, look, wrong }) => (
            <span key={from} className={wrong ? `${look} wrong-word` : look}>
              {text}
            </span>
          ))}
          {line.text === "" && "\u200b"}
        </div>
      ))}
    </div>
  );
}
