/** The station with other radials: the same words of the file, other numbers. Everything else is shared with the original. */
import { standsOnThem } from "../../antenna/radials";
import { exactly, type Quantity } from "../../quantity/quantity";
import type { Antenna, Radials, Shape } from "../../station/antennaDescription";
import { mapParts } from "../../station/mapParts";
import type { Part, Path } from "../../station/path";
import type { Conductor, Place } from "../../station/place";
import type { Station } from "../../station/station";

/** Number and length (m) of equal radials, and where they lie: height in m, or on the soil. */
export interface RadialChange {
  readonly count: number;
  readonly length: number;
  readonly lie: number | "on the soil";
  /** Spread all round; left out: over the sector they cover now. */
  readonly allRound?: boolean;
}

/** A route that ends this near (m) to the foot of the antenna goes with it: `attachToFeed` joins it from there. */
const atTheFoot = 0.5;
/** Lowest height (m) of the end of a route that comes down with the antenna. */
const lowestEnd = 0.02;

const usualWire: Conductor = {
  diameter: exactly(1.5e-3, "assumed"),
  form: "wire",
  material: "copper",
  conductivity: 58e6,
  permeability: 1,
  insulation: null,
};

/** Radials as they lie now: height in m, or on the soil. */
export const lieOf = ({ lie }: Radials): number | "on the soil" => (lie === "on the soil" ? lie : lie.value);

/** Height of the antenna's foot, m; null for shapes that are not moved up and down here. */
export function footOf(antenna: Antenna): number | null {
  const [first] = antenna.shapes;
  if (!antenna.shapes.every(({ shape }) => liftedShape(shape, 0))) return null;
  switch (first?.shape.kind) {
    case "vertical":
      return first.shape.base.value;
    case "end-fed wire":
      return first.shape.points[0]?.[2].value ?? null;
    case "wires":
      return first.shape.wires[0]?.from[2].value ?? null;
    default:
      return null;
  }
}

/**
 * A copy of the station whose antenna of this name has other radials. Raised ones raise the whole antenna to their height,
 * and with it the end of a line's route at its foot; laid ones bring it down to them. Where they stay, so does the antenna.
 * An antenna that works against an earth keeps it, tied to where the radials meet, while they lie on the soil.
 * @returns null where the antenna would have to be moved and is of a shape that is not moved here.
 */
export function withRadials(station: Station, antennaName: string, change: RadialChange): Station | null {
  const antenna = station.antennas.find((a) => a.name === antennaName)!;
  const lift = liftFor(antenna, change.lie);
  if (lift === null) return null;
  const changed = { ...changedAntenna(antenna, change), ...(lift === 0 ? {} : lifted(antenna, lift)) };
  const path = lift === 0 ? station.path : followed(station.path, antenna, lift);
  return { ...station, path, antennas: station.antennas.map((a) => (a === antenna ? changed : a)) };
}

function liftFor(antenna: Antenna, lie: RadialChange["lie"]): number | null {
  const present = antenna.radials ? lieOf(antenna.radials) : "on the soil";
  if (present === lie) return 0;
  const foot = footOf(antenna);
  if (foot === null) return null;
  if (lie !== "on the soil") return lie - foot;
  return Math.min(0, standsOnThem - foot);
}

function changedAntenna(antenna: Antenna, { count, length, lie, allRound }: RadialChange): Antenna {
  const { radials, against } = antenna;
  const onSoil = lie === "on the soil";
  const raisedNow = radials !== null && radials.lie !== "on the soil";
  const ownBond = radials ? radials.bond : against;
  return {
    ...antenna,
    against: "radials",
    radials: {
      count,
      length: exactly(length),
      wire: radials?.wire ?? usualWire,
      lie: onSoil ? lie : exactly(lie),
      over: radials && !allRound ? radials.over : { from: 0, to: 2 * Math.PI },
      bond: onSoil || raisedNow ? ownBond : null,
    },
  };
}

const higher = (q: Quantity, by: number): Quantity => ({
  ...q,
  value: q.value + by,
  low: q.low + by,
  high: q.high + by,
});
const raisedPlace = ([x, y, z]: Place, by: number): Place => [x, y, higher(z, by)];

function lifted(antenna: Antenna, by: number): Pick<Antenna, "shapes" | "feeds"> {
  return {
    shapes: antenna.shapes.map(({ name, shape }) => ({ name, shape: liftedShape(shape, by) ?? shape })),
    feeds: antenna.feeds.map((feed) => ({ ...feed, at: raisedPlace(feed.at, by) })),
  };
}

/** Null for shapes that are not moved here. */
function liftedShape(shape: Shape, by: number): Shape | null {
  switch (shape.kind) {
    case "vertical":
      return { ...shape, base: higher(shape.base, by) };
    case "end-fed wire":
      return { ...shape, points: shape.points.map((p) => raisedPlace(p, by)) };
    case "wires": {
      const up = (p: Place): Place => raisedPlace(p, by);
      return { ...shape, wires: shape.wires.map((w) => ({ ...w, from: up(w.from), to: up(w.to) })) };
    }
    default:
      return null;
  }
}

/** The path with the end of every route at the antenna's foot moved along. */
function followed(path: Path, antenna: Antenna, by: number): Path {
  const foot = footOf(antenna) ?? 0;
  const [x, y] = footSpot(antenna);
  const isThere = (p: Place): boolean => Math.hypot(p[0].value - x, p[1].value - y, p[2].value - foot) <= atTheFoot;
  const follow = (part: Part): readonly Part[] => {
    const last = part.kind === "line" ? part.route.at(-1) : undefined;
    if (part.kind !== "line" || !last || !isThere(last)) return [part];
    const end = raisedPlace(last, Math.max(by, lowestEnd - last[2].value));
    return [{ ...part, route: [...part.route.slice(0, -1), end] }];
  };
  return mapParts(path, follow);
}

function footSpot({ shapes, at }: Antenna): readonly [number, number] {
  const shape = shapes[0]?.shape;
  const place =
    shape?.kind === "end-fed wire" ? shape.points[0] : shape?.kind === "wires" ? shape.wires[0]?.from : undefined;
  const [x, y] = place ?? at;
  return [x.value, y.value];
}
