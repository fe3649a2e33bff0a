/** Labels above the joints: each as full as its neighbours allow, all at least with their SWR where that fits. */
import type { Mark } from "../kit/figure";
import type { LabelBoard, LabelPlace, LabelStyle } from "../kit/labelBoard";
import { wattsText } from "../kit/numberText";
import { textWidth } from "../kit/textWidth";
import { insideBaseline, type RibbonPlan } from "./ribbonPlan";

type Placed = RibbonPlan["joints"][number];

/** A change of SWR above this is labelled. */
const tellingChange = 0.1;

/** Both ends and every joint whose SWR differs by more than 0.1 from the last one told. */
function tellingJoints(joints: readonly Placed[]): Placed[] {
  let told = joints[0]?.swr ?? null;
  return joints.filter(({ swr }, i) => {
    const differs = swr === null || told === null ? swr !== told : Math.abs(swr - told) > tellingChange;
    const shown = i === 0 || i === joints.length - 1 || differs;
    if (shown) told = swr;
    return shown;
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

/** Shortest wordings first, turned to the left of their tick where the right is taken; then each grows while it fits. */
function arrange(slots: Slot[], s: number, width: number): void {
  for (const [i, slot] of [...slots.entries()].toReversed()) {
    if (!clear(slots.slice(i + 1), slot, s, width)) slot.anchor = "end";
  }
  const growing = [slots.at(-1), slots[0], ...slots.slice(1, -1)].filter((slot) => slot !== undefined);
  for (const slot of growing) {
    const shortest = slot.level;
    slot.level = 0;
    while (slot.level < shortest && !clear(slots, slot, s, width)) slot.level++;
  }
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
  arrange(slots, s, width);
  const y = plan.top - 30 * s;
  return slots.toReversed().flatMap(({ x, name, texts, level, anchor, id }) => {
    const styles: LabelStyle[] = [
      { role: "ink", size: 13 * s, weight: 600, id },
      { role: "ink2", size: 13 * s, id },
    ];
    const place: LabelPlace = { lines: [name, texts[level] ?? ""], x: anchor === "end" ? x + 2 * s : x, y, anchor };
    return board.place(styles, [place, { ...place, lines: [name] }]);
  });
}
