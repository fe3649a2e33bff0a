/** Beams: elements across a boom, one of them fed, straight or stepped in diameter. */
import type { Shape } from "../../station/antennaDescription";
import type { Point, Wire } from "../../wires/structure";
import { type Built, fedLegs, joined, offset, wireOf } from "../wireRun";

type Beam = Extract<Shape, { kind: "beam" }>;
type Element = Beam["elements"][number];

/** The driven element is split in its middle. Boom centre above `at`; the first leg lies left of the direction it points. */
export function beam(shape: Beam, at: Point, feedName: string): Built {
  const places = shape.elements.map((e) => e.along.value);
  const middle = (Math.min(...places) + Math.max(...places)) / 2;
  const centre: Point = [at[0], at[1], shape.height.value];
  return joined(
    shape.elements.map((element, i): Built => {
      const name = `element ${i + 1}`;
      const spot = offset(centre, shape.boom.value, element.along.value - middle);
      if (i + 1 === shape.driven) return drivenElement(shape, element, spot, name, feedName);
      return element.sections ? steppedElement(shape, element, spot, name) : plainElement(shape, element, spot, name);
    }),
  );
}

function drivenElement(shape: Beam, element: Element, spot: Point, name: string, feedName: string): Built {
  const first = half(shape, element, spot, `${name} first leg`, 1);
  const second = half(shape, element, spot, `${name} second leg`, -1);
  const built = fedLegs(first, second, feedName);
  return { ...built, legs: [...built.legs, ...built.legs.map((leg) => ({ ...leg, name }))] };
}

function steppedElement(shape: Beam, element: Element, spot: Point, name: string): Built {
  const first = half(shape, element, spot, `${name} first half`, 1);
  const second = half(shape, element, spot, `${name} second half`, -1);
  return {
    wires: [...first, ...second],
    legs: [
      { name, wires: first.map((_, i) => i) },
      { name, wires: second.map((_, i) => first.length + i) },
    ],
    feeds: [],
  };
}

function plainElement(shape: Beam, { length }: Element, spot: Point, name: string): Built {
  const end = (side: number): Point => offset(spot, across(shape), (side * length.value) / 2);
  return {
    wires: [wireOf(name, end(1), end(-1), shape.wire)],
    legs: [{ name, wires: [0], fromMiddle: true }],
    feeds: [],
  };
}

const across = (shape: Beam): number => shape.boom.value - Math.PI / 2;

/** One half from the boom outwards; sections beyond the tip are cut off. */
function half(shape: Beam, element: Element, spot: Point, name: string, side: 1 | -1): Wire[] {
  const tip = element.length.value / 2;
  const wires: Wire[] = [];
  const steps = element.sections ?? [];
  let reached = 0;
  const upTo = (to: number, conductor: Beam["wire"]): void => {
    if (to - reached < shortest) return;
    const [from, end] = [reached, to].map((x) => offset(spot, across(shape), side * x)) as [Point, Point];
    wires.push(wireOf(steps.length > 0 ? `${name} ${wires.length + 1}` : name, from, end, conductor));
    reached = to;
  };
  for (const section of steps) upTo(Math.min(tip, reached + section.length.value), section.wire);
  upTo(tip, shape.wire);
  return wires;
}

/** What is shorter is no section any more, m. */
const shortest = 1e-6;
