/** One value of the file: a button that becomes a text field of the same size; a wrong value is answered below it. */
import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import type { OutlineValue } from "../worker/messages";
import { nudged } from "./nudge";
import { useBenchState } from "./useBench";

interface PlaceValueProps {
  readonly label: string;
  readonly hint: string;
  readonly value: OutlineValue;
  readonly usable: boolean;
  readonly editing: boolean;
  readonly onEdit: (on: boolean) => void;
  readonly onWrite: (text: string, before: OutlineValue) => void;
}

export function PlaceValue({ label, hint, value, usable, editing, onEdit, onWrite }: PlaceValueProps) {
  const nudge = (event: KeyboardEvent) => {
    if (!usable || (event.key !== "ArrowUp" && event.key !== "ArrowDown")) return;
    const text = nudged(value.text, event.key === "ArrowUp" ? 1 : -1, event.shiftKey);
    if (text === null) return;
    event.preventDefault();
    onWrite(text, value);
  };
  return (
    <span className="place-value">
      {hint && <span className="hint">{hint}</span>}
      {editing ? (
        <ValueField label={label} value={value} onEdit={onEdit} onWrite={onWrite} />
      ) : (
        <button
          type="button"
          className="changes"
          aria-label={`${label}: ${value.text}. Change it`}
          onClick={() => usable && onEdit(true)}
          onKeyDown={nudge}
        >
          {value.text}
        </button>
      )}
    </span>
  );
}

type ValueFieldProps = Pick<PlaceValueProps, "label" | "value" | "onEdit" | "onWrite">;

function ValueField({ label, value, onEdit, onWrite }: ValueFieldProps) {
  const { problems, history, outlineText } = useBenchState();
  const [text, setText] = useState(value.text);
  /** What was written last, and where; until then the value as it stood. */
  const [written, setWritten] = useState<OutlineValue | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const message = useId();

  useEffect(() => field.current?.select(), []);
  useEffect(() => {
    if (written && outlineText === history.now) onEdit(false);
  }, [written, outlineText, history.now, onEdit]);

  const finish = () => {
    const before = written ?? value;
    // Somebody changed the file meanwhile: what this field knows of it no longer holds.
    if (history.now.slice(before.from, before.to) !== before.text) return onEdit(false);
    if (text.trim() === "" || text === before.text) return written ? undefined : onEdit(false);
    onWrite(text, before);
    setWritten({ ...before, text, to: before.from + text.length });
  };
  const keys = (event: KeyboardEvent) => {
    if (event.key === "Enter") finish();
    if (event.key !== "Escape") return;
    if (written) onWrite(value.text, written);
    onEdit(false);
  };
  const problem = written ? problems[0] : undefined;
  return (
    <>
      <input
        ref={field}
        className="value-field"
        aria-label={label}
        aria-invalid={problem !== undefined}
        aria-describedby={problem ? message : undefined}
        value={text}
        size={Math.max(4, text.length)}
        spellCheck={false}
        autoComplete="off"
        onChange={(event) => setText(event.target.value)}
        onKeyDown={keys}
        onBlur={finish}
      />
      {problem && (
        <span className="value-problem" id={message} role="alert">
          {problem.message}
        </span>
      )}
    </>
  );
}
