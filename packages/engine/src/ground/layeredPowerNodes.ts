/**
 * Nodes over real vertical wavenumbers for the power into layers. Power is no analytic function of the wavenumber: no
 * way leads around the waves that layers guide, they are peaks as narrow as the loss is small. Panels are halved until
 * both halves agree with the whole.
 */
import { complex } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import type { PowerNodes } from "./powerNodes";
import type { spectralEnd } from "./spectralEnd";
import type { Reach } from "./spectrum";

const rule = gaussLegendre(10);
/** Error allowed in a panel, as a share of the sum up to it. */
const allowed = 1e-7;
/** A peak narrower than this share of the wavenumber of the air is passed over: its soil would have no loss. */
const narrowest = 1e-9;

type Transmit = (kz: ReturnType<typeof complex>) => { readonly tm: number; readonly te: number };

/** Numbers of a panel: depth, weight, tm and te of its nodes, ten each. */
const perPanel = rule.points.length;

interface Panel {
  readonly from: number;
  readonly to: number;
  readonly numbers: Float64Array;
  /** Integrals of what multiplies moments along the plane of incidence, across it, and upwards. */
  readonly sums: readonly [number, number, number];
}

type MakePanel = (from: number, to: number) => Panel;

function makePanel(k: number, sign: 1 | -1, transmit: Transmit, sum: number, from: number, to: number): Panel {
  const half = (to - from) / 2;
  const numbers = new Float64Array(4 * perPanel);
  let [along, across, upwards] = [0, 0, 0];
  for (let i = 0; i < perPanel; i++) {
    const depth = from + half * (1 + rule.points[i]!);
    const weight = half * rule.weights[i]!;
    const { tm, te } = transmit(sign === 1 ? complex(depth) : complex(0, -depth));
    const fall = weight * depth * (sign === 1 ? 1 : Math.exp(-depth * sum));
    along += fall * tm * depth * depth;
    across += fall * te;
    upwards += fall * tm * (k * k - sign * depth * depth);
    numbers[i] = depth;
    numbers[perPanel + i] = weight;
    numbers[2 * perPanel + i] = tm;
    numbers[3 * perPanel + i] = te;
  }
  return { from, to, numbers, sums: [along, across, upwards] };
}

/** Whether halves resolve a panel: each sum against the sum up to it. */
function agree(whole: Panel, left: Panel, right: Panel, before: readonly number[]): boolean {
  for (let n = 0; n < 3; n++) {
    const sum = left.sums[n]! + right.sums[n]!;
    if (Math.abs(sum - whole.sums[n]!) > allowed * (before[n]! + sum)) return false;
  }
  return true;
}

/**
 * Halves the panels of the widths given until they resolve what `transmit` says: each against the sum up to it, since
 * what counts near the first edge may be small against what far ones hold and images take away again.
 */
function resolved(edges: readonly number[], panel: MakePanel, least: number): Panel[] {
  const open = edges
    .slice(1)
    .map((to, p) => panel(edges[p]!, to))
    .reverse();
  const before = [0, 0, 0];
  const done: Panel[] = [];
  for (let next = open.pop(); next; next = open.pop()) {
    const middle = (next.from + next.to) / 2;
    const [left, right] = [panel(next.from, middle), panel(middle, next.to)];
    const fine = agree(next, left, right, before);
    if (!fine && next.to - next.from >= least) {
      open.push(right, left);
      continue;
    }
    done.push(left, right);
    for (let n = 0; n < 3; n++) before[n]! += left.sums[n]! + right.sums[n]!;
  }
  return done;
}

/** Edges of even panels, none wider than `widest`. */
const evenEdges = (from: number, to: number, widest: number): number[] => {
  const count = Math.max(1, Math.ceil((to - from) / widest));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
};

/**
 * For a surface that lets through `transmit`; `k` in rad/m. `part`: the propagating waves, or the end of the evanescent
 * ones, as spectralEnd says.
 */
export function layeredPowerNodes(
  k: number,
  transmit: Transmit,
  reach: Reach,
  part: "propagating" | ReturnType<typeof spectralEnd>,
): PowerNodes {
  const widest = (2.4 * Math.PI) / (reach.largestSum + reach.largestDistance);
  const sign = part === "propagating" ? 1 : -1;
  const panel: MakePanel = (from, to) => makePanel(k, sign, transmit, reach.smallestSum, from, to);
  const decays = Math.min(widest, 6 / reach.smallestSum, (8 * k + 1 / reach.smallestSum) / 4);
  const edges = part === "propagating" ? evenEdges(0, k, Math.min(widest, k / 2)) : evenEdges(0, part.end, decays);
  const nodes = joined(resolved(edges, panel, narrowest * k));
  if (part !== "propagating")
    for (let n = 0; n < nodes.depth.length; n++) nodes.weight[n]! *= part.share(nodes.depth[n]!);
  return nodes;
}

function joined(panels: readonly Panel[]): PowerNodes {
  const plane = (): Float64Array => new Float64Array(perPanel * panels.length);
  const nodes = [plane(), plane(), plane(), plane()] as const;
  panels.forEach(({ numbers }, p) => {
    for (let n = 0; n < 4; n++) nodes[n]!.set(numbers.subarray(n * perPanel, (n + 1) * perPanel), p * perPanel);
  });
  const [depth, weight, tm, te] = nodes;
  return { depth, weight, tm, te };
}
