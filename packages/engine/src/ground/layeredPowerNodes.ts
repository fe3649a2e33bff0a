/**
 * Nodes over real vertical wavenumbers for the power into layers. Power is no analytic function of the wavenumber: no
 * way leads around the waves that layers guide, they are peaks as narrow as the loss is small. Panels are halved until
 * both halves agree with the whole.
 */
import { complex } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import type { spectralEnd } from "./spectralEnd";
import type { Reach, SpectralNode } from "./spectrum";

const rule = gaussLegendre(10);
/** Error allowed in a panel, as a share of the sum up to it. */
const allowed = 1e-7;
/** A peak narrower than this share of the wavenumber of the air is passed over: its soil would have no loss. */
const narrowest = 1e-9;

type Transmit = (kz: ReturnType<typeof complex>) => { readonly tm: number; readonly te: number };

interface Panel {
  readonly from: number;
  readonly to: number;
  readonly nodes: readonly SpectralNode[];
  /** Integrals of what multiplies moments along the plane of incidence, across it, and upwards. */
  readonly sums: readonly number[];
}

function makePanel(k: number, sign: 1 | -1, transmit: Transmit, sum: number, from: number, to: number): Panel {
  const half = (to - from) / 2;
  const sums = [0, 0, 0];
  const nodes = [...rule.points].map((x, i) => {
    const depth = from + half * (1 + x);
    const weight = half * rule.weights[i]!;
    const { tm, te } = transmit(sign === 1 ? complex(depth) : complex(0, -depth));
    const fall = weight * depth * (sign === 1 ? 1 : Math.exp(-depth * sum));
    sums[0]! += fall * tm * depth * depth;
    sums[1]! += fall * te;
    sums[2]! += fall * tm * (k * k - sign * depth * depth);
    return { depth, weight };
  });
  return { from, to, nodes, sums };
}

/**
 * Halves the panels of the widths given until they resolve what `transmit` says: each against the sum up to it, since
 * what counts near the first edge may be small against what far ones hold and images take away again.
 */
function resolved(edges: readonly number[], panel: (from: number, to: number) => Panel, least: number): SpectralNode[] {
  const open = edges
    .slice(1)
    .map((to, p) => panel(edges[p]!, to))
    .reverse();
  const before = [0, 0, 0];
  const nodes: SpectralNode[] = [];
  for (let next = open.pop(); next; next = open.pop()) {
    const middle = (next.from + next.to) / 2;
    const halves = [panel(next.from, middle), panel(middle, next.to)] as const;
    const sums = next.sums.map((_, n) => halves[0].sums[n]! + halves[1].sums[n]!);
    const fine = sums.every((sum, n) => Math.abs(sum - next.sums[n]!) <= allowed * (before[n]! + sum));
    if (!fine && next.to - next.from >= least) {
      open.push(halves[1], halves[0]);
      continue;
    }
    nodes.push(...halves[0].nodes, ...halves[1].nodes);
    sums.forEach((sum, n) => {
      before[n]! += sum;
    });
  }
  return nodes;
}

/** Edges of even panels, none wider than `widest`. */
const evenEdges = (from: number, to: number, widest: number): number[] => {
  const count = Math.max(1, Math.ceil((to - from) / widest));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
};

/** As spectralNodes, for a surface that lets through `transmit`; `k` in rad/m, decay kept as spectralEnd says. */
export function layeredPowerNodes(
  k: number,
  transmit: Transmit,
  reach: Reach,
  { end, share }: ReturnType<typeof spectralEnd>,
): { propagating: SpectralNode[]; evanescent: SpectralNode[] } {
  const widest = (2.4 * Math.PI) / (reach.largestSum + reach.largestDistance);
  const decays = Math.min(widest, 6 / reach.smallestSum);
  const panel = (sign: 1 | -1) => (from: number, to: number) =>
    makePanel(k, sign, transmit, reach.smallestSum, from, to);
  const least = narrowest * k;
  return {
    propagating: resolved(evenEdges(0, k, Math.min(widest, k / 2)), panel(1), least),
    evanescent: resolved(
      evenEdges(0, end, Math.min(decays, (8 * k + 1 / reach.smallestSum) / 4)),
      panel(-1),
      least,
    ).map(({ depth, weight }) => ({ depth, weight: weight * share(depth) })),
  };
}
