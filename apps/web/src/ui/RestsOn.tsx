/** What the answer rests on: values that were filled in, what matters most, and what would settle it. */
import type { Answer } from "@feedpath/engine";
import { Prose } from "./Prose";

export function RestsOn({ answer }: { readonly answer: Answer }) {
  const { assumptions, wouldSettle } = answer;
  const [most, ...others] = [...answer.uncertainties].sort((a, b) => spanOf(b) - spanOf(a));
  return (
    <section>
      <h2>What it rests on</h2>
      {assumptions.length === 0 && <p className="quiet">Every value comes from your file; nothing was filled in.</p>}
      {assumptions.length > 0 && (
        <>
          <p className="quiet">What your file leaves out was filled in:</p>
          <dl className="assumptions">
            {assumptions.map(({ name, value, reason, place }) => (
              <div key={`${place} ${name}`}>
                <dt>{name}</dt>
                <dd>
                  {value}
                  <span className="source">{reason}</span>
                </dd>
              </div>
            ))}
          </dl>
        </>
      )}
      {most && (
        <p>
          <strong>Matters most: {most.input}.</strong> <Prose text={most.says} />
        </p>
      )}
      {others.length > 0 && (
        <details>
          <summary>{others.length === 1 ? "One more" : `${others.length} more`} that matter less</summary>
          <ul className="points">
            {others.map((uncertainty) => (
              <li key={`${uncertainty.place} ${uncertainty.input}`}>
                <strong>{uncertainty.input}:</strong> <Prose text={uncertainty.says} />
              </li>
            ))}
          </ul>
        </details>
      )}
      {wouldSettle && (
        <p>
          <strong>Would settle it:</strong> <Prose text={wouldSettle} />
        </p>
      )}
    </section>
  );
}

const spanOf = ({ atLow, atHigh }: Answer["uncertainties"][number]): number => Math.abs(atHigh - atLow);
