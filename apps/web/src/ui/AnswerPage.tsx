/** The answer: question, headline, verdict, picture, parts, depth; or why there is none. */
import { useMemo, useState } from "react";
import { isStale, shownQuestion } from "../state/reports";
import { AnswerHead } from "./AnswerHead";
import { Computing } from "./Computing";
import { DepthColumns } from "./DepthColumns";
import { Figures } from "./Figures";
import type { FilePlace } from "./filePlace";
import { Parameters } from "./Parameters";
import { PartsRow } from "./PartsRow";
import { Refused } from "./Refused";
import { Stage } from "./Stage";
import { Stale } from "./Stale";
import { useBenchState } from "./useBench";
import { DepthContext } from "./useDepth";
import { PointingContext } from "./usePointing";

interface AnswerPageProps {
  readonly onAllQuestions: () => void;
  readonly onGoTo: (place: FilePlace) => void;
}

export function AnswerPage({ onAllQuestions, onGoTo }: AnswerPageProps) {
  const state = useBenchState();
  const { shown, question, questions } = state;
  const [names, point] = useState<readonly string[]>([]);
  const pointing = useMemo(() => ({ names, point }), [names]);
  const asked = questions.find(({ id }) => id === question)?.asked ?? "";
  const grey = isStale(state) || state.slow || shownQuestion(state) !== question;
  return (
    <>
      <div className="asked-line">
        <p className="asked">{asked}</p>
        <button type="button" className="plain all-questions" onClick={onAllQuestions}>
          all questions
        </button>
      </div>
      <p className="out-of-sight" role="status">
        {!state.running && shown?.kind === "answer" && shown.answer.headline}
      </p>
      <Computing />
      <Stale onGoTo={onGoTo} />
      {!shown && state.running && <div className="waiting" aria-hidden="true" />}
      {shown?.kind === "refusal" && (
        <>
          <Refused refusal={shown.refusal} onShowFile={() => onGoTo({ line: 1 })} onAskElse={onAllQuestions} />
          <Parameters />
        </>
      )}
      {shown?.kind === "answer" && (
        <DepthContext value={shown.depth}>
          <PointingContext value={pointing}>
            <Earlier />
            <article className={grey ? "answer older" : "answer"} aria-busy={state.running}>
              <AnswerHead key={shown.answer.question} answer={shown.answer} />
              {shown.answer.drawing ? (
                <Stage answer={shown.answer} grey={grey} />
              ) : (
                <Figures answer={shown.answer} grey={grey} />
              )}
              <PartsRow onGoToLine={(line) => onGoTo({ line })} />
              <Parameters />
              <DepthColumns depth={shown.depth}>
                {shown.answer.drawing && <Figures answer={shown.answer} grey={grey} />}
              </DepthColumns>
            </article>
          </PointingContext>
        </DepthContext>
      )}
    </>
  );
}

/** While another question or station is worked out, or was stopped: what the grey answer below belongs to. */
function Earlier() {
  const { shown, question, slow, stopped, outline } = useBenchState();
  if (shown?.kind !== "answer" || !(slow || stopped)) return null;
  const { answer } = shown;
  if (answer.question === question && answer.station === outline?.title) return null;
  return (
    <p className="label quiet">
      Still below, in grey: “{answer.asked}” for {answer.station}
    </p>
  );
}
