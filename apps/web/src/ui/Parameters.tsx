/** What the question is asked with: each parameter as a field, empty where the program chooses. */
import type { ParameterDefinition } from "@feedpath/engine";
import { type KeyboardEvent, useId, useState } from "react";
import { ParameterSlider } from "./ParameterSlider";
import { useBench, useBenchState } from "./useBench";

export function Parameters() {
  const { questions, question, outline, parameters, parameterProblems } = useBenchState();
  const listing = questions.find(({ id }) => id === question);
  const bands = outline?.bands ?? [];
  const typed = parameters[question] ?? {};
  if (!listing || (listing.parameters.length === 0 && bands.length < 2)) return null;
  const problemOf = (name: string) => parameterProblems.find((problem) => problem.name === name)?.message;
  return (
    <section className="parameters" aria-label="What it is asked with">
      <h2>Asked with</h2>
      <div className="fields">
        {bands.length > 1 && (
          <Choice
            name="band"
            title="band"
            words={bands}
            otherwise={`${bands[0]}, the first`}
            typed={typed.band ?? ""}
          />
        )}
        {listing.parameters.map((parameter) => {
          const shared = { ...parameter, typed: typed[parameter.name] ?? "", problem: problemOf(parameter.name) };
          return parameter.dimension === "word" ? (
            <Choice key={`${question} ${parameter.name}`} {...shared} />
          ) : (
            <Field key={`${question} ${parameter.name}`} {...shared} />
          );
        })}
      </div>
    </section>
  );
}

/** Words of the file stand between backticks in the engine's texts. */
const quoted = (text: string): string => text.replace(/`([^`]*)`/g, "\u201c$1\u201d");

type FieldProps = Pick<ParameterDefinition, "name" | "title" | "otherwise" | "dimension" | "slider"> & {
  readonly typed: string;
  readonly problem?: string | undefined;
};

/** A quantity in whose place words may stand names them. */
const orWords = (words: readonly string[]): string => (words.length > 0 ? `a value, or ${words.join(", ")}; ` : "");

type WithWords = FieldProps & Pick<ParameterDefinition, "words">;

function Field({ name, title, otherwise, dimension, slider, typed, words, problem }: WithWords) {
  const bench = useBench();
  const [text, setText] = useState(typed);
  const [known, setKnown] = useState(typed);
  const id = useId();
  // Changed by the slider, or by another station: what stands in the field follows.
  if (known !== typed) {
    setKnown(typed);
    setText(typed);
  }
  const use = () => text.trim() !== typed && bench.setParameter(name, text.trim());
  const keys = (event: KeyboardEvent) => {
    if (event.key === "Enter") use();
    if (event.key === "Escape") setText(typed);
  };
  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <input
        id={id}
        value={text}
        spellCheck={false}
        autoComplete="off"
        aria-invalid={problem !== undefined}
        aria-describedby={`${id}-says`}
        onChange={(event) => setText(event.target.value)}
        onBlur={use}
        onKeyDown={keys}
      />
      {slider && <ParameterSlider name={name} title={title} dimension={dimension} slider={slider} typed={typed} />}
      <p id={`${id}-says`} className={problem ? "value-problem" : "says"}>
        {problem ?? `${orWords(words)}empty: ${quoted(otherwise)}`}
      </p>
    </div>
  );
}

type ChoiceProps = Omit<FieldProps, "dimension" | "slider"> & Pick<ParameterDefinition, "words">;

function Choice({ name, title, otherwise, typed, words, problem }: ChoiceProps) {
  const bench = useBench();
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{title}</label>
      <select
        id={id}
        value={typed}
        aria-describedby={problem ? `${id}-says` : undefined}
        onChange={(event) => bench.setParameter(name, event.target.value)}
      >
        <option value="">{quoted(otherwise)}</option>
        {words.map((word) => (
          <option key={word} value={word}>
            {word}
          </option>
        ))}
      </select>
      {problem && (
        <p id={`${id}-says`} className="value-problem">
          {problem}
        </p>
      )}
    </div>
  );
}
