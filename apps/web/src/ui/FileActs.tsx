/** Steps back and forth through every change of the file, whoever made it. */
import { useBench, useBenchState } from "./useBench";

export function FileActs() {
  const { history } = useBenchState();
  const bench = useBench();
  return (
    <p className="acts">
      <button type="button" className="button" disabled={history.past.length === 0} onClick={bench.undo}>
        Undo
      </button>
      <button type="button" className="button" disabled={history.future.length === 0} onClick={bench.redo}>
        Redo
      </button>
    </p>
  );
}
