/** What is in use at a worked point: its antennas, and its parts as sentences call them. */
import type { WorkedPoint } from "../../chain/workedPoint";
import type { Antenna } from "../../station/antennaDescription";
import type { Station } from "../../station/station";

/** Antennas with a feed that the transmitter reaches. */
export const antennasInUse = (station: Station, point: WorkedPoint): Antenna[] =>
  station.antennas.filter((a) =>
    (a.feeds.length > 0 ? a.feeds : [a]).some((feed) => point.resolved.feedsInUse.includes(feed.name)),
  );

/** "transformer" where it is the only one in use and the file gave it no name, else its name. */
export function nameInSentence(point: WorkedPoint, name: string): string {
  const used = point.parts.filter((p) => p.edge.inUse);
  const kind = used.find((p) => p.edge.name === name)?.edge.kind;
  if (kind === undefined || !new RegExp(`^${kind} \\d+$`).test(name)) return name;
  return used.filter((p) => p.edge.kind === kind).length === 1 ? kind : name;
}
