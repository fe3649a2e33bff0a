/** What worked the answer out, and how well its sums close. */
import type { Answer } from "@feedpath/engine";
import { Prose } from "./Prose";

export function Provenance({ answer: { provenance } }: { readonly answer: Answer }) {
  return (
    <details className="provenance">
      <summary>
        Worked out by Feedpath {provenance.program}, catalogue {provenance.catalogue}, file{" "}
        {provenance.file.slice(0, 8)}
      </summary>
      <ul className="points">
        {provenance.methods.map(({ name, says }) => (
          <li key={name}>
            <strong>{name}:</strong> <Prose text={says} />
          </li>
        ))}
        <li>
          <strong>kernels:</strong> {provenance.kernels}
        </li>
      </ul>
    </details>
  );
}
