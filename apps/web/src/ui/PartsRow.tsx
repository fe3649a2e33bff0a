/** The file's parts under the picture, in path order; a value with a solid line under it can be changed where it stands. */
import { useState } from "react";
import type { OutlineValue } from "../worker/messages";
import { PlaceValue } from "./PlaceValue";
import { useBench, useBenchState } from "./useBench";

/** Keys whose values speak for themselves beside their part's name. */
const plainKeys = new Set(["", "power", "length", "wire", "direction", "line", "loss", "conductivity"]);

interface PartsRowProps {
  readonly onGoToLine: (line: number) => void;
}

export function PartsRow({ onGoToLine }: PartsRowProps) {
  const state = useBenchState();
  const bench = useBench();
  const [editing, setEditing] = useState<string | null>(null);
  if (!state.outline) return null;
  const usable = state.outlineText === state.history.now || state.problems.length > 0;
  return (
    <section className="parts" aria-label="The parts of the station, from the transmitter on">
      <ul>
        {state.outline.entries.map((entry, place) => (
          // The same label may come twice, so the place in the file is the key.
          // biome-ignore lint/suspicious/noArrayIndexKey: entries have no other identity than their order
          <li key={`${place} ${entry.label}`}>
            <span className="part-name">{entry.label}</span>
            <span className="part-values">
              {entry.values.map((value, index) => (
                <PlaceValue
                  // biome-ignore lint/suspicious/noArrayIndexKey: values have no other identity than their order
                  key={`${index} ${value.key}`}
                  label={`${entry.label}, ${value.key || "value"}`}
                  hint={plainKeys.has(value.key) ? "" : value.key}
                  value={value}
                  usable={usable}
                  editing={editing === `${place} ${index}`}
                  onEdit={(on) => setEditing(on ? `${place} ${index}` : null)}
                  onWrite={(text: string, before: OutlineValue) =>
                    bench.write(before.from, before.to, text, `${place} ${index}`)
                  }
                />
              ))}
              {entry.values.length === 0 && (
                <button type="button" className="plain" onClick={() => onGoToLine(entry.line)}>
                  in the file
                </button>
              )}
            </span>
          </li>
        ))}
      </ul>
      <button type="button" className="button" onClick={() => onGoToLine(1)}>
        Whole file
      </button>
    </section>
  );
}
