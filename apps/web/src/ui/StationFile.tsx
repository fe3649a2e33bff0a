/** The station as a file: a text to edit, its lines counted, and what is wrong said beside the line. */
import { useEffect, useId, useMemo, useRef } from "react";
import { FileActs } from "./FileActs";
import { FileLines } from "./FileLines";
import { linesOf, stretchOf } from "./lines";
import { ProblemColumn } from "./ProblemColumn";
import { useBench, useBenchState } from "./useBench";
import { useFileKeys } from "./useFileKeys";

interface StationFileProps {
  /** The only thing on a narrow page: its heading is the page's. */
  readonly alone: boolean;
  /** Index of the problem to go to, with a count that makes each call a new one; null: none. */
  readonly goTo: { readonly problem: number; readonly call: number } | null;
  readonly onGoTo: (problem: number) => void;
}

export function StationFile({ alone, goTo, onGoTo }: StationFileProps) {
  const { history, problems, marked } = useBenchState();
  const bench = useBench();
  const field = useRef<HTMLTextAreaElement>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const heading = useId();
  const lines = useMemo(() => linesOf(history.now, problems), [history.now, problems]);
  const keys = useFileKeys();
  const Heading = alone ? "h1" : "h2";

  const latest = useRef({ lines, problems });
  latest.current = { lines, problems };
  useEffect(() => {
    const area = field.current;
    if (!goTo || !area) return;
    const problem = latest.current.problems[goTo.problem];
    const { from, to } = problem ? stretchOf(latest.current.lines, problem) : { from: 0, to: 0 };
    area.focus({ preventScroll: true });
    area.setSelectionRange(from, to);
    const line = sheet.current?.querySelector(`[data-line="${problem?.line ?? 1}"]`);
    line?.scrollIntoView({ block: "center" });
  }, [goTo]);

  return (
    <section className="file" aria-labelledby={heading} id="file">
      <div className="file-head">
        <Heading id={heading}>The station, as a file</Heading>
        <p role="status" className="label">
          {problems.length > 0 &&
            `${problems.length === 1 ? "One problem" : `${problems.length} problems`}. The picture still shows the last file that could be read.`}
        </p>
        <FileActs />
      </div>
      <div className="file-sheet" ref={sheet}>
        <div className="file-text">
          <FileLines lines={lines} marked={marked} />
          <textarea
            ref={field}
            aria-label="Text of the station's file"
            aria-invalid={problems.length > 0}
            value={history.now}
            spellCheck={false}
            autoCapitalize="off"
            autoComplete="off"
            onChange={(event) => bench.type(event.target.value)}
            onKeyDown={keys}
          />
        </div>
        <ProblemColumn lines={lines} sheet={sheet} onGoTo={onGoTo} />
      </div>
    </section>
  );
}
