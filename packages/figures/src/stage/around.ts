/** What stands around the station, to scale in the plane of the cut: conductors in plain grey, people in the field's colour. */
import type { Drawing } from "@feedpath/engine";
import { type Box, boxesAlong, clipped, inside, overlap } from "../kit/box";
import type { Mark } from "../kit/figure";
import type { LabelBoard } from "../kit/labelBoard";
import type { Point } from "../kit/outline";
import { distanceFromCut, projection } from "./cut";
import { insetBox } from "./insetPlan";
import { toPicture } from "./partsOnLine";
import type { StagePlan } from "./stagePlan";

export interface Conductor {
  readonly name: string;
  /** From the plane of the cut to its nearest point, metres. */
  readonly offCut: number;
  /** Straight pieces inside the section, px. */
  readonly pieces: readonly (readonly [Point, Point])[];
}

export interface PersonPlace {
  /** Everybody whose figures would cover each other. */
  readonly names: readonly string[];
  /** From the plane of the cut to the nearest of them, metres. */
  readonly offCut: number;
  /** Of the feet, px. */
  readonly feet: Point;
  readonly onSoil: boolean;
}

export interface Around {
  readonly conductors: readonly Conductor[];
  readonly people: readonly PersonPlace[];
}

/** Of a standing person, metres: common practice, no source. */
const bodyHeight = 1.7;
/** px; a figure smaller than this is a ring. */
const leastFigure = 12;
const coveringFeet = 9;

const figureHeight = ({ ppm }: StagePlan): number => bodyHeight * ppm;

/** Box of a person's figure or ring. */
export function personBox({ feet: [x, y] }: PersonPlace, plan: StagePlan): Box {
  const height = figureHeight(plan);
  const [half, tall] = height >= leastFigure ? [0.16 * height, height] : [5 * plan.s, 9 * plan.s];
  return { left: x - half, right: x + half, top: y - tall, bottom: y };
}

/** What lies in the section and not under the view from above; the rest is not drawn. */
export function aroundOf(drawing: Drawing, plan: StagePlan): Around {
  const project = projection(drawing);
  const place = toPicture(plan);
  const at = (one: readonly number[]): Point => place(project(one));
  const frame: Box = { left: 1, right: plan.width - 1, top: 1, bottom: plan.surfaceY };
  const inset = insetBox(plan);
  const isClear = (box: Box) => inset === null || !overlap(box, inset);
  const conductors = drawing.surroundings.map(({ name, points }): Conductor => {
    const corners = points.map(at);
    const pieces = corners.slice(1).flatMap((end, i) => {
      const piece = clipped(corners[i]!, end, frame);
      return piece ? [piece] : [];
    });
    const pairs = pieces.filter((pair) => boxesAlong(pair, 2).every(isClear));
    return { name, pieces: pairs, offCut: distanceFromCut(drawing, points) };
  });
  const people = drawing.people.map((person): PersonPlace => {
    const onSoil = (person.at[2] ?? 0) < 0.3;
    return { names: [person.name], feet: at(person.at), onSoil, offCut: distanceFromCut(drawing, [person.at]) };
  });
  const visible = people.filter((person) => {
    const box = personBox(person, plan);
    return inside(box, frame) && isClear(box);
  });
  return { conductors: conductors.filter(({ pieces }) => pieces.length > 0), people: joined(visible) };
}

/** People whose figures would cover each other stand as one. */
function joined(people: readonly PersonPlace[]): PersonPlace[] {
  const out: PersonPlace[] = [];
  for (const person of people) {
    const i = out.findIndex(({ feet: [x, y] }) => {
      return Math.abs(x - person.feet[0]) < coveringFeet && Math.abs(y - person.feet[1]) < coveringFeet;
    });
    if (i < 0) out.push(person);
    else {
      const [one, offCut] = [out[i]!, Math.min(out[i]!.offCut, person.offCut)];
      out[i] = { ...one, names: [...one.names, ...person.names], offCut };
    }
  }
  return out;
}

/** Keeps labels off people, and off conductors while they have another place. */
export function reserveAround(around: Around, plan: StagePlan, board: LabelBoard): void {
  for (const person of around.people) board.reserve(personBox(person, plan));
  for (const { pieces } of around.conductors) {
    for (const pair of pieces) boxesAlong(pair, 4 * plan.s).forEach(board.avoidFirmly);
  }
}

function conductorMarks({ name, pieces }: Conductor, s: number): Mark[] {
  return pieces.map(([[x1, y1], [x2, y2]]): Mark => {
    const short = Math.hypot(x2 - x1, y2 - y1) < 3 * s;
    if (short) return { kind: "circle", id: name, cx: x1, cy: y1, r: 3 * s, fill: { role: "line" } };
    return { kind: "line", id: name, x1, y1, x2, y2, stroke: { role: "line", width: 4.4 * s } };
  });
}

function personMarks(person: PersonPlace, plan: StagePlan): Mark[] {
  const { s } = plan;
  const [x, y] = person.feet;
  const id = person.names.join(", ");
  const stroke = { role: "field", width: 1.8 * s } as const;
  const floor: Mark = {
    kind: "line",
    x1: x - 9 * s,
    y1: y + 1,
    x2: x + 9 * s,
    y2: y + 1,
    stroke: { role: "line", width: 1.2 * s },
  };
  const stands = person.onSoil ? [] : [floor];
  const h = figureHeight(plan);
  if (h < leastFigure) {
    const ring: Mark = { kind: "circle", id, cx: x, cy: y - 4.5 * s, r: 3.6 * s, fill: { role: "paper" }, stroke };
    return [...stands, ring];
  }
  const head = 0.09 * h;
  const [neck, arms, hip] = [y - h + 2 * head, y - 0.52 * h, y - 0.46 * h];
  const d =
    `M${x},${neck}V${hip}M${x - 0.13 * h},${arms}L${x},${neck + 0.06 * h}L${x + 0.13 * h},${arms}` +
    `M${x - 0.11 * h},${y}L${x},${hip}L${x + 0.11 * h},${y}`;
  const face: Mark = { kind: "circle", id, cx: x, cy: y - h + head, r: head, fill: { role: "paper" }, stroke };
  return [...stands, { kind: "path", id, d, stroke }, face];
}

export const aroundMarks = (around: Around, plan: StagePlan): Mark[] => [
  ...around.conductors.flatMap((one) => conductorMarks(one, plan.s)),
  ...around.people.flatMap((one) => personMarks(one, plan)),
];
