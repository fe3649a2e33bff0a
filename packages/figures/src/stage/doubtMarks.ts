/** How sure the watts to the sky are: a bracket with its range and cause. */
import type { Answer } from "@feedpath/engine";
import { scalar } from "../kit/answerValues";
import type { Mark } from "../kit/figure";
import type { LabelBoard, LabelStyle } from "../kit/labelBoard";
import { fixedText, withUnit } from "../kit/numberText";
import { wrapText } from "../kit/textWidth";
import type { RibbonPlan } from "./ribbonPlan";

/** "58 to 78 W": as many decimals, three at most, as tell the ends apart; milliwatts below a tenth of a watt. */
export function wattsRangeText(low: number, high: number): string {
  const [factor, unit] = high < 0.095 ? [1000, "mW"] : [1, "W"];
  const [from, to] = [low * factor, high * factor];
  const decimals = [to < 9.95 ? 1 : 0, 1, 2, 3].find((one) => fixedText(from, one) !== fixedText(to, one)) ?? 3;
  return `${fixedText(from, decimals)} to ${withUnit(fixedText(to, decimals), unit)}`;
}

/** Cause of the doubt in a few words: the input that moves the watts most. */
export function doubtCause(answer: Answer): string {
  const [first, ...others] = answer.uncertainties;
  if (!first || answer.parameters.judged !== "radiatedPower") return "inputs as bounded";
  const cause = /^[\d−]/.test(first.says) ? first.input : first.says;
  return others.length > 0 ? `${cause}, and more` : cause;
}

/** Bracket at the right end of the sky from its low to its high watts, with the cause. */
export function doubtMarks(answer: Answer, plan: RibbonPlan, board: LabelBoard): Mark[] {
  const sky = scalar(answer, "radiatedPower");
  const { stage, k, top, skyRight } = plan;
  if (stage.compact || sky?.low === undefined || sky.high === undefined) return [];
  const { s } = stage;
  const x = skyRight + 7 * s;
  const [y1, y2] = [top + k * sky.low, top + k * sky.high];
  const stroke = { role: "ink", width: 1.5 * s } as const;
  /** Caps that would run into one blot are left out: the bar alone is as short. */
  const capped = y1 - y2 > 4 * s || y2 - y1 > 4 * s;
  const cap = (y: number): Mark => ({ kind: "line", x1: x - 6 * s, y1: y, x2: x + 6 * s, y2: y, stroke });
  const label = skyRight + 19 * s;
  const cause = wrapText(doubtCause(answer), 13 * s, stage.width - label);
  const range = wrapText(wattsRangeText(sky.low, sky.high), 13.7 * s, stage.width - label);
  const strong: LabelStyle = { role: "ink", size: 13 * s, weight: 600, id: "sky" };
  const styles = [...range.map(() => strong), { role: "ink2", size: 13 * s } as const];
  const texts = board.place(
    styles,
    [cause, cause.slice(0, 0)].flatMap((lines) =>
      [y1 + 4 * s, top + 12 * s].map((y) => ({ lines: [...range, ...lines], x: label, y })),
    ),
  );
  const caps = capped ? [cap(y1), cap(y2)] : [cap((y1 + y2) / 2)];
  return [{ kind: "line", x1: x, y1, x2: x, y2, stroke }, ...caps, ...texts];
}
