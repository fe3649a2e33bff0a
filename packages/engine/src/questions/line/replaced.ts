/** Which line of the path is asked about, and on which side of the station it lies. */
import type { Side } from "../../chain/resolve";
import { isPair } from "../../station/isPair";
import type { LinePart } from "../../station/path";
import type { CannotWork, Worked } from "../common/worked";

export interface Replaced {
  readonly part: LinePart;
  /** A pair lies on the balanced side, whatever stands before it. */
  readonly side: Side;
  /** A tuner at work stands between the transmitter and this line: it sees what the line shows. */
  readonly behindTuner: boolean;
}

/** The line of that name, else the longest one in use. */
export function replacedLine({ point }: Worked, asked: string | null): Replaced | CannotWork {
  const used = point.parts.flatMap((p) => (p.edge.inUse && p.edge.part?.kind === "line" ? [p.edge.part] : []));
  const longest = [...used].sort((a, b) => b.length.value - a.length.value)[0];
  if (!longest)
    return {
      refused: "the path in use has no line",
      mend: "a line in `path`, such as `- { line: RG-213/U, length: 20 m }`",
    };
  const part = asked === null ? longest : used.find((p) => p.name === asked);
  if (!part)
    return {
      refused: `no line of the path in use is called "${asked}"`,
      mend: `one of: ${used.map((p) => p.name).join(", ")}`,
    };
  const worked = point.parts.find((p) => p.edge.name === part.name)!;
  const before = point.joints.find((j) => j.name === worked.from);
  const order = point.parts.map((p) => p.edge.name);
  const tuner = point.tuner ? order.indexOf(point.tuner.name) : -1;
  return {
    part,
    side: isPair(part) ? "balanced" : (before?.side ?? "coaxial"),
    behindTuner: tuner >= 0 && tuner < order.indexOf(part.name),
  };
}
