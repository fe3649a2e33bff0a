/** What a person must know beside the answer: an example is shown, the browser keeps nothing, the program has a defect. */

import { useBench, useBenchState } from "./useBench";
import { saveText } from "./waysOut";

export function Notes() {
  const state = useBenchState();
  const bench = useBench();
  const save = () => saveText(state.history.now, state.fileName, "application/yaml");
  return (
    <>
      {state.defect !== null && (
        <section className="note" role="alert">
          <p>
            <strong>The program has a defect and could not finish this.</strong> Your text is kept and nothing was sent
            anywhere. Whoever looks after your copy of Feedpath can mend it with the file and this line:
          </p>
          <p className="label">{state.defect}</p>
          <p className="acts">
            <button type="button" className="button" onClick={save}>
              Save the file
            </button>
            <button type="button" className="button" onClick={bench.askAgain}>
              Ask again
            </button>
            <button type="button" className="plain" onClick={bench.putAwayDefect}>
              Put this away
            </button>
          </p>
        </section>
      )}
      {state.missing && (
        <section className="note" role="alert">
          <p>
            <strong>A part of the page could not be loaded.</strong> The server was gone before this browser had kept
            the whole page. The answer stands; its working and its sheet need that part. Connect once more, then try
            again.
          </p>
          <p className="acts">
            <button type="button" className="button" onClick={bench.askAgain}>
              Try again
            </button>
          </p>
        </section>
      )}
      {state.storage.refused && (
        <section className="note" role="status">
          <p>
            This browser does not let the page keep your text. Save the file before you close the page, or it is gone.
          </p>
          <p className="acts">
            <button type="button" className="button" onClick={save}>
              Save the file
            </button>
          </p>
        </section>
      )}
    </>
  );
}
