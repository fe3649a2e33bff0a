/** The film of an answer: played, stepped and slowed by hand. It never starts by itself. */
import type { Answer } from "@feedpath/engine";
import { type FigureFilm, filmOf, toSvg } from "@feedpath/figures";
import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from "react";
import "../theme/film.css";
import { useWidth } from "./useWidth";
import { saveText, sheetName } from "./waysOut";

/** ms for one moment. */
const pace = { usual: 100, slow: 500 };
/** Narrowest picture that still reads, and width of a film that is saved, px. */
const leastWidth = 280;
const savedWidth = 960;

export function Film({ answer, grey }: { readonly answer: Answer; readonly grey: boolean }) {
  const film = useMemo(() => filmOf(answer), [answer]);
  return film ? <Moments key={answer.headline} answer={answer} film={film} grey={grey} /> : null;
}

interface MomentsProps {
  readonly answer: Answer;
  readonly film: FigureFilm;
  readonly grey: boolean;
}

function Moments({ answer, film, grey }: MomentsProps) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const { moment, playing, slow, go, toggle, setSlow } = usePlaying(film.moments);
  const id = useId();
  const svg = useMemo(
    () => (width >= leastWidth ? toSvg(film.frame(moment, { width }), { theme: "css", idPrefix: "film" }) : ""),
    [film, moment, width],
  );
  const keys = (event: KeyboardEvent) => {
    if (event.key !== " ") return;
    event.preventDefault();
    toggle();
  };
  const save = () =>
    saveText(
      film.svg({ width: savedWidth }),
      sheetName(answer.station, answer.question).replace(/\.html$/, ".svg"),
      "image/svg+xml",
    );
  return (
    <section className={grey ? "film grey" : "film"} aria-labelledby={id} ref={frame}>
      <h2 id={id}>Step by step</h2>
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: drawn by @feedpath/figures, which escapes every text */}
      <div className="picture" dangerouslySetInnerHTML={{ __html: svg }} />
      <input
        type="range"
        aria-label="Moment of the film"
        aria-valuetext={`after ${film.says(moment)}`}
        min={0}
        max={film.moments - 1}
        value={moment}
        onChange={(event) => go(Number(event.target.value))}
        onKeyDown={keys}
      />
      <div className="film-acts">
        <button type="button" className="button" onClick={toggle}>
          {playing ? "Pause" : "Play"}
        </button>
        <button type="button" className="button" disabled={moment === 0} onClick={() => go(moment - 1)}>
          One step back
        </button>
        <button type="button" className="button" disabled={moment === film.moments - 1} onClick={() => go(moment + 1)}>
          One step on
        </button>
        <button type="button" className="button" aria-pressed={slow} onClick={() => setSlow(!slow)}>
          Slowly
        </button>
        <button type="button" className="plain" onClick={save}>
          save the film
        </button>
      </div>
    </section>
  );
}

/** Where the film stands: first at its end, for its beginning is empty. A step by hand pauses it; played from its end it begins anew. */
function usePlaying(moments: number) {
  const last = moments - 1;
  const [moment, setMoment] = useState(last);
  const [playing, setPlaying] = useState(false);
  const [slow, setSlow] = useState(false);
  useEffect(() => {
    if (!playing) return;
    if (moment >= last) {
      setPlaying(false);
      return;
    }
    const timer = setTimeout(() => setMoment(moment + 1), slow ? pace.slow : pace.usual);
    return () => clearTimeout(timer);
  }, [playing, slow, moment, last]);
  const go = (to: number) => {
    setPlaying(false);
    setMoment(Math.min(Math.max(to, 0), last));
  };
  const toggle = () => {
    if (!playing && moment >= last) setMoment(0);
    setPlaying(!playing);
  };
  return { moment, playing, slow, go, toggle, setSlow };
}
