/** The band, the sky, the strips and the ticks of the joints. */
import type { Mark } from "../kit/figure";
import { polyline } from "../kit/outline";
import { lowerEdge, type RibbonPlan } from "./ribbonPlan";
import { stripMark } from "./stripShape";

function bandMark(plan: RibbonPlan): Mark {
  const { top, k } = plan;
  const edge = lowerEdge(plan);
  const d = polyline(
    [[plan.left, top], [plan.xFeed, top], ...edge.toReversed().map(([x, power]) => [x, top + k * power] as const)],
    true,
  );
  return { kind: "path", id: "power", d, fill: { role: "power" } };
}

/** Lines between the stacked bands of the branches, each band as wide as its watts; none where power comes back. */
function branchMarks(plan: RibbonPlan): Mark[] {
  const { top, k, stage } = plan;
  return plan.columns.flatMap(({ x0, x1, branches }) => {
    if (branches.some(({ from, to }) => from < 0 || to < 0)) return [];
    let [from, to] = [0, 0];
    return branches.slice(0, -1).map((branch): Mark => {
      from += branch.from;
      to += branch.to;
      const stroke = { role: "paper", width: 2.5 * stage.s } as const;
      return { kind: "line", id: branch.name, x1: x0, y1: top + k * from, x2: x1, y2: top + k * to, stroke };
    });
  });
}

function skyMarks(plan: RibbonPlan): Mark[] {
  const { top, k, xFeed, skyRight, stage } = plan;
  const height = Math.max(k * plan.radiated, 1.5);
  const area = { x: xFeed, y: top, height };
  const fadeEnd = xFeed + (stage.compact ? 36 : 90 * stage.s);
  const edge = (y: number): Mark => ({
    kind: "line",
    x1: xFeed,
    y1: y,
    x2: skyRight,
    y2: y,
    stroke: { role: "field", width: 1.8 * stage.s },
  });
  return [
    { kind: "rect", ...area, id: "sky", width: skyRight - xFeed, fill: { role: "field", pattern: "dots" } },
    edge(top),
    edge(top + height),
    {
      kind: "rect",
      ...area,
      y: top - 0.9 * stage.s,
      height: height + 1.8 * stage.s,
      width: fadeEnd - xFeed,
      fill: { role: "power", fade: { to: "none", direction: "right", start: xFeed, end: fadeEnd } },
    },
  ];
}

function jointMarks(plan: RibbonPlan): Mark[] {
  const { top, k, stage, joints } = plan;
  const { s, compact } = stage;
  const shown = compact ? joints.filter((_, i) => i === 0 || i === joints.length - 1) : joints;
  return shown.map(({ name, x, power }) => {
    const bottom = top + k * Math.max(power, 0) + 2 * s;
    const stroke = { role: "ink", width: 1.5 * s } as const;
    const tick: Mark = { kind: "line", x1: x, y1: top - (compact ? 7 : 6 * s), x2: x, y2: bottom, stroke };
    const point: Mark = { kind: "circle", cx: x, cy: top - 7 * s, r: 2.8 * s, fill: { role: "ink" } };
    return { kind: "group", id: name, marks: compact ? [tick] : [tick, point] };
  });
}

/** Shapes of the ribbon without its words. */
export function ribbonMarks(plan: RibbonPlan): Mark[] {
  const { top, k, bottom, stage } = plan;
  const frame = { top, k, bottom, s: stage.s, drop: stage.drop };
  return [
    bandMark(plan),
    ...branchMarks(plan),
    ...plan.strips.map((strip) => stripMark(strip, frame)),
    ...skyMarks(plan),
    ...jointMarks(plan),
  ];
}
