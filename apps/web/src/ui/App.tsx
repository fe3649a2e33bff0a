/** The bench: head, rail of questions, answer, file; on a phone one place at a time. */
import { useEffect, useRef, useState } from "react";
import { AnswerPage } from "./AnswerPage";
import type { FilePlace } from "./filePlace";
import { HandOver } from "./HandOver";
import { Header } from "./Header";
import { Keys } from "./Keys";
import { LinesPlace } from "./LinesPlace";
import { Notes } from "./Notes";
import { Panel } from "./Panel";
import { PhoneBar, type Place } from "./PhoneBar";
import { Rail } from "./Rail";
import { StationFile } from "./StationFile";
import { Stations } from "./Stations";
import { useBenchState } from "./useBench";

type PanelName = "questions" | "stations" | "lines" | "hand over" | "keys";

export function App() {
  const { question, outline } = useBenchState();
  const [panel, setPanel] = useState<PanelName | null>(null);
  const [place, setPlace] = useState<Place>("answer");
  const [goTo, setGoTo] = useState<{ place: FilePlace } | null>(null);
  const main = useRef<HTMLElement>(null);
  const close = () => setPanel(null);
  const show = (name: PanelName) => (open: boolean) => setPanel(open ? name : null);

  useEffect(() => {
    if (question) window.history.replaceState(null, "", `#${question}`);
  }, [question]);
  useEffect(() => {
    document.title = outline ? `${outline.title} · Feedpath` : "Feedpath";
  }, [outline]);

  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      const typing = event.target instanceof Element && event.target.closest("input, textarea, select");
      if (event.key === "?" && !typing) setPanel("keys");
    };
    document.addEventListener("keydown", listen);
    return () => document.removeEventListener("keydown", listen);
  }, []);

  const goToFile = (filePlace: FilePlace) => {
    if (window.matchMedia("(max-width: 599px)").matches) setPlace("station");
    setGoTo({ place: filePlace });
  };
  const askElse = () => {
    const field = document.querySelector<HTMLInputElement>(".rail .find");
    if (field?.checkVisibility()) field.focus();
    else setPanel("questions");
  };
  return (
    <div className="bench" data-place={place}>
      <button type="button" className="skip" onClick={() => main.current?.focus()}>
        Go to the answer
      </button>
      <Header
        onStations={() => setPanel("stations")}
        onLines={() => setPanel("lines")}
        onHandOver={() => setPanel("hand over")}
      />
      <nav className="rail" aria-label="Questions">
        <Rail onLines={() => setPanel("lines")} />
      </nav>
      <main id="answer" ref={main} tabIndex={-1}>
        <Notes />
        <div className="place-answer">
          <AnswerPage onAllQuestions={askElse} onGoTo={goToFile} />
        </div>
        <div className="place-station">
          <button type="button" className="button choose-station" onClick={() => setPanel("stations")}>
            Choose a station
          </button>
          <StationFile alone={place === "station"} goTo={goTo} onGoTo={goToFile} />
        </div>
        <div className="place-hand-over">
          <h1>Hand over</h1>
          <HandOver />
        </div>
      </main>
      <PhoneBar place={place} onPlace={setPlace} />
      <Panel title="All questions" open={panel === "questions"} onOpenChange={show("questions")}>
        <Rail
          onLines={() => setPanel("lines")}
          onAsked={() => {
            setPlace("answer");
            close();
          }}
        />
      </Panel>
      <Panel title="Choose a station" open={panel === "stations"} onOpenChange={show("stations")}>
        <Stations onChosen={close} />
      </Panel>
      <Panel title="Feed lines" wide open={panel === "lines"} onOpenChange={show("lines")}>
        <LinesPlace />
      </Panel>
      <Panel title="Hand over" open={panel === "hand over"} onOpenChange={show("hand over")}>
        <HandOver />
      </Panel>
      <Panel title="Keys" open={panel === "keys"} onOpenChange={show("keys")}>
        <Keys />
      </Panel>
    </div>
  );
}
