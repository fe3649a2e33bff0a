/** The station as a file: a text to edit, its lines counted, and what is wrong said beside the line. */
import { useEffect, useId, useMemo, useRef } from "react";
import { FileActs } from "./FileActs";
import { FileLines } from "./FileLines";
import type { FilePlace } from "./filePlace";
import { linesOf, stretchOf } from "./lines";
import { ProblemColumn } from "./ProblemColumn";
import { useBench, useBenchState } from "./useBench";
import { useFileKeys } from "./useFileKeys";

interface StationFileProps {
  /** The only thing on a narrow page: its heading is the page's. */
  readonly alone: boolean;
  /** Where to go, a new object with each call; null: nowhere yet. */
  readonly goTo: { readonly place: FilePlace } | null;
  readonly onGoTo: (place: FilePlace) => void;
}

/** Characters up to which the lines are drawn; a station has a few thousand, and far more would make typing slow. */
const mostDrawn = 50_000;

export function StationFile({ alone, goTo, onGoTo }: StationFileProps) {
  const { history, problems, marked } = useBenchState();
  const bench = useBench();
  const field = useRef<HTMLTextAreaElement>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const heading = useId();
  const large = history.now.length > mostDrawn;
  const lines = useMemo(() => linesOf(history.now, problems), [history.now, problems]);
  const keys = useFileKeys();
  const Heading = alone ? "h1" : "h2";

  const latest = useRef({ lines, problems });
  latest.current = { lines, problems };
  useEffect(() => {
    const area = field.current;
    if (!goTo || !area) return;
    const { place } = goTo;
    const { lines: all, problems: found } = latest.current;
    const problem = "problem" in place ? found[place.problem] : undefined;
    const number = problem?.line ?? ("line" in place ? place.line : 1);
    const start = all[number - 1]?.from ?? 0;
    const { from, to } = problem ? stretchOf(all, problem) : { from: start, to: start };
    area.focus({ preventScroll: true });
    area.setSelectionRange(from, to);
    sheet.current?.querySelector(`[data-line="${number}"]`)?.scrollIntoView({ block: "center" });
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
        <div className={large ? "file-text large" : "file-text"}>
          {!large && <FileLines lines={lines} marked={marked} />}
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
