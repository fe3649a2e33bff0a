/** One step of the working: what is done, the formula, the numbers put in, what comes out, where it is from. */
import type { WorkingStep } from "@feedpath/engine";
import { Formula } from "./Formula";
import { Prose } from "./Prose";
import { sayQuantity } from "./say";

export function WorkingStepText({ step }: { readonly step: WorkingStep }) {
  return (
    <>
      <p>
        <Prose text={step.text} />
        {step.result && (
          <>
            {" "}
            <span className="number result">= {sayQuantity(step.result.value, step.result.unit)}</span>
          </>
        )}
      </p>
      {step.formula && <Formula latex={step.formula} />}
      {step.substituted && <Formula latex={step.substituted} />}
      <p className="source">{step.source}</p>
    </>
  );
}
