/** The working of one number, opened in place under its line. */
import type { Answer } from "@feedpath/engine";
import { sayName, saySpan, sayValue } from "./say";
import { WorkingStepText } from "./WorkingStepText";

interface NumberWorkingProps {
  readonly answer: Answer;
  readonly name: string;
  readonly onClose: () => void;
}

export function NumberWorking({ answer, name, onClose }: NumberWorkingProps) {
  const value = answer.values[name];
  if (!value) return null;
  const steps = answer.working.filter((step) => step.explains.includes(name));
  const span = saySpan(value);
  return (
    <section className="working-of" aria-label={`How ${sayName(name)} was worked out`}>
      <p className="working-of-head">
        <span className="label">{sayName(name)}</span> <span className="number">{sayValue(value)}</span>
        {span && (
          <span className="label quiet"> between {span.replace(" to ", " and ")} with what the file leaves open</span>
        )}
        <button type="button" className="plain" onClick={onClose}>
          Close
        </button>
      </p>
      {steps.length === 0 && (
        <p className="label quiet">It comes straight from the solution of the whole path; the steps below tell how.</p>
      )}
      {steps.map((step) => (
        <WorkingStepText key={step.text} step={step} />
      ))}
    </section>
  );
}
