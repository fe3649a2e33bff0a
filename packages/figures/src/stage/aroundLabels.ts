/** Names of what stands around the station. What finds no room is not named; the description names it. */
import { overlap } from "../kit/box";
import type { Mark } from "../kit/figure";
import type { LabelBoard, LabelPlace, LabelStyle } from "../kit/labelBoard";
import { metresText } from "../kit/numberText";
import { textWidth, wrapText } from "../kit/textWidth";
import { type Around, type Conductor, type PersonPlace, personBox } from "./around";
import type { StagePlan } from "./stagePlan";

/** px at scale 1 of the widest line of a name. */
const widest = (plan: StagePlan): number => (plan.compact ? 92 : 150 * plan.s);

/** A name in at most two lines; of a longer one the beginning. */
function linesOf(name: string, plan: StagePlan): string[] {
  const lines = wrapText(name, 13 * plan.s, widest(plan));
  return lines.length > 2 ? [lines[0]!, `${lines[1]!} …`] : lines;
}

/** With its distance from the cut where both fit in two lines. */
function linesWith(name: string, offCut: number, plan: StagePlan): string[] {
  const all = wrapText(name + offText(offCut), 13 * plan.s, widest(plan));
  return all.length > 2 ? linesOf(name, plan) : all;
}

/** What is not in the plane of the cut says so: the picture shows it nearer than it is. */
const offText = (metres: number): string => (metres < 1 ? "" : `, ${metresText(metres)}\u00a0off\u00a0the\u00a0cut`);

const together = (names: readonly string[]): string =>
  names.length > 2 ? `${names[0]} and ${names.length - 1} more` : names.join(", ");

/** A label nearer to somebody else would name them. */
function personLabel(person: PersonPlace, people: readonly PersonPlace[], plan: StagePlan, board: LabelBoard): Mark[] {
  const { s } = plan;
  const lines = linesWith(together(person.names), person.offCut, plan);
  const style: LabelStyle = {
    role: "fieldInk",
    size: 13 * s,
    id: person.names.join(", "),
    halo: { role: "paper", width: 3 * s },
  };
  const { left, right, top, bottom } = personBox(person, plan);
  const rise = (lines.length - 1) * 1.25 * style.size;
  const middle = (top + bottom) / 2 + 4 * s - rise / 2;
  const heights = [middle, top + 6 * s - rise / 2, bottom - 4 * s - rise, top - 5 * s - rise];
  const beside = heights.flatMap((y): LabelPlace[] => [
    { lines, x: right + 6 * s, y },
    { lines, x: left - 6 * s, y, anchor: "end" },
  ]);
  const over: LabelPlace = { lines, x: (left + right) / 2, y: top - 6 * s - rise, anchor: "middle" };
  const width = Math.max(...lines.map((line) => textWidth(line, style.size)));
  const others = people.filter((other) => other !== person).map((other) => personBox(other, plan));
  const isOwn = ({ x, y, anchor }: LabelPlace): boolean => {
    const start = anchor === "end" ? x - width : anchor === "middle" ? x - width / 2 : x;
    const near = { left: start - 14 * s, right: start + width + 14 * s, top: y - 16 * s, bottom: y + rise + 6 * s };
    return !others.some((other) => overlap(other, near));
  };
  return board.placeClear(style, [...beside, over].filter(isOwn));
}

function conductorLabel({ name, pieces, offCut }: Conductor, plan: StagePlan, board: LabelBoard): Mark[] {
  const { s } = plan;
  const lines = linesWith(name, offCut, plan);
  const rise = (lines.length - 1) * 1.25 * 13 * s;
  const style: LabelStyle = { role: "ink2", size: 13 * s, id: name, halo: { role: "paper", width: 3 * s } };
  const points = pieces.flatMap(([a, b]) => [[(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] as const, a, b]);
  const places = points.flatMap(([x, y]): LabelPlace[] => [
    { lines, x: x + 9 * s, y: y + 4 * s },
    { lines, x: x - 9 * s, y: y + 4 * s, anchor: "end" },
    { lines, x, y: y - 9 * s - rise, anchor: "middle" },
    { lines, x, y: y + 18 * s, anchor: "middle" },
  ]);
  return board.placeClear(
    style,
    places.filter((place) => place.y + rise < plan.surfaceY - 4 * s),
  );
}

export const aroundLabels = (around: Around, plan: StagePlan, board: LabelBoard): Mark[] => [
  ...around.people.flatMap((one) => personLabel(one, around.people, plan, board)),
  ...around.conductors.flatMap((one) => conductorLabel(one, plan, board)),
];
