/** Choosing a station: the invented examples, or a file of one's own. */
import { type ChangeEvent, useRef, useState } from "react";
import { exampleOf, examples } from "../state/examples";
import { useBench, useBenchState } from "./useBench";

/** Larger files are no station files and are not even opened; the reader, whose bound is lower, tells its own. */
const mostBytes = 1_000_000;

export function Stations({ onChosen }: { readonly onChosen: () => void }) {
  const { history } = useBenchState();
  const bench = useBench();
  const input = useRef<HTMLInputElement>(null);
  const [says, setSays] = useState("");
  const current = exampleOf(history.now);
  const open = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    event.target.value = "";
    if (!file) return;
    if (file.size > mostBytes)
      return setSays(
        `${file.name} has ${Math.ceil(file.size / 1e6)} MB and was not opened; a station file has a few kB.`,
      );
    bench.open(await file.text(), file.name);
    onChosen();
  };
  return (
    <div className="stations">
      <p className="acts">
        <button type="button" className="button" onClick={() => input.current?.click()}>
          Open a file
        </button>
        <input
          ref={input}
          type="file"
          accept=".yaml,.yml,text/yaml,application/yaml"
          aria-label="A station file from this machine"
          className="out-of-sight"
          tabIndex={-1}
          onChange={(event) => void open(event)}
        />
      </p>
      <p role="status">{says}</p>
      <h3>Or take an example</h3>
      <p className="quiet">All are invented. The text you have now stays one Undo away.</p>
      <ul>
        {examples.map((example) => (
          <li key={example.id}>
            <button
              type="button"
              aria-current={example === current ? "true" : undefined}
              onClick={() => {
                bench.open(example.text, `${example.id}.yaml`);
                onChosen();
              }}
            >
              {example.title}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
