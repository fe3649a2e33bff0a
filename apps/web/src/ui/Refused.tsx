/** The question cannot be answered for this station: why, and what would make it answerable. No picture. */
import type { Refusal } from "@feedpath/engine";
import { Prose } from "./Prose";

interface RefusedProps {
  readonly refusal: Refusal;
  readonly onShowFile: () => void;
  readonly onAskElse: () => void;
}

export function Refused({ refusal, onShowFile, onAskElse }: RefusedProps) {
  const heading = refusal.refused.why.startsWith("Not computed yet")
    ? "Feedpath does not work that out yet."
    : "This station gives no answer to that.";
  return (
    <section className="refused">
      <h1 className="headline">{heading}</h1>
      <p>
        <Prose text={refusal.refused.why} />
      </p>
      <p>
        <strong>What would make it answerable:</strong> <Prose text={refusal.refused.wouldMakeItAnswerable} />
      </p>
      <p className="acts">
        <button type="button" className="button" onClick={onShowFile}>
          Go to the file
        </button>
        <button type="button" className="button" onClick={onAskElse}>
          Ask something else
        </button>
      </p>
    </section>
  );
}
