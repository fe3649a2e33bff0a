/** The facts the sentences of `band` are made of. */
import type { Verdict } from "../../answer/answer";
import { constantsOf } from "../../chain/edges";
import { ohms } from "../../quantity/format";
import type { BandFacts, Trimmed } from "../../words/band";
import { antennasInUse, nameInSentence } from "../common/inUse";
import type { Worked } from "../common/worked";
import { type CurvePoint, isAtEdge } from "./curve";
import type { Sweep } from "./sweep";

/** Share of the wanted band below the limit: all of it is good, half of it workable. Our rule. */
const workableShare = 0.5;
/** Matched loss in dB from which a fine curve is no longer good news: half of the power. */
const flatteringLoss = 3;
/** The same for everything that warms before the sky or the soil is reached: path, wires, and loads in them. */
const flatteringShare = 0.5;

const warmth = ({ numbers }: Worked): number =>
  ((numbers.heatInPath ?? 0) + (numbers.heatInWires ?? 0)) / (numbers.powerFromTransmitter ?? 1);

export function bandFacts(
  worked: Worked,
  sweep: Sweep,
  wanted: { readonly from: number; readonly to: number },
  limit: number,
): BandFacts {
  const inside = sweep.curve.filter((p) => p.frequency >= wanted.from - 1 && p.frequency <= wanted.to + 1);
  const swrs = inside.map((p) => p.swrAtTransmitter);
  const share = inside.filter((p) => p.swrAtTransmitter < limit).length / inside.length;
  const matchedLoss = worked.numbers.matchedLineLoss ?? null;
  const byCurve: Verdict = share >= 1 ? "good" : share >= workableShare ? "workable" : "trouble";
  const warm = byCurve === "good" && warmth(worked) >= flatteringShare;
  const flattered = warm || (matchedLoss !== null && matchedLoss >= flatteringLoss);
  const verdict = byCurve === "good" && flattered ? "workable" : byCurve;
  return {
    ...wanted,
    limit,
    worst: Math.max(...swrs),
    best: Math.min(...swrs),
    share,
    verdict: tunerTask(worked) ? null : verdict,
    ...sweep.marks,
    ends: widestApart(inside),
    onlyLoss: onlyLoss(worked),
    onlyLines: onlyLines(worked),
    rated: worked.point.ratedResistance,
    lineLossAtBest: extreme(inside, (a, b) => a < b).lineLoss,
    lineLossAtWorst: extreme(inside, (a, b) => a > b).lineLoss,
    trimmed: trimmedOf(worked),
    matchedLoss,
    flattered,
    lowestAtEdge: isAtEdge(sweep.curve, sweep.marks.lowestSwrFrequency),
    outsideShift: outsideShift(sweep),
    tuner: tunerTask(worked),
  };
}

/** Null also where a lowest SWR lies at an end of the curve: then its distance from the other is not known. */
function outsideShift(sweep: Sweep): number | null {
  const without = sweep.lowestWithoutOutside;
  if (without === null || isAtEdge(sweep.curve, without)) return null;
  return sweep.marks.lowestSwrFrequency - without;
}

/** What a tuner in the path has to match: the impedance behind it with nothing matched. */
function tunerTask({ point, frequency }: Worked): BandFacts["tuner"] {
  const tuner = point.parts.find((p) => p.edge.kind === "tuner" && p.edge.inUse);
  const joint = tuner && point.joints.find((j) => j.name === tuner.to);
  if (!joint) return null;
  const behind = point.parts.slice(point.parts.indexOf(tuner) + 1);
  return {
    name: nameInSentence(point, tuner.edge.name),
    frequency,
    impedance: ohms(joint.impedance, 0),
    lineBehind: behind.some((p) => p.edge.inUse && p.matchedLoss !== null),
  };
}

/** Where the SWR at both ends differs most. */
function widestApart(inside: readonly CurvePoint[]) {
  const apart = (p: CurvePoint) => Math.abs(p.swrAtFeedPoint - p.swrAtTransmitter);
  const most = inside.reduce((best, p) => (apart(p) > apart(best) ? p : best));
  return { frequency: most.frequency, atAntenna: most.swrAtFeedPoint, atTransmitter: most.swrAtTransmitter };
}

/** The point whose SWR at the transmitter comes before all others. */
const extreme = (inside: readonly CurvePoint[], before: (a: number, b: number) => boolean): CurvePoint =>
  inside.reduce((best, p) => (before(p.swrAtTransmitter, best.swrAtTransmitter) ? p : best));

/** What the owner would make longer or shorter; "antenna" where it is not one plain shape on one feed. */
function trimmedOf({ station, point }: Worked): Trimmed {
  const [antenna, ...others] = antennasInUse(station, point);
  const shape = antenna?.shapes[0]?.shape;
  if (!shape || others.length > 0 || antenna.shapes.length > 1) return "antenna";
  switch (shape.kind) {
    case "beam":
      return "driven element";
    case "vertical":
    case "loop":
      return shape.kind;
    case "small loop":
      return "capacitor";
    case "wires":
      return "antenna";
    default:
      return "wire";
  }
}

/** Nothing but lines takes power on the way. */
const onlyLines = ({ point }: Worked): boolean =>
  point.parts.every((p) => !p.edge.inUse || p.matchedLoss !== null || p.heat < 1e-4 * p.powerIn);

/** Parts that leave the impedance of a matched path as it is, but for their loss. */
const transparent = new Set(["connector", "meter", "bond", "choke", "filter", "switch", "band splitter"]);
/** A line within this share of the rated load counts as matched to it. */
const nearRated = 0.1;

function onlyLoss({ point, frequency }: Worked): boolean {
  const rated = point.ratedResistance;
  return point.parts
    .filter((p) => p.edge.inUse)
    .every(({ edge }) => {
      if (edge.part?.kind !== "line") return transparent.has(edge.kind);
      return Math.abs(constantsOf(edge.part, frequency).z0.re / rated - 1) < nearRated;
    });
}
