/** What an answer rests on: assumptions, the input that matters most, readings, cautions, what is not covered. */
import type { Answer, ReadingComparison, Uncertainty } from "@feedpath/engine";
import { inlinesOf } from "../words/inlines";
import { capitalised, wordsOf } from "../words/names";
import { numberText, quantityText, unitSign } from "../words/numbers";
import { visibleLine } from "../words/visible";
import type { Block, Inline } from "./document";
import { toldTogether } from "./toldTogether";
import { weightiestFirst } from "./weightiestFirst";

const effect = (input: Uncertainty): number => Math.abs(input.atHigh - input.atLow);

/** Inputs by how far each, alone, moves the judged result; the strongest first. */
export const byEffect = (answer: Answer): readonly Uncertainty[] =>
  answer.uncertainties.toSorted((a, b) => effect(b) - effect(a));

/** The judged result in words and with its unit. */
export function judged(answer: Answer): { readonly says: string; readonly unit: string } {
  const name = answer.parameters.judged;
  if (typeof name !== "string") return { says: "the result", unit: "" };
  return { says: wordsOf(name), unit: answer.values[name]?.unit ?? "" };
}

/** Share of the high end below which the digits of the low end tell nothing. */
const tooSmall = 0.02;

/** "soil (dry to wet): alone it moves radiated power from 58 to 78 W." or null where nothing is uncertain. */
export function mattersMost(answer: Answer): string | null {
  const first = byEffect(answer)[0];
  if (first === undefined) return null;
  const { says, unit } = judged(answer);
  const [low, high] = [Math.min(first.atLow, first.atHigh), Math.max(first.atLow, first.atHigh)];
  const span = `${Math.abs(low) < tooSmall * Math.abs(high) ? "next to nothing" : numberText(low)} to ${quantityText(high, unit)}`;
  return visibleLine(`${first.input} (${first.says}): alone it moves ${says} from ${span}.`);
}

const lead = (label: string, text: string): Block => ({
  kind: "paragraph",
  inlines: [{ kind: "strong", text: `${label} ` }, ...inlinesOf(visibleLine(text))],
});

export function restsOnSection(answer: Answer): Block | null {
  const facts = toldTogether(weightiestFirst(answer)).map(({ name, value, reason }) => ({
    name: visibleLine(name),
    value: visibleLine(value),
    from: visibleLine(reason),
  }));
  const most = mattersMost(answer);
  const blocks: readonly Block[] = [
    ...(most === null ? [] : [lead("Matters most:", most)]),
    ...(answer.wouldSettle === null ? [] : [lead("Would settle it:", answer.wouldSettle)]),
    ...(facts.length === 0 ? [] : [{ kind: "facts" as const, facts }]),
  ];
  return blocks.length === 0 ? null : { kind: "section", title: "What it rests on", blocks };
}

export function careSection({ cautions, notCovered }: Answer): Block | null {
  const items = [...cautions, ...notCovered].map((text) => inlinesOf(visibleLine(text)));
  return items.length === 0
    ? null
    : { kind: "section", title: "Care, and what is not covered", blocks: [{ kind: "list", items }] };
}

export function reasonsSection({ reasons, verdict }: Answer): Block | null {
  if (reasons.length === 0 || verdict === null) return null;
  const items = reasons.map((reason): readonly Inline[] => [
    ...inlinesOf(visibleLine(`${reason.says}; limit ${numberText(reason.limit)} ${reason.unit}.`)),
    { kind: "quiet", text: ` ${visibleLine(reason.source)}` },
  ]);
  return { kind: "section", title: `Why it is called ${verdict}`, blocks: [{ kind: "list", items }] };
}

export function readingsSection(readings: readonly ReadingComparison[]): Block | null {
  if (readings.length === 0) return null;
  const items = readings.map((reading) => inlinesOf(visibleLine(reading.says)));
  return { kind: "section", title: "Your readings", blocks: [{ kind: "list", items }] };
}

/** Every uncertain input moved alone, as a table that opens on demand; null where one sentence says it all. */
export function uncertaintySection(answer: Answer): Block | null {
  const inputs = byEffect(answer);
  if (inputs.length < 2) return null;
  const { says, unit } = judged(answer);
  const column = (name: string) => ({ name, unit: unitSign(unit), numeric: true });
  return {
    kind: "folded",
    summary: "How sure it is: each uncertain input moved alone",
    table: {
      caption: `${capitalised(says)} with one input at its low and high end`,
      columns: [
        { name: "input", unit: "", numeric: false },
        { name: "range", unit: "", numeric: false },
        column("at low"),
        column("at high"),
      ],
      rows: inputs.map((input) => [
        visibleLine(input.input),
        visibleLine(input.says),
        numberText(input.atLow),
        numberText(input.atHigh),
      ]),
    },
  };
}
