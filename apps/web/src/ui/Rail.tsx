/** The questions, grouped by what people say; a field finds them by what was noticed. */
import { useId, useState } from "react";
import { findQuestions } from "../state/saidWords";
import type { QuestionListing } from "../worker/messages";
import { useBench, useBenchState } from "./useBench";

interface RailProps {
  readonly onLines: () => void;
  readonly onAsked?: () => void;
}

export function Rail({ onLines, onAsked }: RailProps) {
  const state = useBenchState();
  const [said, setSaid] = useState("");
  const field = useId();
  const found = findQuestions(state.questions, said);
  const searching = said.trim() !== "";
  return (
    <div className="rail-inside">
      <label className="out-of-sight" htmlFor={field}>
        Say what you noticed
      </label>
      <input
        id={field}
        className="find"
        type="search"
        placeholder="Say what you noticed"
        value={said}
        onChange={(event) => setSaid(event.target.value)}
      />
      {searching && (
        <p className="label quiet" role="status">
          {found.length === 0
            ? "No question knows these words yet. All of them:"
            : `${found.length} of ${state.questions.length} questions`}
        </p>
      )}
      {groupsOf(found.length > 0 ? found : state.questions).map(([group, questions]) => (
        <Group key={group} group={group} questions={questions} searching={searching} onAsked={onAsked} />
      ))}
      <button type="button" className="plain rail-lines" onClick={onLines}>
        All feed lines, beside each other
      </button>
    </div>
  );
}

interface GroupProps {
  readonly group: string;
  readonly questions: readonly QuestionListing[];
  readonly searching: boolean;
  readonly onAsked: (() => void) | undefined;
}

function Group({ group, questions, searching, onAsked }: GroupProps) {
  const { question: current, questionBefore } = useBenchState();
  const bench = useBench();
  const used = questions.some(({ id }) => id === current || id === questionBefore);
  const [opened, setOpened] = useState<boolean | null>(null);
  const open = searching || (opened ?? (used || questions.length === 1));
  const ask = (id: string) => {
    bench.ask(id);
    onAsked?.();
  };
  return (
    <section className="group">
      <h2>
        <button type="button" aria-expanded={open} onClick={() => setOpened(!open)}>
          <span>“{group}”</span>
          {!open && <span className="count">{questions.length}</span>}
        </button>
      </h2>
      {open && (
        <ul>
          {questions.map(({ id, asked }) => (
            <li key={id}>
              <button type="button" aria-current={id === current ? "true" : undefined} onClick={() => ask(id)}>
                {asked}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function groupsOf(questions: readonly QuestionListing[]): [string, QuestionListing[]][] {
  const groups = new Map<string, QuestionListing[]>();
  for (const question of questions) groups.set(question.group, [...(groups.get(question.group) ?? []), question]);
  return [...groups];
}
