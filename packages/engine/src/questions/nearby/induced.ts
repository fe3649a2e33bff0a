/** The current in things near by, and the heat it leaves in them. */
import { type DrivenAntenna, elementCurrent } from "../../wires/driveAntenna";
import { type WireCurrent, wireCurrents } from "../../wires/wireCurrents";
import type { Worked } from "../common/worked";
import type { Thing } from "./things";

export interface Induced {
  /** A rms, the largest in the thing. */
  readonly current: number;
  /** m along its wires from their first point. */
  readonly at: number;
  /** W in its metal, at peak envelope power. */
  readonly heat: number;
}

export interface Currents {
  readonly wires: readonly WireCurrent[];
  /** A rms, the largest in the antennas that transmit, feed point included. */
  readonly antenna: number;
  /** A rms into the feed point. */
  readonly feed: number;
}

export function currentsOf(worked: Worked, usedIndices: readonly number[]): Currents {
  const { point, result } = worked;
  const wires = wireCurrents(result.driven);
  const joint = point.joints.find((one) => one.name.startsWith("feed point"))!;
  const feed = Math.hypot(joint.current.re, joint.current.im);
  return { wires, feed, antenna: Math.max(feed, ...usedIndices.flatMap((w) => wires[w]!.magnitude)) };
}

export function inducedIn(worked: Worked, currents: Currents, thing: Thing): Induced {
  const { driven, account } = worked.result;
  const scale = worked.point.powerIntoAntenna / account.powerIn;
  let [base, current, at] = [0, 0, 0];
  for (const w of thing.wires) {
    const { distance, magnitude } = currents.wires[w]!;
    for (const [i, a] of magnitude.entries()) if (a > current) [current, at] = [a, base + distance[i]!];
    base += distance.at(-1)!;
  }
  return { current, at, heat: scale * thing.wires.reduce((sum, w) => sum + heatInWire(driven, w), 0) };
}

/** W: integral of the resistance times the square of the current, which is linear in every element. */
function heatInWire(driven: DrivenAntenna, wire: number): number {
  const { mesh, local } = driven.solution.model;
  const resistance = local.wires[wire]!.re;
  let heat = 0;
  for (let e = mesh.firstElement[wire]!; e < mesh.firstElement[wire + 1]!; e++) {
    const [a, b] = [elementCurrent(driven, e, 0), elementCurrent(driven, e, 1)];
    const squares = a.re ** 2 + a.im ** 2 + b.re ** 2 + b.im ** 2 + a.re * b.re + a.im * b.im;
    heat += (resistance * mesh.elements.length[e]! * squares) / 3;
  }
  return heat;
}
