/** The working of one number, opened in place under its line. */
import type { Answer } from "@feedpath/engine";
import { StepText } from "./StepText";
import { sayName, saySpan, sayValue } from "./say";
import { useDepth } from "./useDepth";

interface NumberWorkingProps {
  readonly answer: Answer;
  readonly name: string;
  readonly onClose: () => void;
}

export function NumberWorking({ answer, name, onClose }: NumberWorkingProps) {
  const steps = useDepth()?.steps ?? [];
  const value = answer.values[name];
  if (!value) return null;
  // The document keeps the steps in the order of the answer's working.
  const mine = steps.filter((_, index) => answer.working[index]?.explains.includes(name));
  const span = saySpan(value);
  return (
    <section className="working-of" aria-label={`How ${sayName(name)} was worked out`}>
      <div className="working-of-head">
        <p>
          <span className="label">{sayName(name)}</span> <span className="number strong">{sayValue(value)}</span>
          {span && <span className="label quiet"> {span}, as far as the file leaves it open</span>}
        </p>
        <button type="button" className="plain" onClick={onClose}>
          Close
        </button>
      </div>
      {mine.length === 0 && (
        <p className="label quiet">
          It comes straight from the solution of the whole path, which the steps below tell.
        </p>
      )}
      {mine.map((step) => (
        <StepText key={step.says.map(({ text }) => text).join("")} step={step} />
      ))}
    </section>
  );
}
