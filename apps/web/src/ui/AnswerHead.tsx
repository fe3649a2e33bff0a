/** Question, headline, verdict with its sentence; numbers open their working below their own line. */
import type { Answer, Verdict } from "@feedpath/engine";
import { type KeyboardEvent, useState } from "react";
import { NumberWorking } from "./NumberWorking";
import { Phrases } from "./Phrases";
import { Prose } from "./Prose";

interface Opened {
  readonly line: "headline" | "verdict";
  readonly value: string;
}

export function AnswerHead({ answer }: { readonly answer: Answer }) {
  const [opened, setOpened] = useState<Opened | null>(null);
  const open = (line: Opened["line"]) => (value: string) =>
    setOpened((was) => (was?.line === line && was.value === value ? null : { line, value }));
  const openIn = (line: Opened["line"]) => (opened?.line === line ? opened.value : null);
  const working = (line: Opened["line"]) =>
    opened?.line === line && <NumberWorking answer={answer} name={opened.value} onClose={() => setOpened(null)} />;
  const keys = (event: KeyboardEvent) => event.key === "Escape" && setOpened(null);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape closes what a number inside has opened
    <div onKeyDown={keys}>
      <h1 className="headline">
        <Phrases phrases={answer.headlinePhrases} open={openIn("headline")} onOpen={open("headline")} />
      </h1>
      {working("headline")}
      <div className="verdict">
        {answer.verdict && <VerdictMark verdict={answer.verdict} />}
        <p>
          <Phrases phrases={answer.verdictPhrases} open={openIn("verdict")} onOpen={open("verdict")} />
          {nextOf(answer) !== null && (
            <>
              {" "}
              <Prose text={answer.next} />
            </>
          )}
        </p>
      </div>
      {working("verdict")}
    </div>
  );
}

/** What is to be done, where the sentence after the verdict does not say it already. */
function nextOf({ next, verdictPhrases }: Answer): string | null {
  const said = verdictPhrases.map(({ text }) => text).join("");
  return next === "" || said.includes(next.replace(/\.$/, "")) ? null : next;
}

const blocks: Readonly<Record<Verdict, number>> = { good: 3, workable: 2, trouble: 1 };

/** Three blocks, filled by how well it stands, always with the word. */
function VerdictMark({ verdict }: { readonly verdict: Verdict }) {
  return (
    <span className="verdict-mark">
      {[1, 2, 3].map((block) => (
        <span key={block} aria-hidden="true" className={block <= blocks[verdict] ? "block filled" : "block"} />
      ))}
      <strong>{verdict}</strong>
    </span>
  );
}
