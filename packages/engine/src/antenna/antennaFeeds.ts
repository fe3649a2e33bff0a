/** Adds one antenna to the structure: its wires, loads and feeds. */
import { exactly } from "../quantity/quantity";
import type { Antenna, Shape } from "../station/antennaDescription";
import type { Station } from "../station/station";
import type { FeedGap } from "../wires/structure";
import { type AntennaRefusal, addWires, assume, type Growing } from "./growing";
import { placeLoads } from "./loads";
import { onOneFeed } from "./onOneFeed";
import { feedAgainst, wiresAt } from "./returnSide";
import { capacitorWire } from "./shapes/smallLoop";
import { steepness } from "./shapes/span";
import { joinStanding, raisedFromSoil, withRaisedEnds } from "./standing";
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
  const { built, standing } = withRaisedEnds(station, onOneFeed(antenna));
  const placed = placeLoads(antenna, built);
  if (placed.refused) {
    growing.refused = { why: placed.refused, mend: "`on`, `from feed` or `length` of that load" };
    return;
  }
  const start = growing.wires.length;
  const feeds = feedsOf(station, antenna, placed.built, growing);
  if ("refused" in feeds) {
    growing.refused = { why: feeds.refused, mend: feeds.mend };
    return;
  }
  growing.feeds.push(...feeds);
  const [only] = antenna.shapes;
  if (only?.shape.kind === "small loop") addLoop(station, antenna.name, only.shape, start, growing);
  growing.refused = joinStanding(station, antenna, standing, growing);
  growing.loads.push(...placed.loads.map((load) => ({ ...load, wire: load.wire + start })));
}

/** The loop's capacitor in its gap, and its coupling: both are set in the chain at the frequency of the band. */
function addLoop(
  station: Station,
  name: string,
  shape: Extract<Shape, { kind: "small loop" }>,
  firstWire: number,
  growing: Growing,
): void {
  const closing = { name: `capacitor of ${name}`, kind: "capacitor" as const, impedance: () => "open" as const };
  growing.gaps.push({ name: closing.name, wire: firstWire + capacitorWire, distance: 0, closing });
  growing.loops.push({
    name,
    feed: growing.feeds.length - 1,
    gap: growing.gaps.length - 1,
    capacitor: shape.capacitor,
    jointsResistance: shape.jointsResistance?.value ?? 0,
    lineSide: station.transmitter.designedFor.value,
  });
  assume(
    growing,
    `coupling of ${name}`,
    "an ideal transformer, set for a match at the band's frequency and left there, as its capacitor is",
    "the file says nothing of how the line is coupled to the loop",
  );
}

function refusedShape(antenna: Antenna): AntennaRefusal | null {
  const loop = antenna.shapes.some((s) => s.shape.kind === "small loop");
  if (loop && (antenna.shapes.length > 1 || antenna.feeds.length > 0))
    return { why: "not computed: a small loop on one feed point with other shapes", mend: "an antenna of its own" };
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
  if (antenna.feeds.length > 0) return explicitFeeds(station, antenna, built, growing);
  if (built.feeds.length > 0) {
    addWires(growing, built.wires);
    return [...shifted(built, start).feeds];
  }
  const feed = feedAgainst(station, antenna, built, growing);
  return "refused" in feed ? feed : [feed];
}

function explicitFeeds(station: Station, antenna: Antenna, built: Built, growing: Growing): Feeds {
  const start = growing.wires.length;
  addWires(growing, built.wires);
  const feeds: FeedGap[] = [];
  for (const feed of antenna.feeds) {
    const at = raisedFromSoil(station, pointOf(feed.at));
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
