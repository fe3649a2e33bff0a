/** What is wrong, each at the height of its line, with a button that writes the mend. */
import type { Problem } from "@feedpath/engine";
import { type RefObject, useLayoutEffect, useRef } from "react";
import type { FilePlace } from "./filePlace";
import { type Line, stretchOf } from "./lines";
import { useBench, useBenchState } from "./useBench";

interface ProblemColumnProps {
  readonly lines: readonly Line[];
  readonly sheet: RefObject<HTMLDivElement | null>;
  readonly onGoTo: (place: FilePlace) => void;
}

export function ProblemColumn({ lines, sheet, onGoTo }: ProblemColumnProps) {
  const { problems } = useBenchState();
  const list = useRef<HTMLOListElement>(null);

  // Beside the lines where there is room; the style sheet lets the list flow where there is none.
  useLayoutEffect(() => {
    const place = () => {
      let free = 0;
      for (const item of list.current?.querySelectorAll<HTMLElement>("li") ?? []) {
        const line = sheet.current?.querySelector<HTMLElement>(`[data-line="${item.dataset.of}"]`);
        const top = Math.max(free, line?.offsetTop ?? 0);
        item.style.setProperty("--top", `${top}px`);
        free = top + item.offsetHeight;
      }
      list.current?.style.setProperty("--least", `${free}px`);
    };
    place();
    const observer = new ResizeObserver(place);
    if (sheet.current) observer.observe(sheet.current);
    return () => observer.disconnect();
  });

  if (problems.length === 0) return null;
  return (
    <ol className="problems" ref={list} aria-label="What is wrong in the file">
      {problems.map((problem, index) => (
        <li key={`${problem.line} ${problem.column} ${problem.message}`} data-of={problem.line}>
          <ProblemText problem={problem} lines={lines} onGoTo={() => onGoTo({ problem: index })} />
        </li>
      ))}
    </ol>
  );
}

interface ProblemTextProps {
  readonly problem: Problem;
  readonly lines: readonly Line[];
  readonly onGoTo: () => void;
}

function ProblemText({ problem, lines, onGoTo }: ProblemTextProps) {
  const bench = useBench();
  const mend = problem.mend;
  return (
    <>
      <p>
        <button type="button" className="plain quiet narrow-only" onClick={onGoTo}>
          Line {problem.line}
        </button>{" "}
        {problem.message} <span className="quiet">column {problem.column}</span>
      </p>
      {mend !== null && (
        <button
          type="button"
          className="button"
          onClick={() => {
            const { from, to } = stretchOf(lines, problem);
            bench.write(from, to, mend);
          }}
        >
          {problem.nearest === mend ? `Change to ${mend}` : `Write ${mend}`}
        </button>
      )}
    </>
  );
}
