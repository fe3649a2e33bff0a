/** Loss of the chosen lines over the frequencies, drawn by the figures, under its message. */
import { type LossStudy, lineLosses, toSvg } from "@feedpath/figures";
import { useMemo, useRef } from "react";
import { useWidth } from "../ui/useWidth";

/** Narrowest and widest picture that reads well, px. */
const leastWidth = 280;
const mostWidth = 820;

export function LossPicture({ study }: { readonly study: LossStudy }) {
  const frame = useRef<HTMLDivElement>(null);
  const width = Math.min(useWidth(frame), mostWidth);
  const figure = useMemo(() => (width >= leastWidth ? lineLosses(study, { width }) : null), [study, width]);
  return (
    <div ref={frame}>
      {figure && (
        <figure className="loss-picture">
          <figcaption>
            <h3>{figure.title}</h3>
          </figcaption>
          <div
            className="picture"
            // biome-ignore lint/security/noDangerouslySetInnerHtml: drawn by @feedpath/figures, which escapes every text
            dangerouslySetInnerHTML={{ __html: toSvg(figure, { theme: "css", idPrefix: "line-losses" }) }}
          />
          <p className="out-of-sight">{figure.description}</p>
        </figure>
      )}
    </div>
  );
}
