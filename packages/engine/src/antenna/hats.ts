/** Capacitance hats: spokes square to the wire they sit on, and the ring around their ends. */
import type { Load } from "../station/antennaDescription";
import type { LumpedLoad, Point, Wire } from "../wires/structure";
import type { Spot } from "./loadSpots";
import { meets } from "./shapes/shapeWires";
import { type Built, chainOf, distance, wireOf } from "./wireRun";

export interface PlacedHat {
  readonly spot: Spot;
  readonly hat: NonNullable<Load["hat"]>;
}

interface Hatted {
  readonly built: Built;
  readonly loads: readonly LumpedLoad[];
}

/** Adds hats to an antenna; a wire that carries one along its way is divided there. */
export function withHats(built: Built, loads: readonly LumpedLoad[], hats: readonly PlacedHat[]): Hatted {
  const at = hats.map(({ spot, hat }) => ({ ...pointAt(built.wires[spot.wire]!, spot.distance), hat }));
  // From the far end of each wire towards its beginning, so that distances still to come stay as they are.
  const cuts = hats.map(({ spot }) => spot).sort((a, b) => b.distance - a.distance);
  const divided = cuts.reduce(divideAt, { built, loads });
  const wires = at.flatMap(({ centre, along, hat }, i) => hatWires(`hat ${i + 1}`, centre, along, hat));
  return { ...divided, built: { ...divided.built, wires: [...divided.built.wires, ...wires] } };
}

type Vector = readonly [number, number, number];

function pointAt(wire: Wire, along: number): { centre: Point; along: Vector } {
  const length = distance(wire.from, wire.to);
  const unit = [0, 1, 2].map((i) => (wire.to[i]! - wire.from[i]!) / length) as unknown as Vector;
  const centre = [0, 1, 2].map((i) => wire.from[i]! + unit[i]! * along) as unknown as Point;
  return { centre: meets(centre, wire.to) ? wire.to : meets(centre, wire.from) ? wire.from : centre, along: unit };
}

/** Divides a wire: the first piece keeps its number, the second comes last in the list. Ends are left alone. */
function divideAt({ built, loads }: Hatted, { wire: index, distance: cut }: Spot): Hatted {
  const wire = built.wires[index]!;
  const { centre } = pointAt(wire, cut);
  if (meets(centre, wire.from) || meets(centre, wire.to)) return { built, loads };
  const second = built.wires.length;
  const wires = built.wires.map((w, i) => (i === index ? { ...w, to: centre } : w));
  const backwards = (leg: readonly number[]): boolean => {
    const next = leg[leg.indexOf(index) + 1];
    return next !== undefined && !meets(wire.to, built.wires[next]!.from) && !meets(wire.to, built.wires[next]!.to);
  };
  const both = (leg: readonly number[]): readonly number[] =>
    leg.flatMap((w) => (w !== index ? [w] : backwards(leg) ? [second, index] : [index, second]));
  const ending = (at: Point) => (w: number) => (w === index && meets(wire.to, at) ? second : w);
  return {
    built: {
      wires: [...wires, { ...wire, name: `${wire.name} beyond the hat`, from: centre }],
      legs: built.legs.map(({ fromMiddle: _, ...leg }) => ({ ...leg, wires: both(leg.wires) })),
      feeds: built.feeds.map((f) => ({ ...f, from: f.from.map(ending(f.at)), into: f.into.map(ending(f.at)) })),
    },
    loads: loads.map((load) =>
      load.wire === index && load.distance > cut ? { ...load, wire: second, distance: load.distance - cut } : load,
    ),
  };
}

/** Spokes evenly round the wire, the first one level. */
function hatWires(
  name: string,
  centre: Point,
  along: Vector,
  { spokes, length, wire, ring }: PlacedHat["hat"],
): Wire[] {
  const level = Math.hypot(along[0], along[1]);
  const across: Vector = level > 1e-6 ? [-along[1] / level, along[0] / level, 0] : [1, 0, 0];
  const other: Vector = [
    along[1] * across[2] - along[2] * across[1],
    along[2] * across[0] - along[0] * across[2],
    along[0] * across[1] - along[1] * across[0],
  ];
  const tips = Array.from({ length: spokes }, (_, k): Point => {
    const turn = (2 * Math.PI * k) / spokes;
    const [c, s] = [Math.cos(turn) * length.value, Math.sin(turn) * length.value];
    return [0, 1, 2].map((i) => centre[i]! + c * across[i]! + s * other[i]!) as unknown as Point;
  });
  const rays = tips.map((tip, k) => wireOf(`${name} spoke ${k + 1}`, centre, tip, wire));
  return ring ? [...rays, ...chainOf(`${name} ring`, [...tips, tips[0]!], wire)] : rays;
}
