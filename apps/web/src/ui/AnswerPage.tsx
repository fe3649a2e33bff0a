/** The answer: question, headline, verdict, picture, parts, depth; or why there is none. */
import { isStale, shownQuestion } from "../state/reports";
import { AnswerHead } from "./AnswerHead";
import { Blocks } from "./Blocks";
import { Computing } from "./Computing";
import { Figures } from "./Figures";
import { Parameters } from "./Parameters";
import { PartsRow } from "./PartsRow";
import { Refused } from "./Refused";
import { Stage } from "./Stage";
import { Stale } from "./Stale";
import { useBenchState } from "./useBench";
import { DepthContext } from "./useDepth";

interface AnswerPageProps {
  readonly onAllQuestions: () => void;
  readonly onWholeFile: () => void;
  readonly onGoTo: (problem: number) => void;
}

export function AnswerPage({ onAllQuestions, onWholeFile, onGoTo }: AnswerPageProps) {
  const state = useBenchState();
  const { shown, question, questions } = state;
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
      <Computing />
      <Stale onGoTo={onGoTo} />
      {!shown && state.problems.length === 0 && <div className="waiting" aria-hidden="true" />}
      {shown?.kind === "refusal" && (
        <>
          <Refused refusal={shown.refusal} onShowFile={onWholeFile} onAskElse={onAllQuestions} />
          <Parameters />
        </>
      )}
      {shown?.kind === "answer" && (
        <DepthContext value={shown.depth}>
          <article className={grey ? "answer older" : "answer"} aria-busy={state.running}>
            <AnswerHead key={shown.answer.question} answer={shown.answer} />
            {shown.answer.drawing && <Stage answer={shown.answer} grey={grey} />}
            <PartsRow onWholeFile={onWholeFile} />
            <Parameters />
            <Figures answer={shown.answer} grey={grey} />
            {shown.depth && <Blocks blocks={shown.depth.blocks} />}
            {shown.depth && (
              <p className="provenance">
                {shown.depth.provenance.worked} {shown.depth.provenance.check}
              </p>
            )}
          </article>
        </DepthContext>
      )}
    </>
  );
}
