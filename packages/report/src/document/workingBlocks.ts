/** How the numbers came about: steps of the working, the idea corrected, rules of thumb beside the computed value. */
import type { Answer, WorkingStep } from "@feedpath/engine";
import { inlinesOf } from "../words/inlines";
import { visibleLine } from "../words/visible";
import type { Block } from "./document";
import { stepLines } from "./stepLines";

/** From a value's name to the number (from 1) of the first step that explains it. */
export function stepOfValue(working: readonly WorkingStep[]): (name: string) => number | undefined {
  return (name) => {
    const index = working.findIndex((step) => step.explains.includes(name));
    return index < 0 ? undefined : index + 1;
  };
}

export function workingSection(working: readonly WorkingStep[]): Block | null {
  if (working.length === 0) return null;
  const steps = working.map((step) => ({
    says: inlinesOf(visibleLine(step.text)),
    lines: stepLines(step),
    source: visibleLine(step.source),
  }));
  return { kind: "section", title: "How it was worked out", blocks: [{ kind: "steps", steps }] };
}

export function ideaSection(mistaken: Answer["mistakenIdea"]): Block | null {
  if (mistaken === null) return null;
  const idea = visibleLine(mistaken.idea).replace(/^[“"]|[”"]$/g, "");
  return {
    kind: "section",
    title: "The idea this corrects",
    blocks: [
      { kind: "paragraph", inlines: [{ kind: "idea", text: `“${idea}”` }] },
      { kind: "paragraph", inlines: inlinesOf(visibleLine(mistaken.refutation)) },
    ],
  };
}

export function rulesSection({ rulesOfThumb }: Answer): Block | null {
  if (rulesOfThumb.length === 0) return null;
  const items = rulesOfThumb.map((rule) => [
    ...inlinesOf(
      visibleLine(`${rule.rule}: ${rule.ruleValue}; computed here: ${rule.computed}. Holds: ${rule.holds}.`),
    ),
    { kind: "quiet" as const, text: ` ${visibleLine(rule.source)}` },
  ]);
  return { kind: "section", title: "Rules of thumb", blocks: [{ kind: "list", items }] };
}
