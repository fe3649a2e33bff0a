/** Joints and parts of a worked point as an answer holds them. */
import type { Joint, PartResult } from "../../answer/answer";
import type { WorkedJoint, WorkedPart, WorkedPoint } from "../../chain/workedPoint";
import { swr } from "../../lines/reflection";
import { magnitude } from "../../numerics/complex";
import { saysOfPart } from "../../words/parts";

const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);

const rmsAndPeak = (rms: number) => ({ rms, peak: rms * Math.SQRT2 });

export function jointsOf(point: WorkedPoint): Joint[] {
  return point.joints.map(
    (joint: WorkedJoint): Joint => ({
      name: joint.name,
      side: joint.side,
      impedance: { re: joint.impedance.re, im: joint.impedance.im, unit: "ohm" },
      swr: { value: finite(swr(joint.impedance, point.ratedResistance)), reference: point.ratedResistance },
      power: joint.power,
      voltage: rmsAndPeak(magnitude(joint.voltage)),
      current: rmsAndPeak(magnitude(joint.current)),
    }),
  );
}

/** dB: what is left of equal powers by rounding. */
const rounding = 1e-9;

export function partsOf(point: WorkedPoint): PartResult[] {
  return point.parts
    .filter((part) => part.edge.inUse || part.heat > 1e-9 * point.powerFromTransmitter)
    .map(
      (part: WorkedPart): PartResult => ({
        name: part.edge.name,
        kind: part.edge.kind,
        says: saysOfPart(part.edge),
        from: part.from,
        to: part.to,
        branch: part.edge.branch,
        loss: Math.abs(part.loss) < rounding ? 0 : part.loss,
        heat: part.heat,
        margin: null,
        length: part.length,
        along: part.along,
      }),
    );
}
