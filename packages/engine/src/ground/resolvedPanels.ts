/** Gauss panels over vertical wavenumbers, halved until they resolve what soil lets in. */
import { gaussLegendre } from "../numerics/gaussLegendre";
import type { SoilSurface } from "./soilSurface";
import type { PowerNodes } from "./spectralNodes";

const rule = gaussLegendre(10);
/** Error allowed in a panel, as a share of the sum up to it. */
const allowed = 1e-7;

export type Transmit = SoilSurface["transmit"];

/** Numbers of a panel: depth, weight, tm and te of its nodes, ten each. */
const perPanel = rule.points.length;

export interface Panel {
  readonly from: number;
  readonly to: number;
  readonly numbers: Float64Array;
  /** Integrals of what multiplies moments along the plane of incidence, across it, and upwards. */
  readonly sums: readonly [number, number, number];
}

export type MakePanel = (from: number, to: number) => Panel;

const two = new Float64Array(2);

/** Samples a panel of propagating (`sign` 1) or evanescent waves; sums weigh decays as at the height sum `sum` (m). */
export function makePanel(k: number, sign: 1 | -1, transmit: Transmit, sum: number, from: number, to: number): Panel {
  const half = (to - from) / 2;
  const numbers = new Float64Array(4 * perPanel);
  let [along, across, upwards] = [0, 0, 0];
  for (let i = 0; i < perPanel; i++) {
    const depth = from + half * (1 + rule.points[i]!);
    const weight = half * rule.weights[i]!;
    transmit(sign === 1 ? depth : 0, sign === 1 ? 0 : -depth, two);
    const tm = two[0]!;
    const te = two[1]!;
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
 * what counts near the first edge may be small against what far ones hold and images take away again. Not halved are panels
 * narrower than `least`, and those from `smoothFrom` on.
 */
export function resolved(edges: readonly number[], panel: MakePanel, least: number, smoothFrom: number): Panel[] {
  const open = edges
    .slice(1)
    .map((to, p) => panel(edges[p]!, to))
    .reverse();
  const before = [0, 0, 0];
  const done: Panel[] = [];
  for (let next = open.pop(); next; next = open.pop()) {
    if (next.from >= smoothFrom) {
      done.push(next);
      for (let n = 0; n < 3; n++) before[n]! += next.sums[n]!;
      continue;
    }
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

/** The nodes of panels, in their order. */
export function joined(panels: readonly Panel[]): PowerNodes {
  const plane = (): Float64Array => new Float64Array(perPanel * panels.length);
  const nodes = [plane(), plane(), plane(), plane()] as const;
  panels.forEach(({ numbers }, p) => {
    for (let n = 0; n < 4; n++) nodes[n]!.set(numbers.subarray(n * perPanel, (n + 1) * perPanel), p * perPanel);
  });
  const [depth, weight, tm, te] = nodes;
  return { depth, weight, tm, te };
}
