/**
 * Nodes over real vertical wavenumbers for the power into layers. Power is no analytic function of the wavenumber: no
 * way leads around the waves that layers guide, they are peaks as narrow as the loss is small. Panels are halved until
 * both halves agree with the whole (resolvedPanels).
 */
import { type LayeredMedium, largestWavenumber } from "./layeredSoil";
import { joined, type MakePanel, makePanel, resolved, type Transmit } from "./resolvedPanels";
import type { spectralEnd } from "./spectralEnd";
import type { PowerNodes, Reach } from "./spectralNodes";

/** Past the wavenumbers of all layers, and where their echoes have fallen to e^-16, nothing is left but what is smooth. */
const pastWavenumbers = 2;
const echoDecay = 8;
/** Panels there grow by this from one to the next, and are no wider than this share of the distance from 0: as in one soil. */
const growth = 2.5;
const widestShare = 1.2;
/** What is left at the end goes to the last panel when it is less than this many panels. */
const last = 1.2;
/** A peak narrower than this share of the wavenumber of the air is passed over: its soil would have no loss. */
const narrowest = 1e-9;

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
    at = at + last * width >= end ? end : at + width;
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
