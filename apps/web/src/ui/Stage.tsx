/** The picture of the answer: section above ribbon, drawn for the width there is, with the joints to walk along. */
import type { Answer } from "@feedpath/engine";
import { stage, toSvg } from "@feedpath/figures";
import { useMemo, useRef } from "react";
import { Joints } from "./Joints";
import { Picture } from "./Picture";
import { useWidth } from "./useWidth";
import { WattsList } from "./WattsList";

/** Narrowest picture that still reads, px. */
const leastWidth = 280;

export function Stage({ answer, grey }: { readonly answer: Answer; readonly grey: boolean }) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const figure = useMemo(() => (width >= leastWidth ? stage(answer, { width }) : null), [answer, width]);
  const svg = useMemo(() => (figure ? toSvg(figure, { theme: "css", idPrefix: "stage" }) : ""), [figure]);
  return (
    <section className={grey ? "stage grey" : "stage"} aria-label="The station, and where its watts go">
      <div className="stage-frame" ref={frame}>
        <Picture svg={svg} />
        {figure && <Joints joints={answer.joints} figure={figure} />}
      </div>
      {width < 600 && <WattsList answer={answer} />}
    </section>
  );
}
