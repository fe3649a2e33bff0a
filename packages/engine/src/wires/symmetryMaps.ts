/** Turns about a vertical axis and mirrors in planes through it that lay the wires of a structure, as meshed, on each other. */
import { wireEnd } from "./geometry";
import type { Mesh } from "./mesh";
import type { Point, Structure } from "./structure";

/**
 * m. Coordinates are on a grid of 2^-30 m: a place and its image are each off by up to 0.7 pitches, the axis by as much
 * (which counts twice), the angle, taken from the farthest ends, by 1.4 more.
 */
export const closeness = 6 * 2 ** -30;

export interface WireMap {
  /** Where each wire comes to lie, and whether with its ends exchanged (1). */
  readonly image: Int32Array;
  readonly reversed: Uint8Array;
  readonly move: (p: Point) => Point;
}

export const meets = (a: Point, b: Point, within: number): boolean =>
  Math.abs(a[0] - b[0]) <= within && Math.abs(a[1] - b[1]) <= within && Math.abs(a[2] - b[2]) <= within;

/** Mean place of all metal, which every isometry of the structure leaves where it is. */
function axisOf({ elements }: Mesh): readonly [number, number] {
  const sums = [0, 0, 0];
  for (let e = 0; e < elements.count; e++) {
    const length = elements.length[e]!;
    for (const c of [0, 1] as const) {
      sums[c]! += length * (elements.start[3 * e + c]! + (elements.direction[3 * e + c]! * length) / 2);
    }
    sums[2]! += length;
  }
  return [sums[0]! / sums[2]!, sums[1]! / sums[2]!];
}

/** Mirrored in the plane of azimuth 0 first if asked, then turned by the angle (radians). */
function moveAbout([x, y]: readonly [number, number], angle: number, mirrored: boolean): WireMap["move"] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return (p) => {
    const u = p[0] - x;
    const v = mirrored ? y - p[1] : p[1] - y;
    return [x + c * u - s * v, y + s * u + c * v, p[2]];
  };
}

/** What lays the end farthest from the axis on each end as far from it and as high. */
function candidates({ wires }: Structure, axis: readonly [number, number]): WireMap["move"][] {
  const ends = wires.flatMap((wire) => [wire.from, wire.to]);
  const distance = (p: Point): number => Math.hypot(p[0] - axis[0], p[1] - axis[1]);
  const angle = (p: Point): number => Math.atan2(p[1] - axis[1], p[0] - axis[0]);
  const far = ends.reduce((most, p) => (distance(p) > distance(most) ? p : most));
  if (distance(far) <= closeness) return [];
  const moves: WireMap["move"][] = [];
  const targets: Point[] = [];
  for (const p of ends) {
    if (Math.abs(distance(p) - distance(far)) > closeness || Math.abs(p[2] - far[2]) > closeness) continue;
    if (targets.some((other) => meets(p, other, closeness))) continue;
    targets.push(p);
    moves.push(moveAbout(axis, angle(p) - angle(far), false), moveAbout(axis, angle(p) + angle(far), true));
  }
  return moves;
}

/** Whether the elements of two wires have the same lengths, from either end. */
function sameElements({ elements, firstElement }: Mesh, w: number, v: number, reversed: boolean): boolean {
  const count = firstElement[w + 1]! - firstElement[w]!;
  if (firstElement[v + 1]! - firstElement[v]! !== count) return false;
  let [here, there] = [0, 0];
  for (let i = 0; i < count; i++) {
    here += elements.length[firstElement[w]! + i]!;
    there += elements.length[firstElement[v]! + (reversed ? count - 1 - i : i)]!;
    if (Math.abs(here - there) > closeness) return false;
  }
  return true;
}

/** Wires by the distance of their middles from the axis, for a quick look. */
function byDistance({ wires }: Structure, axis: readonly [number, number]) {
  const key = (a: Point, b: Point): number =>
    Math.round(1e3 * Math.hypot((a[0] + b[0]) / 2 - axis[0], (a[1] + b[1]) / 2 - axis[1]));
  const rings = new Map<number, number[]>();
  wires.forEach((wire, w) => {
    const ring = key(wire.from, wire.to);
    rings.set(ring, [...(rings.get(ring) ?? []), w]);
  });
  return (a: Point, b: Point): number[] => [-1, 0, 1].flatMap((step) => rings.get(key(a, b) + step) ?? []);
}

/**
 * All such maps of the structure, the identity among them, none twice; `alike` says whether one wire may take the place of
 * another. None when all wires lie on the axis.
 */
export function wireMaps(structure: Structure, mesh: Mesh, alike: (w: number, v: number) => boolean): WireMap[] {
  const { wires } = structure;
  const axis = axisOf(mesh);
  const near = byDistance(structure, axis);
  const found = new Map<string, WireMap>();
  for (const move of candidates(structure, axis)) {
    const image = new Int32Array(wires.length);
    const reversed = new Uint8Array(wires.length);
    const fits = wires.every((wire, w) => {
      const [from, to] = [move(wire.from), move(wire.to)];
      return near(from, to).some((v) => {
        const straight = meets(from, wireEnd(wires[v]!, 0), closeness) && meets(to, wireEnd(wires[v]!, 1), closeness);
        const turned = meets(from, wireEnd(wires[v]!, 1), closeness) && meets(to, wireEnd(wires[v]!, 0), closeness);
        if (!(straight || turned) || !alike(w, v) || !sameElements(mesh, w, v, turned)) return false;
        image[w] = v;
        reversed[w] = turned ? 1 : 0;
        return true;
      });
    });
    const key = `${image.join(" ")}/${reversed.join("")}`;
    if (fits && !found.has(key)) found.set(key, { image, reversed, move });
  }
  return [...found.values()];
}
