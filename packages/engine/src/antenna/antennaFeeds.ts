/** Adds one antenna to the structure: its wires, loads and feeds. */
import { exactly } from "../quantity/quantity";
import type { Antenna, Shape } from "../station/antennaDescription";
import type { Station } from "../station/station";
import type { FeedGap } from "../wires/structure";
import { type AntennaRefusal, addWires, type Growing } from "./growing";
import { placeLoads } from "./loads";
import { onOneFeed } from "./onOneFeed";
import { feedAgainst, wiresAt } from "./returnSide";
import { steepness } from "./shapes/span";
import { type Built, pointOf, shifted } from "./wireRun";

export function addAntenna(station: Station, antenna: Antenna, growing: Growing): void {
  const cannot = refusedShape(antenna);
  if (cannot) {
    growing.refused = cannot;
    return;
  }
  if (antenna.shapes.some(({ shape }) => shape.kind === "beam" && shape.boomCorrection === "insulated")) {
    growing.notComputed.push("not computed yet: what a metal boom does to elements mounted insulated on it");
  }
  const built = onOneFeed(antenna);
  const placed = placeLoads(antenna, built);
  if (placed.refused) {
    growing.refused = {
      why: `not computed yet: ${placed.refused}`,
      mend: "the same antenna without it, or a later version",
    };
    return;
  }
  growing.notComputed.push(...placed.notComputed.map((n) => `not computed yet: ${n}`));
  const start = growing.wires.length;
  const feeds = feedsOf(station, antenna, placed.built, growing);
  if ("refused" in feeds) {
    growing.refused = { why: feeds.refused, mend: feeds.mend };
    return;
  }
  growing.feeds.push(...feeds);
  growing.loads.push(...placed.loads.map((load) => ({ ...load, wire: load.wire + start })));
}

function refusedShape(antenna: Antenna): AntennaRefusal | null {
  if (antenna.shapes.some((s) => s.shape.kind === "small loop"))
    return { why: "not computed yet: the small loop with its capacitor", mend: "a shape of straight wires" };
  if (!antenna.shapes.some((s) => cannotHang(s.shape))) return null;
  return {
    why: "the ends hang further below the feed point than the legs are long",
    mend: "another `ends height` or `length`",
  };
}

function cannotHang(shape: Shape): boolean {
  if (shape.kind === "off-centre dipole")
    return steepness(shape, Math.min(shape.legs[0].value, shape.legs[1].value)) >= 1;
  if (shape.kind === "dipole" || shape.kind === "inverted vee")
    return steepness({ sag: exactly(0), ...shape }, shape.length.value / 2) >= 1;
  return false;
}

type Feeds = FeedGap[] | { readonly refused: string; readonly mend: string };

function feedsOf(station: Station, antenna: Antenna, built: Built, growing: Growing): Feeds {
  const start = growing.wires.length;
  if (antenna.feeds.length > 0) return explicitFeeds(antenna, built, growing);
  if (built.feeds.length > 0) {
    addWires(growing, built.wires);
    return [...shifted(built, start).feeds];
  }
  const feed = feedAgainst(station, antenna, built, growing);
  return "refused" in feed ? feed : [feed];
}

function explicitFeeds(antenna: Antenna, built: Built, growing: Growing): Feeds {
  const start = growing.wires.length;
  addWires(growing, built.wires);
  const feeds: FeedGap[] = [];
  for (const feed of antenna.feeds) {
    const at = pointOf(feed.at);
    const named = (name: string) =>
      built.legs
        .filter((l) => l.name === name)
        .flatMap((l) => l.wires)
        .filter((w) => wiresAt(built.wires, at).includes(w));
    const from = named(feed.from);
    const into = named(feed.into);
    if (from.length === 0 || into.length === 0) {
      return {
        refused: `the feed "${feed.name}" names wires that do not both end at its place`,
        mend: "`at`, `from` and `into` of that feed",
      };
    }
    feeds.push({ name: feed.name, at, from: from.map((w) => w + start), into: into.map((w) => w + start) });
  }
  return feeds;
}
