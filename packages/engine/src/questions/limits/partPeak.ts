/** The voltage a part of the path meets. */
import type { WorkedJoint, WorkedPart, WorkedPoint } from "../../chain/workedPoint";
import { magnitude } from "../../numerics/complex";

const peakAt = (joint: WorkedJoint | undefined): number => (joint ? Math.SQRT2 * magnitude(joint.voltage) : 0);

/** V peak at the higher of a part's two joints. */
export const peakOfPart = (point: WorkedPoint, part: WorkedPart): number =>
  Math.max(...[part.from, part.to].map((name) => peakAt(point.joints.find((joint) => joint.name === name))));
