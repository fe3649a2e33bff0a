/** The page's head: the name, the station that is looked at, and handing over. */
import { exampleOf } from "../state/examples";
import { sayFrequency } from "./say";
import { useBenchState } from "./useBench";

interface HeaderProps {
  readonly onStations: () => void;
  readonly onLines: () => void;
  readonly onHandOver: () => void;
}

export function Header({ onStations, onLines, onHandOver }: HeaderProps) {
  const state = useBenchState();
  const answer = state.shown?.kind === "answer" ? state.shown.answer : null;
  const title = state.outline?.title ?? exampleOf(state.history.now)?.title ?? "A station";
  return (
    <header className="head">
      <p className="brand">
        <svg viewBox="0 0 26 16" width="26" height="16" aria-hidden="true">
          <path d="M0 1h11v11L0 15z" fill="var(--fp-power)" />
          <path d="M11 1h15v9H11z" fill="var(--fp-field)" />
          <path d="M11 11h8a3 3 0 0 1 3 3v2h-3v-2H11z" fill="var(--fp-heat)" />
        </svg>
        <span>Feedpath</span>
      </p>
      <p className="station">
        <button type="button" className="changes" onClick={onStations} aria-label={`${title}. Choose another station`}>
          {title}
        </button>
        {answer && <span className="label quiet">{sayFrequency(answer.frequency)}</span>}
        {state.firstVisit && (
          <span className="label quiet example-says">an example: change any underlined value, or open a file</span>
        )}
      </p>
      <button type="button" className="button lines-button" onClick={onLines}>
        Feed lines
      </button>
      <button type="button" className="button hand-over-button" onClick={onHandOver}>
        Hand over
      </button>
    </header>
  );
}
