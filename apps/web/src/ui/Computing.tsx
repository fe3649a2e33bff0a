/** A run that takes longer: how far it is, and a way to stop it. */
import { useBench, useBenchState } from "./useBench";

export function Computing() {
  const { slow, running, progress, stopped } = useBenchState();
  const bench = useBench();
  if (stopped && !running)
    return (
      <p className="note-line" role="status">
        Stopped; nothing of that run is kept.
        <button type="button" className="button" onClick={bench.askAgain}>
          Ask again
        </button>
      </p>
    );
  if (!running || !slow) return null;
  const says = progress ? `${progress.done} of ${progress.of} ${progress.what}` : "working it out";
  return (
    <div className="computing">
      <span role="status">{says}</span>
      <progress aria-label="How far it is" max={progress?.of ?? 1} value={progress ? progress.done : undefined} />
      <button type="button" className="button" onClick={bench.stop}>
        Stop
      </button>
    </div>
  );
}
