/** The station as stages draw it: wires, line and soil in metres. */
import type { Drawing } from "../../answer/answer";
import type { WorkedPoint } from "../../chain/workedPoint";
import { depthOfPenetration } from "../../ground/soilSurface";
import type { Place } from "../../station/place";
import type { Station } from "../../station/station";
import { isRealSoil } from "../../wires/structure";
import { saysOfAntenna, saysOfSoil } from "../../words/antenna";

const numbersOf = (place: Place): number[] => place.map((q) => q.value);

/** `cutAzimuth` in degrees: the plane of the section. */
export function drawingOf(station: Station, point: WorkedPoint, cutAzimuth: number): Drawing {
  const { structure, surroundingWires, outsideWires, restingWires } = point.antenna.build;
  const feedName = point.resolved.feedsInUse[0];
  const feed = structure.feeds.find((f) => f.name === feedName) ?? structure.feeds[0]!;
  const antenna =
    station.antennas.find((a) => a.name === feedName || a.feeds.some((f) => f.name === feedName)) ??
    station.antennas[0]!;
  const { soil } = point.antenna;
  return {
    wires: structure.wires.flatMap((w, i) =>
      surroundingWires.has(i) || outsideWires.has(i) || (restingWires.has(i) && !w.name.startsWith("radial"))
        ? []
        : [{ name: w.name, from: w.from, to: w.to }],
    ),
    surroundings: station.surroundings.flatMap((s) => {
      if (s.kind === "conductor") return [{ name: s.name, points: s.points.map(numbersOf) }];
      return s.kind === "sheet" ? [{ name: s.name, points: s.corners.map(numbersOf) }] : [];
    }),
    people: station.people.map((p) => ({ name: p.place, at: numbersOf(p.at) })),
    antennaName: antenna.name === "antenna" ? (antenna.shapes[0]?.shape.kind ?? "antenna") : antenna.name,
    antennaSays: saysOfAntenna(antenna),
    feedPoint: feed.at,
    lineRoute: routeOf(station, point, feed.at),
    soil: {
      kind: soil.kind,
      says: saysOfSoil(station.ground),
      penetrationDepth: isRealSoil(soil) ? finite(depthOfPenetration(soil, point.frequency)) : null,
      ...(soil.kind === "layered" ? { layerDepths: layerDepths(soil.layers) } : {}),
    },
    cutAzimuth,
  };
}

/** Depths of the boundaries between layers, m, from the top. */
function layerDepths(layers: readonly { readonly thickness: number | null }[]): number[] {
  let depth = 0;
  return layers.flatMap(({ thickness }) => {
    if (thickness === null) return [];
    depth += thickness;
    return [depth];
  });
}

const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);

/** The file's route, else plumb below the feed point and level to the transmitter due south: an assumption, listed. */
function routeOf(station: Station, point: WorkedPoint, feed: readonly number[]): number[][] {
  const lines = point.parts.flatMap((p) => (p.edge.inUse && p.edge.part?.kind === "line" ? [p.edge.part] : []));
  const routed = lines.flatMap((line) => line.route.map(numbersOf));
  if (routed.length > 0) return [...routed, [...feed]];
  const length = lines.reduce((sum, line) => sum + line.length.value, 0);
  if (length === 0) return [];
  const height = station.ground.kind === "free space" ? 0 : Math.min(feed[2]!, length);
  const foot = feed[2]! - height;
  return [[feed[0]!, feed[1]! - (length - height), foot], [feed[0]!, feed[1]!, foot], [...feed]];
}

/** True when `drawingOf` had to place the line itself. */
export const lineIsPlacedByUs = (point: WorkedPoint): boolean =>
  point.parts.some((p) => p.edge.part?.kind === "line") &&
  point.parts.every((p) => p.edge.part?.kind !== "line" || p.edge.part.route.length === 0);
