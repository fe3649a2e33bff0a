/** Which parts lie between the joints of the answer: a branch left idle by a switch may still warm a little. */
import type { Answer, Joint, PartResult } from "@feedpath/engine";

const isIn = (answer: Answer, part: PartResult): boolean => {
  const names = answer.joints.map((joint) => joint.name);
  return names.includes(part.from) && names.includes(part.to);
};

export const partsInUse = (answer: Answer): PartResult[] => answer.parts.filter((part) => isIn(answer, part));
export const partsIdle = (answer: Answer): PartResult[] => answer.parts.filter((part) => !isIn(answer, part));

/** One, or several where the path splits. */
export const feedPoints = (answer: Answer): Joint[] =>
  answer.joints.filter((joint) => joint.name.startsWith("feed point"));
