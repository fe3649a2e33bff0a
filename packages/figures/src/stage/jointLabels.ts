/** Labels above the joints: each as full as its neighbours allow, all at least with their SWR where that fits. */
import type { Mark } from "../kit/figure";
import type { LabelBoard, LabelPlace, LabelStyle } from "../kit/labelBoard";
import { wattsText } from "../kit/numberText";
import { textWidth } from "../kit/textWidth";
import { insideBaseline, type RibbonPlan } from "./ribbonPlan";

type Placed = RibbonPlan["joints"][number];

/** A change of SWR above this is labelled. */
const tellingChange = 0.1;

const differ = (a: number | null, b: number | null): boolean =>
  a === null || b === null ? a !== b : Math.abs(a - b) > tellingChange;

/** Both ends and every joint whose SWR differs by more than 0.1 from the last one told, unless the next tells the same. */
function tellingJoints(joints: readonly Placed[]): Placed[] {
  let told = joints[0]?.swr ?? null;
  const telling = joints.filter(({ swr }, i) => {
    const shown = i === 0 || i === joints.length - 1 || differ(swr, told);
    if (shown) told = swr;
    return shown;
  });
  return telling.filter(({ swr }, i) => {
    const next = telling[i + 1];
    return i === 0 || next === undefined || next.swr === null || differ(swr, next.swr);
  });
}

interface Slot {
  readonly x: number;
  readonly texts: readonly string[];
  readonly name: string;
  readonly id: string;
  level: number;
  anchor: "start" | "end";
}

const gap = 10;

function span(slot: Slot, s: number): readonly [number, number] {
  const text = slot.texts[slot.level] ?? "";
  const width = Math.max(textWidth(slot.name, 13 * s, 600), textWidth(text, 13 * s)) + gap * s;
  return slot.anchor === "start" ? [slot.x, slot.x + width] : [slot.x - width, slot.x];
}

const clear = (slots: readonly Slot[], one: Slot, s: number, width: number): boolean => {
  const [left, right] = span(one, s);
  if (left < 0 || right > width) return false;
  return slots.every((other) => {
    const [from, to] = span(other, s);
    return other === one || right <= from || to <= left;
  });
};

/**
 * Shortest wordings first: the last joint right of its tick, the others left of theirs where the right is taken. Joints
 * between give way to the two ends. Then each grows while it fits.
 */
function arrange(all: readonly Slot[], s: number, width: number): Slot[] {
  const slots = [...all];
  const turn = (i: number) => {
    const slot = slots[i]!;
    const after = slots.slice(i + 1);
    slot.anchor = "start";
    if (!clear(after, slot, s, width)) slot.anchor = "end";
    return clear(after, slot, s, width);
  };
  for (let i = slots.length - 2; i > 0; i--) if (!turn(i)) slots.splice(i, 1);
  while (slots.length > 2 && !turn(0)) slots.splice(1, 1);
  if (slots.length > 1) turn(0);
  const growing = [slots.at(-1), slots[0], ...slots.slice(1, -1)].filter((slot) => slot !== undefined);
  for (const slot of growing) {
    const shortest = slot.level;
    slot.level = 0;
    while (slot.level < shortest && !clear(slots, slot, s, width)) slot.level++;
  }
  return slots;
}

function compactLabels(plan: RibbonPlan, board: LabelBoard): Mark[] {
  const last = plan.joints.at(-1);
  const first = plan.joints[0];
  const y = plan.top - 11;
  const label = ({ x, name, compact }: Placed, texts: readonly string[]) => {
    const style: LabelStyle = { role: "ink2", size: 13, id: name };
    const places = texts.flatMap((text): LabelPlace[] => [
      { lines: [text], x: x - 2, y },
      { lines: [text], x: Math.max(0, x - 40), y },
      { lines: [text], x: x + 2, y, anchor: "end" },
    ]);
    return compact.length > 0 ? board.place(style, places) : [];
  };
  return [
    ...(last ? label(last, last.compact) : []),
    ...(first && first !== last ? label(first, first.compact.slice(-1)) : []),
  ];
}

/** Labels above the ticks. */
export function jointLabels(plan: RibbonPlan, board: LabelBoard): Mark[] {
  const { s, compact, width } = plan.stage;
  if (compact) return compactLabels(plan, board);
  const thin = insideBaseline(plan) === null;
  const slots = tellingJoints(plan.joints).map(
    ({ x, power, name, wordings }): Slot => ({
      x,
      id: name,
      name: thin ? `${name}, ${wattsText(power)}` : name,
      texts: wordings,
      level: wordings.length - 1,
      anchor: "start",
    }),
  );
  const y = plan.top - 30 * s;
  return arrange(slots, s, width)
    .toReversed()
    .flatMap(({ x, name, texts, level, anchor, id }) => {
      const styles: LabelStyle[] = [
        { role: "ink", size: 13 * s, weight: 600, id },
        { role: "ink2", size: 13 * s, id },
      ];
      const place: LabelPlace = { lines: [name], x: anchor === "end" ? x + 2 * s : x, y, anchor };
      const fuller = texts.slice(level).map((text) => ({ ...place, lines: [name, text] }));
      return board.place(styles, [...fuller, place]);
    });
}
