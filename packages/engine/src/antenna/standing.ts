/** Ends of antenna wires that stand on the soil: each meets it through an earth of the file at that place. */
import type { Antenna } from "../station/antennaDescription";
import type { Station } from "../station/station";
import type { Point } from "../wires/structure";
import { connectToSoil, contactHeight, reachOf } from "./earths";
import { type AntennaRefusal, type Growing, samePoint } from "./growing";
import type { Built } from "./wireRun";

/** Ends at most this high (m) stand on the soil. */
const touching = 1e-6;
/** An earth this near (m) to an end is the one it stands on. */
const atThePlace = 0.5;

const isSoil = (station: Station): boolean => station.ground.kind === "soil" || station.ground.kind === "layers";

/** A place on the soil is taken up to where electrodes lie. */
export const raisedFromSoil = (station: Station, p: Point): Point =>
  isSoil(station) && Math.abs(p[2]) <= touching ? [p[0], p[1], contactHeight] : p;

/** The antenna with its ends on the soil taken up, and the places of those ends. */
export function withRaisedEnds(
  station: Station,
  built: Built,
): { readonly built: Built; readonly standing: readonly Point[] } {
  const ends = built.wires.flatMap((w) => [w.from, w.to]).filter((p) => raisedFromSoil(station, p) !== p);
  const raise = (p: Point): Point => raisedFromSoil(station, p);
  const standing = ends.map(raise).filter((p, i, all) => all.findIndex((q) => samePoint(p, q)) === i);
  if (standing.length === 0) return { built, standing };
  return {
    built: {
      ...built,
      wires: built.wires.map((w) => ({ ...w, from: raise(w.from), to: raise(w.to) })),
      feeds: built.feeds.map((f) => ({ ...f, at: raise(f.at) })),
    },
    standing,
  };
}

/** Joins these places to their earths; null when all have one, or radials that spread from there. */
export function joinStanding(
  station: Station,
  antenna: Antenna,
  standing: readonly Point[],
  growing: Growing,
): AntennaRefusal | null {
  for (const place of standing) {
    const fed = growing.feeds.some((f) => Math.hypot(f.at[0] - place[0], f.at[1] - place[1]) < touching);
    if (growing.contacts.some((c) => samePoint(c.at, place)) || (fed && antenna.radials)) continue;
    const earth = station.earths.find(
      (e) => e.at && Math.hypot(e.at[0].value - place[0], e.at[1].value - place[1]) <= atThePlace,
    );
    if (!earth?.resistance) {
      const spot = place.slice(0, 2).map((x) => `${Number(x.toFixed(2))} m`);
      return {
        why: `a wire of "${antenna.name}" ends on the soil ${spot[0]} east and ${spot[1]} north, where the file has no earth with a resistance`,
        mend: "an entry in `earths` with that place and a `resistance` (or `unknown`), or an end above the soil",
      };
    }
    connectToSoil(
      station,
      growing,
      { name: earth.name, resistance: earth.resistance, reach: reachOf(earth) },
      place,
      place,
    );
  }
  return null;
}
