/** What radials the station has, or could have: the antenna in use and how it returns its current. */
import type { Antenna, Radials } from "../../station/antennaDescription";
import type { Station } from "../../station/station";
import { antennasInUse } from "../common/inUse";
import type { Worked } from "../common/worked";
import { lieOf } from "./withRadials";

export interface Site {
  readonly antenna: Antenna;
  /** As the file has them; null where the antenna works against an earth alone. */
  readonly radials: Radials | null;
  /** The earth that it works against alone, or that the radials are tied to; null without one. */
  readonly earth: string | null;
  readonly lie: number | "on the soil";
  /** They cover less than the whole round. */
  readonly sector: boolean;
}

export interface NoSite {
  readonly refused: string;
  readonly mend: string;
}

/** Why no question about radials makes sense over this ground; null where one does. */
export function groundRefusal(station: Station): NoSite | null {
  if (station.ground.kind === "free space")
    return {
      refused: "there is no ground in this file: `ground: free space`",
      mend: "`ground: unknown`, or a soil such as `ground: medium dry ground`",
    };
  if (station.ground.kind === "perfect")
    return {
      refused:
        "over a perfect conductor radials have nothing to do: the ground itself returns the current without loss",
      mend: "`ground: unknown`, or a soil such as `ground: medium dry ground`",
    };
  return null;
}

export function siteOf({ station, point }: Worked): Site | NoSite {
  const feeds = point.resolved.feedsInUse.length;
  if (feeds > 1)
    return {
      refused: `this path feeds ${feeds} feed points at once: one set of radials decides for none of them`,
      mend: "a path, or a switch in another position, that leads to one feed point",
    };
  const [antenna] = antennasInUse(station, point);
  const own = antenna?.against === "radials" ? antenna.radials : null;
  if (antenna && own) {
    const sector = own.over.to - own.over.from < 2 * Math.PI - 1e-9;
    return { antenna, radials: own, earth: own.bond, lie: lieOf(own), sector };
  }
  if (antenna && station.earths.some((e) => e.name === antenna.against))
    return { antenna, radials: null, earth: antenna.against, lie: "on the soil", sector: false };
  return {
    refused: whyNone(antenna),
    mend: "an antenna with `against: radials` and a `radials` entry, or one that works against an earth of `earths`",
  };
}

function whyNone(antenna: Antenna | undefined): string {
  const against = antenna?.against ?? null;
  if (against === null) return "this antenna has both of its sides in the file, so no radials carry its current back";
  return against === "outside of the line"
    ? "this antenna works against the outside of its line, not against radials (“Does the outside of the line carry current?” tells of that)"
    : `this antenna works against "${against}", not against radials`;
}
