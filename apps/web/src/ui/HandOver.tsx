/** Handing an answer over: as a sheet that opens anywhere, on paper, or as the station's file. */
import { useState } from "react";
import { useBench, useBenchState } from "./useBench";
import { printHtml, saveText, sheetName } from "./waysOut";

export function HandOver() {
  const state = useBenchState();
  const bench = useBench();
  const [says, setSays] = useState("");
  const answer = state.shown?.kind === "answer" ? state.shown.answer : null;
  const withSheet = async (use: (html: string) => void | Promise<void>, done: string) => {
    if (!answer) return;
    setSays("The sheet is being made.");
    try {
      await use(await bench.makeSheet());
      setSays(done);
    } catch (failure) {
      setSays(`The sheet could not be made: ${failure instanceof Error ? failure.message : String(failure)}`);
    }
  };
  const saveSheet = () =>
    withSheet(
      (html) => saveText(html, sheetName(answer!.station, answer!.question), "text/html"),
      "Saved: look where your browser puts files.",
    );
  return (
    <div className="hand-over">
      <Way
        act="Save the answer sheet"
        says="One file with picture, numbers, working and sources. It opens in any browser and needs no network."
        disabled={!answer}
        onAct={() => void saveSheet()}
      />
      <Way
        act="Print the sheet"
        says="The same sheet on paper, A4 or Letter; always in light colours."
        disabled={!answer}
        onAct={() => void withSheet(printHtml, "")}
      />
      <Way
        act="Save the station's file"
        says="The text you see under “The station, as a file”, to go on with later or to pass on."
        disabled={false}
        onAct={() => saveText(state.history.now, state.fileName, "application/yaml")}
      />
      {!answer && <p className="quiet">There is no answer to hand over yet.</p>}
      {answer && state.problems.length > 0 && (
        <p className="quiet">The sheet shows the last file that could be read.</p>
      )}
      <p role="status">{says}</p>
    </div>
  );
}

interface WayProps {
  readonly act: string;
  readonly says: string;
  readonly disabled: boolean;
  readonly onAct: () => void;
}

function Way({ act, says, disabled, onAct }: WayProps) {
  return (
    <div className="way">
      <button type="button" className="button" disabled={disabled} onClick={onAct}>
        {act}
      </button>
      <p>{says}</p>
    </div>
  );
}
