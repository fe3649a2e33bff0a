/** The path as columns of the ribbon, in the order of the file. */
import type { Answer, PartResult } from "@feedpath/engine";
import { feedPoints, partsIdle, partsInUse } from "./partsInUse";

export interface Segment {
  /** Part names this column stands for. */
  readonly names: readonly string[];
  /** What the heat of the column is called ("the line", "small parts together"). */
  readonly says: string;
  readonly isLine: boolean;
  readonly length: number;
  readonly heat: number;
  readonly fromJoint: string;
  readonly toJoint: string;
  /** Net power at equal steps from left to right, two points at least, W. */
  readonly power: readonly number[];
  /** Where the path splits: net power of each branch at both ends, in the order of the file; empty otherwise. */
  readonly branches: readonly Branch[];
}

export interface Branch {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

export interface RibbonColumn extends Segment {
  readonly x0: number;
  readonly x1: number;
}

/** Stands for the feed points of all branches at the end of their common column. */
export const severalFeedPoints = "feed points";

const mostColumns = 9;

const namesOfKinds: Readonly<Record<string, string>> = { "two-port": "the two-port", series: "the series part" };

/** "the line" where there is one of its kind, else its name. */
export function partSays(part: PartResult, parts: readonly PartResult[]): string {
  const alone = parts.filter((other) => other.kind === part.kind).length === 1;
  return alone ? (namesOfKinds[part.kind] ?? `the ${part.kind}`) : part.name;
}

function segmentOf(part: PartResult, answer: Answer): Segment {
  const at = (joint: string) => answer.joints.find((one) => one.name === joint)?.power;
  const from = at(part.from) ?? 0;
  const along = part.along.power;
  return {
    names: [part.name],
    says: partSays(part, answer.parts),
    isLine: part.kind === "line",
    length: part.length,
    heat: part.heat,
    fromJoint: part.from,
    toJoint: part.to,
    power: along.length >= 2 ? along : [from, at(part.to) ?? from - part.heat],
    branches: [],
  };
}

function joined(run: readonly Segment[], says: string): Segment {
  const first = run[0]!;
  const last = run.at(-1)!;
  return {
    names: run.flatMap((one) => one.names),
    says,
    isLine: run.some((one) => one.isLine),
    length: run.reduce((sum, one) => sum + one.length, 0),
    heat: run.reduce((sum, one) => sum + one.heat, 0),
    fromJoint: first.fromJoint,
    toJoint: last.toJoint,
    power: [first.power[0]!, last.power.at(-1)!],
    branches: [],
  };
}

/** Above nine columns, neighbours under 0.1 dB each stand as one. */
function joinSmall(segments: readonly Segment[], lossOf: (one: Segment) => number): Segment[] {
  if (segments.length <= mostColumns) return [...segments];
  const out: Segment[][] = [];
  for (const one of segments) {
    const run = out.at(-1);
    const small = lossOf(one) < 0.1;
    if (run && small && run.every((other) => lossOf(other) < 0.1)) run.push(one);
    else out.push([one]);
  }
  return out.map((run) => (run.length === 1 ? run[0]! : joined(run, "small parts together")));
}

/** Each branch from its feed point back: what reaches the antenna, and that with the heat of the branch's parts. */
function branchesOf(answer: Answer): Branch[] {
  const used = partsInUse(answer);
  return [...new Set(used.map((part) => part.branch).filter((name) => name !== ""))].map((name) => {
    const parts = used.filter((part) => part.branch === name);
    const to = answer.joints.find((joint) => joint.name === parts.at(-1)!.to)?.power ?? 0;
    return { name, to, from: to + parts.reduce((sum, part) => sum + part.heat, 0) };
  });
}

/** Heat in branches that are not in use: it leaves where the path would split. */
function idleSegment(answer: Answer, before: number): Segment[] {
  const idle = partsIdle(answer).map((part) => segmentOf(part, answer));
  const heat = idle.reduce((sum, one) => sum + one.heat, 0);
  if (idle.length === 0 || heat < 1e-6 * before) return [];
  const says = "parts not in use";
  return [{ ...joined(idle, says), isLine: false, length: 0, toJoint: "", power: [before, before - heat] }];
}

/**
 * Columns before they have a place. Where the path splits (tee), the branches are one column of their own: the power
 * that enters all of them on the left, what reaches the antenna on the right.
 */
export function segmentsOf(answer: Answer, powerIntoAntenna: number): Segment[] {
  const used = partsInUse(answer);
  const trunk = used.filter((part) => part.branch === "").map((part) => segmentOf(part, answer));
  const branches = used.filter((part) => part.branch !== "").map((part) => segmentOf(part, answer));
  const decibels = new Map(answer.parts.map((part) => [part.name, part.loss]));
  const lossOf = (one: Segment) => one.names.reduce((sum, name) => sum + (decibels.get(name) ?? 0), 0);
  const enters = trunk.at(-1)?.power.at(-1) ?? answer.joints[0]?.power ?? powerIntoAntenna;
  const idle = idleSegment(answer, enters);
  if (feedPoints(answer).length < 2) return joinSmall([...trunk, ...idle, ...branches], lossOf);
  const heat = branches.reduce((sum, one) => sum + one.heat, 0);
  const together = joined(branches, "the branches");
  const power = [powerIntoAntenna + heat, powerIntoAntenna];
  return [
    ...joinSmall([...trunk, ...idle], lossOf),
    { ...together, toJoint: severalFeedPoints, power, branches: branchesOf(answer) },
  ];
}

/** Columns between `left` and `right`: parts without length `narrow` px each, lines share the rest by length, `least` px at least. */
export function placeColumns(
  segments: readonly Segment[],
  left: number,
  right: number,
  narrow: number,
  least: number,
): RibbonColumn[] {
  const room = right - left;
  const lines = segments.filter((one) => one.isLine);
  const rest = room - narrow * (segments.length - lines.length);
  const widths = segments.map((one) => (one.isLine ? 0 : narrow));
  shareByLength(segments, widths, Math.max(rest, least * lines.length), least);
  const total = widths.reduce((sum, width) => sum + width, 0);
  const stretch = total > 0 ? room / total : 1;
  let x = left;
  return segments.map((one, i) => {
    const x0 = x;
    x += widths[i]! * stretch;
    return { ...one, x0, x1: x };
  });
}

function shareByLength(segments: readonly Segment[], widths: number[], rest: number, least: number): void {
  const open = new Set([...segments.keys()].filter((i) => segments[i]!.isLine));
  let room = rest;
  for (;;) {
    const length = [...open].reduce((sum, i) => sum + segments[i]!.length, 0);
    const short = [...open].filter((i) => (segments[i]!.length / length) * room < least);
    if (short.length === 0 || short.length === open.size) {
      for (const i of open) widths[i] = short.length === 0 ? (segments[i]!.length / length) * room : room / open.size;
      return;
    }
    for (const i of short) {
      widths[i] = least;
      room -= least;
      open.delete(i);
    }
  }
}
