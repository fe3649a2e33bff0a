/** What the solved station shows at the end of a line: at the frequency itself, and near by for its slope. */
import type { AntennaSolver } from "../../chain/antennaSolver";
import { requestAt } from "../../chain/solveRequest";
import type { WorkedPoint } from "../../chain/workedPoint";
import { workPoint } from "../../chain/workPoint";
import { type Complex, magnitude, subtract } from "../../numerics/complex";
import { fitResonator, type ImpedanceSample } from "../../pulses/resonator";
import type { Band, Station } from "../../station/station";
import type { Progress } from "../common/question";
import type { CannotWork } from "../common/worked";
import type { LineEdge, LineLooked } from "./looked";

export function* solvedLoad(
  station: Station,
  band: Band,
  edge: LineEdge,
  solver: AntennaSolver,
): Generator<Progress, LineLooked | CannotWork> {
  const frequency = band.frequency.value;
  const beside = framing(band);
  const ahead = [frequency, ...beside].map((f) => requestAt(station, f));
  yield { done: 0, of: ahead.length, what: "the antenna", ahead };
  const point = workPoint(station, band, frequency, solver, { tuner: "matched" });
  if ("refused" in point)
    return { refused: point.refused.why, mend: `${point.refused.mend}; or a \`load\` to try at the end of the line` };
  const at = loadAt(point, edge.name);
  if (at === null) return { refused: `${edge.name} leads to no antenna in this band`, mend: "another `line`" };
  if (!(at.impedance.re > 0)) {
    return {
      refused: `power comes back out of the end of ${edge.name}: another feed drives it`,
      mend: "another `line`, or a `load` to try",
    };
  }
  const samples: ImpedanceSample[] = [];
  for (const [i, f] of (tunerBehind(point, edge.name) ? [] : beside).entries()) {
    yield { done: i + 1, of: ahead.length, what: "the antenna beside its frequency" };
    const near = workPoint(station, band, f, solver, { tuner: "matched" });
    const there = "refused" in near ? null : loadAt(near, edge.name);
    if (there && there.impedance.re > 0) samples.push({ frequency: f, impedance: there.impedance });
  }
  const fit = fitResonator({ frequency, impedance: at.impedance }, samples);
  const worked = point.parts.find((p) => p.edge.name === edge.name)!;
  return {
    part: edge.part,
    length: edge.part.length.value,
    load: at.impedance,
    termination: fit.termination,
    fit,
    loadKind: at.isFeed ? "antenna" : "rest",
    powerIn: worked.powerIn,
    ratedPower: point.ratedPower,
    point,
  };
}

/** Half a percent to two percent to either side: near enough for one slope, far enough to be one. */
function framing(band: Band): number[] {
  const f = band.frequency.value;
  const half = Math.min(Math.max((band.sweep.to - band.sweep.from) / 2, 0.005 * f), 0.02 * f);
  return [f - half, f + half];
}

function loadAt(point: WorkedPoint, name: string): { readonly impedance: Complex; readonly isFeed: boolean } | null {
  const part = point.parts.find((p) => p.edge.name === name);
  const joint = part && point.joints.find((j) => j.name === part.to);
  if (!joint) return null;
  // Chokes and meters pass everything between the wires: the antenna itself is then seen.
  const feed = point.joints.find((j) => j.name === "feed point");
  const isFeed =
    feed !== undefined && magnitude(subtract(feed.impedance, joint.impedance)) < 1e-9 * magnitude(joint.impedance);
  return { impedance: joint.impedance, isFeed };
}

/** A tuner behind the line is matched anew at every frequency here: what it shows beside the working one means nothing. */
function tunerBehind(point: WorkedPoint, name: string): boolean {
  const used = point.parts.filter((p) => p.edge.inUse);
  const line = used.findIndex((p) => p.edge.name === name);
  return used.findIndex((p) => p.edge.name === point.tuner?.name) > line;
}
