/** The antennas of a station raised or lowered as one, and why some cannot be. */
import type { AntennaBuild } from "../antenna/antennaStructure";
import { distanceBetween, wireLength } from "../wires/geometry";
import type { Point, SeriesGap, Structure, Wire } from "../wires/structure";

/** Why the antenna cannot be raised or lowered by itself, and whether that is the soil's doing or a conductor's near by; null when it can. */
export interface HeldDown {
  readonly why: string;
  readonly by: "soil" | "surroundings";
}

export function heldDown({ structure, surroundingWires, restingWires }: AntennaBuild): HeldDown | null {
  const fed = structure.feeds.flatMap((f) => [...f.from, ...f.into]);
  if (fed.some((w) => surroundingWires.has(w)))
    return {
      why: "the antenna works against a conductor of the surroundings: it cannot be raised or lowered without it",
      by: "surroundings",
    };
  const standing = structure.feeds.some((f) => structure.contacts?.some((c) => distanceBetween(c.at, f.at) < 1e-6));
  const leads = structure.wires.some((w, i) => restingWires.has(i) && w.name.startsWith("radial"));
  const why =
    "the antenna works against what lies on the soil or leads into it: it cannot be raised or lowered without it";
  return standing || leads ? { why, by: "soil" } : null;
}

/**
 * Antenna wires and feeds raised by `lift` metres; conductors near by stay where they are, and of lines and what leads
 * into the soil all but their ends at a feed point. What opens such a wire keeps its distance from the end it is nearer to.
 */
export function lifted(build: AntennaBuild, lift: number): Structure {
  const { wires, feeds, gaps } = build.structure;
  const up = (p: Point): Point => [p[0], p[1], p[2] + lift];
  const fed = (p: Point): boolean => feeds.some((f) => distanceBetween(f.at, p) < 1e-6);
  const stays = (w: number): boolean => build.outsideWires.has(w) || build.restingWires.has(w);
  const raise = (w: number, p: Point): Point => (!stays(w) || fed(p) ? up(p) : p);
  const moved = wires.map((w, i) =>
    build.surroundingWires.has(i) ? w : { ...w, from: raise(i, w.from), to: raise(i, w.to) },
  );
  return {
    ...build.structure,
    wires: moved,
    feeds: feeds.map((f) => ({ ...f, at: up(f.at) })),
    ...(gaps ? { gaps: gaps.map((gap) => movedGap(gap, wires[gap.wire]!, moved[gap.wire]!)) } : {}),
  };
}

function movedGap(gap: SeriesGap, before: Wire, after: Wire): SeriesGap {
  const fromEnd = wireLength(before) - gap.distance;
  const distance = gap.distance <= fromEnd ? gap.distance : wireLength(after) - fromEnd;
  return { ...gap, distance: Math.min(Math.max(0, distance), wireLength(after)) };
}
