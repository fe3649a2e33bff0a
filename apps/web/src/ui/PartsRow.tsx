/** The file's parts under the picture, in path order; a value with a solid line under it can be changed where it stands. */
import { useState } from "react";
import type { OutlineValue } from "../worker/messages";
import { PlaceValue } from "./PlaceValue";
import { useBench, useBenchState } from "./useBench";
import { usePointing } from "./usePointing";

/** Keys whose values speak for themselves beside their part's name. */
const plainKeys = new Set(["", "power", "length", "wire", "direction", "line", "loss", "conductivity"]);

interface PartsRowProps {
  readonly onGoToLine: (line: number) => void;
}

export function PartsRow({ onGoToLine }: PartsRowProps) {
  const state = useBenchState();
  const bench = useBench();
  const { names, point } = usePointing();
  const [editing, setEditing] = useState<string | null>(null);
  if (!state.outline) return null;
  // The places of the values hold for the text they were read from, and for no other.
  const usable = state.outlineText === state.history.now;
  return (
    <section className="parts" aria-label="The parts of the station, from the transmitter on">
      <ul>
        {state.outline.entries.map((entry) => (
          <li
            key={entry.names.join()}
            className={entry.names.some((name) => names.includes(name)) ? "pointed" : undefined}
            onPointerEnter={() => point(entry.names)}
            onPointerLeave={() => point([])}
          >
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
                  editing={editing === `${entry.names.join()} ${index}`}
                  onEdit={(on) => setEditing(on ? `${entry.names.join()} ${index}` : null)}
                  onWrite={(text: string, before: OutlineValue) =>
                    bench.write(before.from, before.to, text, `${entry.names.join()} ${index}`)
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
