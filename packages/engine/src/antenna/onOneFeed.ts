/** The shapes of one antenna on their feed point. */
import type { Antenna } from "../station/antennaDescription";
import { meets, shapeWires } from "./shapes/shapeWires";
import { type Built, type BuiltFeed, joined, pointOf } from "./wireRun";

/** Shapes of one antenna; several (`elements`) share one feed point, first legs with first legs. */
export function onOneFeed(antenna: Antenna): Built {
  const several = antenna.shapes.length > 1;
  const shapes = antenna.shapes.map(({ name, shape }) => {
    const built = shapeWires(shape, pointOf(antenna.at), antenna.name);
    return several ? withOwnName(name, built) : built;
  });
  const all = joined(shapes);
  const [first] = all.feeds;
  if (!several || !first) return all;
  const shared = all.feeds.filter((f) => meets(f.at, first.at));
  const feed: BuiltFeed = {
    name: antenna.name,
    at: first.at,
    from: shared.flatMap((f) => f.from),
    into: shared.flatMap((f) => f.into),
  };
  return { ...all, feeds: [feed, ...all.feeds.filter((f) => !meets(f.at, first.at))] };
}

/** All legs of a shape also under the shape's own name, each once: loads are put on one shape of several by it. */
function withOwnName(name: string, built: Built): Built {
  const legs = [...built.legs];
  const known = legs.filter((leg) => leg.name === name).flatMap((leg) => leg.wires);
  for (const leg of built.legs) {
    if (leg.wires.every((w) => known.includes(w))) continue;
    known.push(...leg.wires);
    legs.push({ ...leg, name });
  }
  return { ...built, legs };
}
