/** Over an answer that belongs to an older text: what is wrong, and the way there. */
import type { FilePlace } from "./filePlace";
import { useBenchState } from "./useBench";

export function Stale({ onGoTo }: { readonly onGoTo: (place: FilePlace) => void }) {
  const { problems, shown } = useBenchState();
  const [first] = problems;
  if (!first) return null;
  const count = problems.length === 1 ? "" : ` and ${problems.length - 1} more`;
  return (
    <section className="note" role="status">
      <p>
        Line {first.line}
        {count} cannot be read. {shown ? "This is the answer to the last file that could." : first.message}
      </p>
      <button type="button" className="button" onClick={() => onGoTo({ problem: 0 })}>
        Go to line {first.line}
      </button>
    </section>
  );
}
