/** Words and watts on the ribbon, kept in this order where room is short: sky, heat, joints, power. */
import type { Answer } from "@feedpath/engine";
import type { Box } from "../kit/box";
import type { Mark } from "../kit/figure";
import { type LabelBoard, type LabelPlace, type LabelStyle, textBox } from "../kit/labelBoard";
import { givenWattsText, wattsText } from "../kit/numberText";
import { textWidth } from "../kit/textWidth";
import { doubtMarks } from "./doubtMarks";
import { jointLabels } from "./jointLabels";
import { insideBaseline, leastSky, type RibbonPlan } from "./ribbonPlan";
import { innerRadius, wattsSize, wordsSize } from "./stripPlaces";

function skyLabel(plan: RibbonPlan, board: LabelBoard): Mark[] {
  const { stage, top, xFeed, skyRight } = plan;
  const size = wattsSize(plan.stage);
  const text = `${wattsText(plan.radiated)} ${stage.compact ? "sky" : "to the sky"}`;
  const baseline = insideBaseline(plan);
  const style: LabelStyle = { role: "fieldInk", size, weight: 600, id: "sky" };
  if (baseline !== null && plan.k * plan.radiated >= leastSky(stage)) {
    const place: LabelPlace = stage.compact
      ? { lines: [text], x: skyRight - 8, y: baseline, anchor: "end" }
      : { lines: [text], x: xFeed + 120 * stage.s, y: baseline };
    return board.place({ ...style, halo: { role: "fieldTint", width: 11 * stage.s } }, [place]);
  }
  const above = (lines: string[], y: number): LabelPlace => ({
    lines,
    x: stage.compact ? skyRight - 4 : skyRight,
    y,
    anchor: "end",
  });
  const near = top - 9 * stage.s;
  const places = [text, text.replace("to the ", ""), wattsText(plan.radiated)].map((one) => above([one], near));
  return board.place(style, places);
}

function heatLabels(plan: RibbonPlan, board: LabelBoard): Mark[] {
  const { compact, s } = plan.stage;
  const watts: LabelStyle = { role: "heatInk", size: wattsSize(plan.stage), weight: 600 };
  const words: LabelStyle = { role: compact ? "ink2" : "ink", size: wordsSize(plan.stage) };
  const y = compact ? plan.bottom + 15 : plan.bottom - 16 * s;
  for (const strip of plan.strips) {
    const left = strip.turn + innerRadius(s);
    board.reserve({ left, right: left + strip.thickness, top: plan.top + plan.k * strip.before, bottom: plan.bottom });
  }
  const byWatts = plan.strips.toSorted((a, b) => b.watts - a.watts);
  const together = byWatts.flatMap(({ id, label }) => {
    const { watts: number, words: says, apart, x, anchor } = label;
    const styles = [
      { ...watts, id },
      { ...words, id },
    ];
    const both = says === null || apart ? [] : [{ lines: [number, says], x, y, anchor }];
    return board.place(styles, [...both, { lines: [number], x, y, anchor }]);
  });
  return [...together, ...wordsApart(plan, words, y, board)];
}

/** Words that are wider than their watts: each under its strip, in the upper row where it is free. */
function wordsApart(plan: RibbonPlan, style: LabelStyle, y: number, board: LabelBoard): Mark[] {
  return plan.strips.flatMap(({ id, label }) => {
    if (!label.apart || label.words === null) return [];
    const half = textWidth(label.words, style.size) / 2;
    const x = Math.min(Math.max(label.x, half + 1), plan.stage.width - half - 1);
    const rows = [15, 31].map((down): LabelPlace => ({ lines: [label.words!], x, y: y + down, anchor: "middle" }));
    const marks = board.place({ ...style, id }, rows);
    for (const box of marks.map(textBox)) board.reserve({ ...box, left: box.left - 5, right: box.right + 5 });
    return marks;
  });
}

/** The watts that enter, in the first column wide enough; those that arrive, at the end of the last line. */
function powerLabels(plan: RibbonPlan, board: LabelBoard): Mark[] {
  const baseline = insideBaseline(plan);
  if (baseline === null) return [];
  const { compact, s } = plan.stage;
  const inset = compact ? 6 : 12 * s;
  const style: LabelStyle = { role: "onPower", size: wattsSize(plan.stage), weight: 600 };
  const enters = givenWattsText(plan.whole);
  const first = textWidth(enters, style.size, 600);
  const wide = plan.columns.find((column) => column.x1 - column.x0 > first + 1.5 * inset);
  const left = wide && wide.power[0]! > 0.995 * plan.whole ? wide.x0 : plan.left;
  if (left + inset + first > plan.xFeed - 4) return [];
  if (!compact) for (const { x } of plan.joints) board.avoidFirmly(tickBox(plan, x));
  const insets = [inset, inset / 2, inset / 3];
  const start = board.place(
    style,
    insets.map((by) => ({ lines: [enters], x: left + by, y: baseline })),
  );
  const last = plan.columns.findLast((column) => column.isLine);
  const split = plan.columns.some((column) => column.branches.length > 0);
  const [end, room] = last ? [last.x1, last.x1 - last.x0] : [plan.xFeed, plan.xFeed - plan.left];
  const arrives = wattsText(plan.joints.find(({ x }) => Math.abs(x - end) < 0.01)?.power ?? plan.intoAntenna);
  const fits = textWidth(arrives, style.size, 600) + inset / 3 + 4 < room;
  if (compact || split || !fits || arrives === enters) return start;
  const places = insets.map((by): LabelPlace => ({ lines: [arrives], x: end - by, y: baseline, anchor: "end" }));
  return [...start, ...board.place(style, places)];
}

const tickBox = (plan: RibbonPlan, x: number): Box => ({
  left: x - plan.stage.s,
  right: x + plan.stage.s,
  top: plan.top,
  bottom: plan.top + plan.k * plan.whole,
});

/** Name of each branch on its band, where the band is thick and long enough. */
function branchLabels(plan: RibbonPlan, board: LabelBoard): Mark[] {
  const { s } = plan.stage;
  const size = 13 * s;
  return plan.columns.flatMap(({ x0, x1, branches }) => {
    let [from, to] = [0, 0];
    return branches.flatMap((branch) => {
      const middle = plan.top + (plan.k * (from + to + (branch.from + branch.to))) / 4 + (plan.k * (from + to)) / 4;
      const thick = plan.k * branch.to >= size + 4;
      from += branch.from;
      to += branch.to;
      const long = textWidth(branch.name, size, 600) + 8 * s <= x1 - x0;
      if (!thick || !long) return [];
      const place: LabelPlace = { lines: [branch.name], x: (x0 + x1) / 2, y: middle + 0.35 * size, anchor: "middle" };
      return board.place({ role: "onPower", size, weight: 600, id: branch.name }, [place]);
    });
  });
}

/** All words of the ribbon; `board` must span the whole picture. */
export function ribbonLabels(answer: Answer, plan: RibbonPlan, board: LabelBoard): Mark[] {
  const { top, k, left, skyRight } = plan;
  const sky = skyLabel(plan, board);
  const heat = heatLabels(plan, board);
  const branches = branchLabels(plan, board);
  const power = powerLabels(plan, board);
  board.reserve({ left, right: skyRight, top, bottom: top + k * plan.radiated });
  return [...sky, ...heat, ...branches, ...power, ...jointLabels(plan, board), ...doubtMarks(answer, plan, board)];
}
