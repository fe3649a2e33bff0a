/**
 * Nodes over real vertical wavenumbers for the power into layers. Power is no analytic function of the wavenumber: no
 * way leads around the waves that layers guide, they are peaks as narrow as the loss is small. Panels are halved until
 * both halves agree with the whole.
 */
import { gaussLegendre } from "../numerics/gaussLegendre";
import { type LayeredMedium, largestWavenumber } from "./layeredSoil";
import type { SoilSurface } from "./soilSurface";
import type { spectralEnd } from "./spectralEnd";
import type { PowerNodes, Reach } from "./spectrum";

const rule = gaussLegendre(10);
/** Error allowed in a panel, as a share of the sum up to it. */
const allowed = 1e-7;
/** Past the wavenumbers of all layers, and where their echoes have fallen to e^-16, nothing is left but what is smooth. */
const pastWavenumbers = 2;
const echoDecay = 8;
/** Panels there grow by this from one to the next, and are no wider than this share of the distance from 0: as in one soil. */
const growth = 2.5;
const widestShare = 1.2;
/** A peak narrower than this share of the wavenumber of the air is passed over: its soil would have no loss. */
const narrowest = 1e-9;

type Transmit = SoilSurface["transmit"];

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

const two = new Float64Array(2);

function makePanel(k: number, sign: 1 | -1, transmit: Transmit, sum: number, from: number, to: number): Panel {
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
 * what counts near the first edge may be small against what far ones hold and images take away again.
 */
function resolved(edges: readonly number[], panel: MakePanel, least: number, smoothFrom: number): Panel[] {
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

/** Edges of even panels, none wider than `widest`. */
const evenEdges = (from: number, to: number, widest: number): number[] => {
  const count = Math.max(1, Math.ceil((to - from) / widest));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
};

/** Decay past which what layers let through is smooth, rad/m. */
function smoothAfter(medium: LayeredMedium): number {
  const thinnest = Math.min(...medium.layers.map(({ thickness }) => thickness));
  return pastWavenumbers * largestWavenumber(medium) + echoDecay / thinnest;
}

/** Edges of panels of the decay: even ones, then, from where all is smooth, growing ones. */
function decayEdges(end: number, fine: number, widest: number, smoothFrom: number): number[] {
  const even = evenEdges(0, Math.min(end, smoothFrom), Math.min(fine, widest));
  const edges = [...even];
  let width = even[1]!;
  for (let at = even.at(-1)!; at < end; ) {
    width = Math.min(growth * width, widest, widestShare * at);
    at = at + widestShare * width >= end ? end : at + width;
    edges.push(at);
  }
  return edges;
}

/** For layers that let through `transmit`. `part`: the propagating waves, or the end of the evanescent ones (spectralEnd). */
export function layeredPowerNodes(
  medium: LayeredMedium,
  transmit: Transmit,
  reach: Reach,
  part: "propagating" | ReturnType<typeof spectralEnd>,
): PowerNodes {
  const { k } = medium;
  const { smallestSum, largestSum, largestDistance } = reach;
  const widest = (2.4 * Math.PI) / (largestSum + largestDistance);
  const least = narrowest * k;
  if (part === "propagating") {
    const panel: MakePanel = (from, to) => makePanel(k, 1, transmit, smallestSum, from, to);
    return joined(resolved(evenEdges(0, k, Math.min(widest, k / 2)), panel, least, k));
  }
  const panel: MakePanel = (from, to) => makePanel(k, -1, transmit, smallestSum, from, to);
  const smoothFrom = smoothAfter(medium);
  const fine = (8 * k + 1 / smallestSum) / 4;
  const edges = decayEdges(part.end, fine, Math.min(widest, 6 / smallestSum), smoothFrom);
  const nodes = joined(resolved(edges, panel, least, smoothFrom));
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
