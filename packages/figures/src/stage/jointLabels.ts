/** What stands above the joints: name, SWR on its reference, impedance, voltage. */
import type { Joint } from "@feedpath/engine";
import type { Mark } from "../kit/figure";
import type { LabelBoard, LabelPlace, LabelStyle } from "../kit/labelBoard";
import { impedanceText, plainText, swrText, voltsText, wattsText, withUnit } from "../kit/numberText";
import { insideBaseline, type RibbonPlan } from "./ribbonPlan";

type Placed = RibbonPlan["joints"][number];

/** A change of SWR above this is labelled. */
const tellingChange = 0.1;

export const swrOnText = ({ swr }: Joint): string =>
  `SWR\u00a0${swrText(swr.value)} on ${withUnit(plainText(swr.reference, 1), "Ω")}`;

/** Wordings from full to short; the reference stays. */
function wordings(joint: Joint): string[] {
  const { re, im } = joint.impedance;
  const swr = swrOnText(joint);
  const volts = voltsText(joint.voltage.rms);
  return [
    `${swr} · ${impedanceText(re, im, 1)} · ${volts}`,
    `${swr} · ${impedanceText(re, im, 0)} · ${volts}`,
    `${swr} · ${volts}`,
    swr,
  ];
}

/** Both ends and every joint whose SWR differs by more than 0.1 from the last one told. */
function tellingJoints(joints: readonly Placed[]): Placed[] {
  let told = joints[0]?.joint.swr.value ?? null;
  return joints.filter(({ joint }, i) => {
    const value = joint.swr.value;
    const differs = value === null || told === null ? value !== told : Math.abs(value - told) > tellingChange;
    const shown = i === 0 || i === joints.length - 1 || differs;
    if (shown) told = value;
    return shown;
  });
}

function compactLabels(plan: RibbonPlan, board: LabelBoard): Mark[] {
  const ends = [plan.joints.at(-1), plan.joints[0]].filter((one) => one !== undefined);
  const y = plan.top - 11;
  return ends.flatMap(({ joint, x }, i) => {
    const bare = `SWR\u00a0${swrText(joint.swr.value)}`;
    const texts = i === 0 ? [swrOnText(joint), bare] : [bare];
    const style: LabelStyle = { role: "ink2", size: 13, id: joint.name };
    const places = texts.flatMap((text): LabelPlace[] => [
      { lines: [text], x: x - 2, y },
      { lines: [text], x: Math.max(0, x - 40), y },
      { lines: [text], x: x + 2, y, anchor: "end" },
    ]);
    return board.place(style, places);
  });
}

/** Labels above the ticks. The last joint is placed first, then those between, then the transmitter. */
export function jointLabels(plan: RibbonPlan, board: LabelBoard): Mark[] {
  if (plan.stage.compact) return compactLabels(plan, board);
  const { s } = plan.stage;
  const telling = tellingJoints(plan.joints);
  const [first, ...rest] = telling;
  const order = first ? [...rest.toReversed(), first] : [];
  const styles = (id: string): LabelStyle[] => [
    { role: "ink", size: 13 * s, weight: 600, id },
    { role: "ink2", size: 13 * s, id },
  ];
  const y = plan.top - 30 * s;
  return order.flatMap(({ joint, x, power }) => {
    const name = insideBaseline(plan) === null ? `${joint.name}, ${wattsText(power)}` : joint.name;
    const texts = wordings(joint);
    const toRight = texts.map((text): LabelPlace => ({ lines: [name, text], x, y }));
    const toLeft = texts.map((text): LabelPlace => ({ lines: [name, text], x: x + 2 * s, y, anchor: "end" }));
    return board.place(styles(joint.name), [...toRight, ...toLeft, { lines: [name], x, y }]);
  });
}
