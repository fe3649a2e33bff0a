/** Why no outside of a line is in the model, and what would put it there. */
import type { WorkedPoint } from "../../chain/workedPoint";
import { isPair } from "../../station/isPair";
import type { LinePart } from "../../station/path";

const example = "`{ line: RG-213/U, length: 28 m, route: [[9 m north, 1 m up], [1 m up], [12 m up]] }`";

export function whyNoOutside(point: WorkedPoint): { readonly why: string; readonly mend: string } {
  const lines = point.parts.flatMap((p): LinePart[] =>
    p.edge.inUse && p.edge.part?.kind === "line" ? [p.edge.part] : [],
  );
  const coaxial = lines.filter((line) => !isPair(line));
  const last = lines.at(-1);
  if (lines.length === 0)
    return {
      why: "the path has no line: there is no outside to carry current",
      mend: `a coaxial line with its \`route\`, such as ${example}`,
    };
  if (coaxial.length === 0)
    return {
      why: "the path has no coaxial line: a pair of wires has no outside, and what both carry alike is not computed yet",
      mend: "a station with a coaxial line up to its feed point",
    };
  if (last && isPair(last))
    return {
      why: `the coaxial line ends where the pair "${last.name}" begins: its outside reaches no feed point, and what the pair carries on both wires alike is not computed yet`,
      mend: "a station whose coaxial line runs up to its feed point",
    };
  const [left] = point.antenna.build.notComputed.filter((text) => /outside|route/.test(text));
  const unrouted = coaxial.find((line) => line.route.length < 2);
  if (unrouted)
    return {
      why: `no \`route\` says where ${unrouted.name} runs, so its outside is not in the model`,
      mend: `the places it passes, from the transmitter to the feed point, such as ${example}`,
    };
  return {
    why: left ?? "the outside of the line does not reach the feed point",
    mend: "a `route` on every coaxial line of the path, whose last place is the feed point",
  };
}
