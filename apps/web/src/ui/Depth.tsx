/** Below the picture: how it was worked out on the left, what it rests on at the right. */
import type { Answer } from "@feedpath/engine";
import { Prose } from "./Prose";
import { RestsOn } from "./RestsOn";
import { WorkingStepText } from "./WorkingStepText";

export function Depth({ answer }: { readonly answer: Answer }) {
  return (
    <div className="depth">
      <div className="depth-text">
        <section>
          <h2>How this was worked out</h2>
          <ol className="steps">
            {answer.working.map((step) => (
              <li key={step.text}>
                <WorkingStepText step={step} />
              </li>
            ))}
          </ol>
        </section>
        <Reasons answer={answer} />
        <Readings answer={answer} />
        <Corrects answer={answer} />
        <Thumbs answer={answer} />
      </div>
      <div className="depth-margin">
        <RestsOn answer={answer} />
        <section>
          <h2>Care, and what is not covered</h2>
          <ul className="points">
            {[...answer.cautions, ...answer.notCovered].map((says) => (
              <li key={says}>
                <Prose text={says} />
              </li>
            ))}
          </ul>
        </section>
      </div>
    </div>
  );
}

function Reasons({ answer: { reasons, verdict } }: { readonly answer: Answer }) {
  if (reasons.length === 0) return null;
  return (
    <section>
      <h2>Why it is called {verdict ?? "so"}</h2>
      <ul className="points">
        {reasons.map(({ says, source }) => (
          <li key={says}>
            <Prose text={says} />
            <span className="source">{source}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Readings({ answer }: { readonly answer: Answer }) {
  if (answer.readings.length === 0) return null;
  return (
    <section>
      <h2>Your readings beside it</h2>
      <ul className="points">
        {answer.readings.map((reading) => (
          <li key={`${reading.at} ${reading.frequency}`}>
            <strong>{reading.agrees ? "Agrees: " : "Does not agree: "}</strong>
            <Prose text={reading.says} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function Corrects({ answer: { mistakenIdea } }: { readonly answer: Answer }) {
  if (!mistakenIdea) return null;
  return (
    <section>
      <h2>The idea this corrects</h2>
      <p className="idea">“{mistakenIdea.idea}”</p>
      <p>
        <Prose text={mistakenIdea.refutation} />
      </p>
    </section>
  );
}

function Thumbs({ answer }: { readonly answer: Answer }) {
  if (answer.rulesOfThumb.length === 0) return null;
  return (
    <section>
      <h2>Rules of thumb, held against it</h2>
      <ul className="thumbs">
        {answer.rulesOfThumb.map((thumb) => (
          <li key={thumb.rule}>
            <p className="idea">
              <Prose text={thumb.rule} />
            </p>
            <p>
              By the rule <span className="number">{thumb.ruleValue}</span>; worked out{" "}
              <span className="number strong">{thumb.computed}</span>. It holds <Prose text={thumb.holds} />.
            </p>
            <p className="source">{thumb.source}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}
